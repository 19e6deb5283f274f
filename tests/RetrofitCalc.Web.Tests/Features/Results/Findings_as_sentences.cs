using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Features.Results.Findings;

namespace RetrofitCalc.Web.Tests.Features.Results;

/// <summary>Titles say what was found, with the number in them.</summary>
public class Findings_as_sentences
{
    private static readonly QuantityText Text = QuantityText.For(SampleResult.Study);
    private const string S = "\u00A0";

    [Fact]
    public void the_headline_names_the_option_its_payback_and_its_range() =>
        Assert.Equal("With “Direct-wire” the money is back in 2.5 years; the likely range is 2.1 to 3.0", HeadlineFinding.Sentence(SampleResult.Small, Text));

    [Fact]
    public void the_headline_says_plainly_that_the_money_never_comes_back() =>
        Assert.Equal("“Direct-wire” never pays back in 3 years",
            HeadlineFinding.Sentence(SampleResult.With(o => o with { SimplePayback = new Payback(null) }), Text));

    [Fact]
    public void the_headline_keeps_never_as_the_end_of_the_range() =>
        Assert.Equal("With “Direct-wire” the money is back in 2.5 years; the likely range runs from 2.1 to never in 3",
            HeadlineFinding.Sentence(SampleResult.With(o => o with { Ranges = o.Ranges with { Payback = new(2.1, 2.5, null) } }), Text));

    [Fact]
    public void the_headline_without_an_option_is_the_bill() =>
        Assert.Equal("The lights cost $850 a year to run", HeadlineFinding.Sentence(SampleResult.WithoutOptions, Text));

    // Every measure refused: nothing is spent and nothing comes back, which is no payback of zero years.
    [Fact]
    public void the_headline_of_an_option_that_does_nothing_promises_nothing()
    {
        var idle = new CashFlowYear(0, Money.Zero, Money.Zero, Money.Zero, Money.Zero, Money.Zero);
        var result = SampleResult.With(o => o with { CashFlow = [idle, idle with { Year = 1 }], SimplePayback = new Payback(0) });
        Assert.Contains("changes no figure", HeadlineFinding.Sentence(result, Text));
    }

    [Fact]
    public void the_headline_without_lines_says_so() =>
        Assert.Equal("No luminaire is counted yet", HeadlineFinding.Sentence(SampleResult.WithNow(n => n with { Lines = [] }), Text));

    [Fact]
    public void the_lead_gives_saving_first_cost_and_open_stops() =>
        Assert.Equal("It takes $400 a year off the bill and costs $1,200 to do. By the bill alone, without the lamps and ballasts no longer bought, it takes 3.0 years. One safety stop is open.",
            HeadlineFinding.Lead(SampleResult.Small, Text));

    [Fact]
    public void the_lead_says_what_a_ratchet_keeps_back_in_the_first_year() =>
        Assert.StartsWith("It takes $400 a year off the bill, $300 in the first, and costs $1,200 to do.",
            HeadlineFinding.Lead(SampleResult.With(o => o with { FirstYearBillSaving = Money.FromUnits(300) }), Text));

    // 850 now, 890 after.
    [Fact]
    public void the_lead_calls_a_dearer_bill_dearer() =>
        Assert.StartsWith("It adds $40 a year to the bill",
            HeadlineFinding.Lead(SampleResult.With(o => o with { After = o.After with { Seasons = [o.After.Site with { Cost = Money.FromUnits(890) }] } }), Text));

    // 1,000 W of 7,200 W are lost: 13.9 %.
    [Fact]
    public void ballasts_are_named_with_their_share_of_the_load() =>
        Assert.Equal($"Ballasts take 14{S}% of the load and give no light", WattsFinding.Sentence(SampleResult.Small, Text));

    // One line's loss is not known: the 200 W of the other are a lower limit.
    [Fact]
    public void a_loss_nobody_knows_makes_the_share_a_lower_limit() =>
        Assert.StartsWith("Ballasts take at least", WattsFinding.Sentence(
            SampleResult.WithNow(n => n with { Lines = [n.Lines[0] with { BallastLoss = null }, n.Lines[1]] }), Text));

    // Saved: summer 300, winter 100, all year 0; 300 of 400.
    [Fact]
    public void the_season_that_saves_most_is_named_with_its_share() =>
        Assert.Equal($"Summer brings 75{S}% of the saving", SeasonFinding.Sentence(SampleResult.Small, Text));

    [Fact]
    public void without_an_option_the_dearest_season_is_named() =>
        Assert.Equal("Summer costs most: $600 of $850", SeasonFinding.Sentence(SampleResult.WithoutOptions, Text));

    [Fact]
    public void an_option_that_saves_nothing_is_called_that() =>
        Assert.Equal("“Direct-wire” does not lower the cost of any year",
            SeasonFinding.Sentence(SampleResult.With(o => o with { After = SampleResult.Small.Now }), Text));

    [Fact]
    public void the_cash_flow_tells_when_the_money_is_back() =>
        Assert.Equal("The money is back in 2.5 years", CashFlowFinding.Sentence(SampleResult.Small.Options[0], Text));

    [Fact]
    public void the_cash_flow_tells_how_much_is_missing_at_the_end() =>
        Assert.Equal("The money does not come back in 2 years; $1,000 is still missing", CashFlowFinding.Sentence(
            SampleResult.Small.Options[0] with { SimplePayback = new Payback(null), CashFlow = SampleResult.Flow(-1200, 100, 100) }, Text));

    [Fact]
    public void the_cash_flow_tells_that_the_gain_is_lost_again() =>
        Assert.Contains("lost again", CashFlowFinding.Sentence(SampleResult.Small.Options[0] with { SimplePayback = new Payback(2.5, true) }, Text));

    // Shelves: lamps at 4 years, ballasts at 2.5.
    [Fact]
    public void the_calendar_names_the_area_whose_ballasts_fail_first() =>
        Assert.Equal("In Culture room the ballasts fail 1.5 years before the lamps", CalendarFinding.Sentence(SampleResult.Small, Text));

    // Only the hall is left: lamps at 3 years, ballasts at 6.
    [Fact]
    public void the_calendar_names_the_first_date_when_lamps_fail_first() =>
        Assert.Equal("The first lamps fall due in Jan 2030; no ballast fails before its lamps", CalendarFinding.Sentence(
            SampleResult.WithNow(n => n with { Lines = [n.Lines[1]], Replacements = [n.Replacements[1]] }), Text));

    [Fact]
    public void the_calendar_says_when_nothing_falls_due() =>
        Assert.Equal("Nothing falls due in 10 years", CalendarFinding.Sentence(SampleResult.WithNow(n => n with { Replacements = [] }), Text));
}
