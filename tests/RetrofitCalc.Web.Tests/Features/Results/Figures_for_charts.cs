using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Charts;
using RetrofitCalc.Web.Features.Results.Figures;

namespace RetrofitCalc.Web.Tests.Features.Results;

/// <summary>Charts get finished lists: every length, label and table cell.</summary>
public class Figures_for_charts
{
    private static readonly QuantityText Text = QuantityText.For(SampleResult.Study);
    private const string S = "\u00A0";

    [Fact]
    public void watts_now_are_split_into_lamps_and_ballast_loss()
    {
        var series = WattsChart.Of(SampleResult.Small, Text).Spec.Series;
        Assert.Equal([5200, 1000], Lengths(series, Ink.Now));
        Assert.Equal([800, 200], Lengths(series, Ink.NowHatched));
        Assert.Equal(["6,000", "1,200"], Labels(series, Ink.NowHatched));
    }

    [Fact]
    public void watts_proposed_end_with_their_sum_and_kept_lines_say_so() =>
        Assert.Equal(["3,000", "1,200 (kept)"], Labels(WattsChart.Of(SampleResult.Small, Text).Spec.Series, Ink.ProposedHatched));

    [Fact]
    public void watts_of_a_loss_nobody_knows_say_not_known_in_the_table()
    {
        var result = SampleResult.WithNow(n => n with { Lines = [n.Lines[0] with { BallastLoss = null }, n.Lines[1]] });
        Assert.Equal(["Two 4 ft T8", "100", "6,000", "not known", "3,000"], WattsChart.Of(result, Text).Twin.Rows[0]);
    }

    [Fact]
    public void many_set_ups_are_summed_beyond_the_most_that_can_be_read()
    {
        var lines = Enumerable.Range(1, 14).Select(i => SampleResult.Small.Now.Lines[0] with { Line = $"x{i}", Connected = Power.FromWatts(i) }).ToList();
        var study = SampleResult.Study with { Lines = [.. lines.Select(l => SampleResult.Study.Lines[0] with { Id = l.Line, SetUp = $"s-{l.Line}" })] };
        var groups = WattsGroup.Of(SampleResult.Small with { Study = study, Now = SampleResult.Small.Now with { Lines = lines } }, 10);
        Assert.Equal(10, groups.Count);
        Assert.Equal("5 other set-ups", groups[^1].Name);
        // 1 + 2 + 3 + 4 + 5 W
        Assert.Equal(15, groups[^1].Now.Watts);
        Assert.Equal(14 * 15 / 2, groups.Sum(g => g.Now.Watts));
    }

    [Fact]
    public void seasons_without_light_are_left_out() =>
        Assert.Equal(["Summer", "Winter", "All year"], SeasonChart.Of(SampleResult.Small, Text).Twin.Rows.Select(r => r[0]));

    [Fact]
    public void seasons_carry_cost_and_energy_at_the_end_of_each_bar()
    {
        var series = SeasonChart.Of(SampleResult.Small, Text).Spec.Series;
        Assert.Equal([$"$600 · 6,000{S}kWh", $"$200 · 2,000{S}kWh", $"$50 · 500{S}kWh"], Labels(series, Ink.Now));
        Assert.Equal([300, 100, 50], Lengths(series, Ink.Proposed));
    }

    [Fact]
    public void the_cash_flow_marks_the_payback_and_its_range_on_the_zero_line()
    {
        var series = CashFlowChart.Of(SampleResult.Small.Options[0], Text).Spec.Series;
        Assert.Equal([-1200, -800, -300, 300], series[0].Points.Select(p => p.Y));
        Assert.Equal([2.1, 3], Lengths(series, Ink.Span));
        Assert.Equal(new ChartPoint(2.5, 0, $"pays back at 2.5{S}yr (2.1–3.0{S}yr)"), Assert.Single(series, s => s.Ink == Ink.Ring).Points[0]);
    }

    [Fact]
    public void a_cash_flow_that_never_turns_has_no_payback_mark()
    {
        var never = SampleResult.Small.Options[0] with { SimplePayback = new Payback(null) };
        never = never with { Ranges = never.Ranges with { Payback = new(null, null, null) } };
        Assert.Equal([Ink.ProposedLine], CashFlowChart.Of(never, Text).Spec.Series.Select(s => s.Ink));
    }

    [Fact]
    public void the_calendar_has_one_row_an_area_with_tracks_for_lamps_and_ballasts()
    {
        var figure = CalendarChart.Of(SampleResult.Small, Text);
        Assert.Equal([["Culture room", "1 line"], ["Packing hall", "1 line"]], figure.Spec.Up.Ticks.Select(t => t.Lines));
        Assert.Equal([new ChartPoint(4, -0.15), new ChartPoint(3, 0.85)], figure.Spec.Series[0].Points);
        Assert.Equal([new ChartPoint(2.5, 0.25)], figure.Spec.Series[1].Points);
        Assert.Equal([["Culture room", "Jan 2031", "Jul 2029"], ["Packing hall", "Jan 2030", "none"]], figure.Twin.Rows);
    }

    [Fact]
    public void the_calendar_begins_in_the_year_of_the_start() =>
        Assert.Equal(new ChartTick(0, ["2027"]).Lines, CalendarChart.Of(SampleResult.Small, Text).Spec.Across.Ticks[0].Lines);

    private static IEnumerable<double> Lengths(IReadOnlyList<ChartSeries> series, Ink ink) => series.Single(s => s.Ink == ink).Points.Select(p => p.X);

    private static IEnumerable<string?> Labels(IReadOnlyList<ChartSeries> series, Ink ink) => series.Single(s => s.Ink == ink).Points.Select(p => p.Label);
}
