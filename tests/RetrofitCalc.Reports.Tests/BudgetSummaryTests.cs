using System.Globalization;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports.Tests;

public class Figures_of_a_budget_summary
{
    private static readonly BudgetSummary Summary = BudgetSummary.From(Samples.Quillmere, Samples.Request);

    [Fact]
    public void first_cost_is_the_sum_of_its_printed_parts()
    {
        var rows = Summary.MoneyGoes!.Rows;
        Assert.Equal(Dollars(rows[^1].Cells[1]), rows.SkipLast(1).Sum(row => Dollars(row.Cells[1])));
        Assert.Equal(rows[^1].Cells[1], Summary.Figures[0].Value);
        Assert.Contains(rows[^1].Cells[1], Summary.Title);
    }

    [Fact]
    public void the_year_is_the_sum_of_the_printed_seasons()
    {
        var rows = Summary.Seasons.Rows;
        for (var column = 1; column < Summary.Seasons.Columns.Count; column++)
            Assert.Equal(Dollars(rows[^1].Cells[column]), rows.SkipLast(1).Sum(row => Dollars(row.Cells[column])));
    }

    [Fact]
    public void printed_sums_stay_within_rounding_of_the_engine()
    {
        var option = Samples.Quillmere.Chosen!;
        Assert.Equal(option.FirstCost.Total.Units, Dollars(Summary.Figures[0].Value), tolerance: 3.0); // six parts, half a dollar each
        Assert.Equal(option.AnnualBillSaving.Units, Dollars(Summary.Figures[1].Value), tolerance: (double)Summary.Seasons.Rows.Count);
    }

    [Fact]
    public void the_first_sheet_says_what_a_ratchet_keeps_back_in_the_first_year()
    {
        var summary = BudgetSummary.From(Samples.Ratcheted, Samples.Request);
        Assert.Contains("; first year $", summary.Figures[1].Note);
        Assert.Contains("because the ratchet remembers earlier peaks", summary.Lead);
    }

    [Fact]
    public void another_option_can_be_asked_for_and_an_unknown_one_is_refused()
    {
        var other = Samples.Quillmere.Options.First(o => o != Samples.Quillmere.Chosen);
        var summary = BudgetSummary.From(Samples.Quillmere, Samples.Request with { Option = other.Option.Id });
        Assert.Contains(other.Option.Name + " (asked for)", summary.Comparison.Columns.Select(column => column.Head));
        Assert.Throws<ArgumentException>(() => BudgetSummary.From(Samples.Quillmere, Samples.Request with { Option = "no-such" }));
    }

    [Fact]
    public void a_request_above_an_open_stop_waits_for_it_in_its_title()
    {
        Assert.NotEmpty(Summary.OpenStops);
        Assert.EndsWith(Summary.OpenStops.Count == 1 ? ", once one stop is answered" : $", once {Summary.OpenStops.Count} stops are answered", Summary.Title);
    }

    [Fact]
    public void the_payback_names_what_the_bill_alone_would_give()
    {
        // First cost over the bill's saving: the figure a reader finds who divides the two on the same sheet.
        var option = Samples.Quillmere.Chosen!;
        var divided = option.FirstCost.Total.Units / option.AnnualBillSaving.Units;
        Assert.Contains($"by the bill alone {divided.ToString("0.0", CultureInfo.InvariantCulture)}", Summary.Figures[2].Note);
    }

    [Fact]
    public void luminaires_without_hours_are_told_on_the_first_sheet()
    {
        var study = Samples.Quillmere.Study;
        var dark = study with { Areas = [.. study.Areas.Select(a => a.Weekly is null ? a : a with { Weekly = new() })] };
        var result = Engine.StudyEvaluation.Run(dark, Samples.Request.Rules);
        var unlit = result.Now.Lines.Where(l => l.Hours.Hours == 0).Sum(l => l.Luminaires);
        Assert.NotEqual(0, unlit);
        Assert.Contains(BudgetSummary.From(result, Samples.Request).Risks, risk => risk.StartsWith($"{unlit} luminaires stand where no lit hours", StringComparison.Ordinal));
    }

    [Fact]
    public void a_payback_lost_again_is_never_printed_bare()
    {
        var lost = Samples.Quillmere.Options.First(option => option.SimplePayback.LostAgain);
        var column = Summary.FullComparison.Columns.ToList().FindIndex(c => c.Head == lost.Option.Name);
        Assert.EndsWith(", lost again", Summary.FullComparison.Rows.Single(row => row.Cells[0] == "Simple payback").Cells[column]);
    }

    [Fact]
    public void values_from_memory_are_marked_where_they_are_used()
    {
        var remembered = Samples.Quillmere.Now.Lines.Count(line => line.PerLuminaire.Source.FromMemory);
        Assert.NotEqual(0, remembered);
        Assert.Equal(remembered, Summary.Inputs[0].Tables[0].Rows.Count(row => row.Cells[^1].EndsWith("from memory", StringComparison.Ordinal)));
    }

    [Fact]
    public void a_study_without_options_is_summed_up_without_a_request()
    {
        var bare = Engine.StudyEvaluation.Run(Samples.Quillmere.Study with { Options = [], ChosenOption = null }, Samples.Request.Rules);
        var summary = BudgetSummary.From(bare, Samples.Request);
        Assert.EndsWith("no change is proposed yet", summary.Title);
        Assert.NotEmpty(Samples.Pdf(bare));
    }

    private static double Dollars(string text) =>
        double.Parse(text.Replace("$", "").Replace(",", "").Replace("−", "-"), CultureInfo.InvariantCulture);
}
