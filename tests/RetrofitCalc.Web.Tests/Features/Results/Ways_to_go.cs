using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Features.Results;

namespace RetrofitCalc.Web.Tests.Features.Results;

/// <summary>The comparison of keeping with every option.</summary>
public class Ways_to_go
{
    private static readonly QuantityText Text = QuantityText.For(SampleResult.Study);
    private const string S = "\u00A0";

    [Theory]
    [InlineData("Connected load", "7,200", "4,200")]
    [InlineData("of it lost in ballasts", "1,000", "200")]
    // 7,200 W × 3.412142 = 24,567 BTU/h; 4,200 W gives 14,331.
    [InlineData("Heat from lights", "24,567", "14,331")]
    [InlineData("Cooling it asks for", "2.0", "1.2")]
    [InlineData("Bill, lights and plant", "$850", "$450")]
    [InlineData("First cost after incentive", "none", "$1,200")]
    // 3,000 + 400 + 1,600
    [InlineData("Lamps, ballasts and tubes, 10 years", "$5,000", "$0")]
    [InlineData("Payback, likely", "–", $"2.5{S}yr")]
    [InlineData("Payback, range", "–", $"2.1–3.0{S}yr")]
    [InlineData("Internal rate of return", "–", $"11.2{S}%")]
    [InlineData("Crop light", "not known", "not known")]
    [InlineData("Open safety stops", "–", "1")]
    public void put_each_figure_beside_keeping(string row, string now, string proposed) =>
        Assert.Equal([now, proposed], Cells(WaysTable.Of(SampleResult.Small, Text), row));

    [Fact]
    public void say_when_there_is_no_rate_of_return() =>
        Assert.Equal("none", Cells(WaysTable.Of(SampleResult.With(o => o with { InternalRates = [] }), Text), "Internal rate of return")[1]);

    [Fact]
    public void name_all_rates_of_return_when_there_are_several() =>
        Assert.Equal($"2 rates: 5.0{S}%, 40.0{S}%",
            Cells(WaysTable.Of(SampleResult.With(o => o with { InternalRates = [0.05, 0.4] }), Text), "Internal rate of return")[1]);

    [Fact]
    public void put_the_chosen_option_beside_keeping()
    {
        var small = SampleResult.Small;
        var other = small.Options[0] with { Option = small.Options[0].Option with { Id = "renew", Name = "Renew" } };
        var result = small with { Options = [other, small.Options[0]], Study = small.Study with { ChosenOption = "dw" } };
        var columns = WaysTable.Of(result, Text).Columns;
        Assert.Equal(["Keep as is", "Direct-wire", "Renew"], columns.Select(c => c.Name));
        Assert.Equal([false, true, false], columns.Select(c => c.Chosen));
    }

    [Fact]
    public void ask_one_question_once_for_all_lines_it_concerns() =>
        Assert.Equal([new QuestionRow("What is the supply voltage?", "Shelves; Hall north")], QuestionRow.Of(SampleResult.Small));

    [Fact]
    public void leave_out_parts_of_the_first_cost_that_are_nothing() =>
        Assert.Equal(["Tubes, luminaires, lamps, ballasts $800", "Electrician $300", "Contingency $110", "Incentive −$10"],
            CostRow.Of(SampleResult.Small.Options[0].FirstCost, Text).Select(r => $"{r.Name} {r.Amount}"));

    [Fact]
    public void say_which_area_loses_light_and_what_each_way_saves_at_equal_light()
    {
        var losing = new StageLight
        {
            Area = "culture", Season = "Summer", Stage = "growing", Verdict = LightVerdict.Loses, Change = -0.132, ChangeUncertainty = 0.04, Photoperiod = OperatingTime.FromHours(16),
        };
        var table = WaysTable.Of(SampleResult.With(o => o with
        {
            Light = new([losing], []),
            AtEqualLight = new(Money.FromUnits(340), Money.FromUnits(1400), new Payback(3.6), Power.FromWatts(4700), Differs: true) { Without = ["Seedling racks"] },
        }), Text);
        Assert.Equal(["not known", $"loses 13{S}% ±{S}4{S}%"], Cells(table, "Crop light"));
        Assert.Equal(["–", "$400"], Cells(table, "Saved, luminaire for luminaire"));
        Assert.Equal(["–", "$340, without Seedling racks"], Cells(table, "Saved at equal light"));
        Assert.Equal(["–", $"3.6{S}yr, without Seedling racks"], Cells(table, "Payback at equal light"));
    }

    [Fact]
    public void leave_out_equal_light_where_no_way_changes_it() =>
        Assert.DoesNotContain(WaysTable.Of(SampleResult.Small, Text).Groups.SelectMany(g => g.Rows), row => row.Name == "Saved at equal light");

    [Fact]
    public void say_where_people_would_have_too_little_light()
    {
        TaskLight Hall(double after) => new()
        {
            Area = "hall", Task = "packing", Wanted = Illuminance.FromLux(300), Now = Illuminance.FromLux(320), After = Illuminance.FromLux(after),
            Source = new(EvidenceKind.Invented, "Invented for this test"), Basis = "lumen method",
        };
        var result = SampleResult.With(o => o with { Light = new([], [Hall(280)]) }) with { Light = new([], [Hall(320)]) };
        // 320 / 10.764 = 30 fc, 280 / 10.764 = 26 fc.
        Assert.Equal([$"320{S}lx (30{S}fc)", $"280{S}lx (26{S}fc), 300 wanted"], Cells(WaysTable.Of(result, Text), "Light for people, Packing hall"));
    }

    private static IReadOnlyList<string> Cells(WaysTable table, string row) => table.Groups.SelectMany(g => g.Rows).Single(r => r.Name == row).Cells;
}
