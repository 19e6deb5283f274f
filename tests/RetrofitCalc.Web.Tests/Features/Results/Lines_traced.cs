using RetrofitCalc.Reports;
using RetrofitCalc.Web.Features.Results;

namespace RetrofitCalc.Web.Tests.Features.Results;

/// <summary>Every line shows the numbers its energy and cost are made of.</summary>
public class Lines_traced
{
    private static readonly QuantityText Text = QuantityText.For(SampleResult.Study);
    private static readonly IReadOnlyList<LineTrace> Rows = LineTrace.Of(SampleResult.Small, Text);

    // 100 luminaires × 60 W = 6,000 W; after: 100 × 30 W = 3,000 W.
    [Fact]
    public void show_now_and_proposed_where_a_line_changes()
    {
        Assert.Equal(("now", "100", "60.0", "6,000"), (Rows[0].State, Rows[0].Luminaires, Rows[0].Watts, Rows[0].Connected));
        Assert.Equal(("proposed", "100", "30.0", "3,000"), (Rows[1].State, Rows[1].Luminaires, Rows[1].Watts, Rows[1].Connected));
    }

    [Fact]
    public void show_a_kept_line_once() => Assert.Equal(["Shelves", "Shelves", "Hall north"], Rows.Select(r => r.Line));

    [Fact]
    public void name_the_evidence_of_the_watts() => Assert.Equal("invented: Invented for this test", Rows[0].Evidence);

    [Fact]
    public void put_lamps_and_ballasts_side_by_side() =>
        Assert.Equal(["Lamp every 4.0\u00A0yr (4,000\u00A0h): invented", "Ballast every 2.5\u00A0yr (2,500\u00A0h): invented"], Rows[0].Lives);
}
