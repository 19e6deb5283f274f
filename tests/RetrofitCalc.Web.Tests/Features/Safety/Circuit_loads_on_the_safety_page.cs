using Bunit;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Safety;
using RetrofitCalc.Web.Tests.Features.Survey;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Safety;

public class Circuit_loads_on_the_safety_page
{
    private static Study Site()
    {
        var study = SurveySamples.HallAndBarn();
        return study with { Lines = [study.Lines[0] with { SupplyVolts = 120, Reading = new(Power.FromWatts(60), new(2026, 5, 1)) }, .. study.Lines.Skip(1)] };
    }

    [Fact]
    public async Task defer_to_the_electrician_and_call_a_line_without_voltage_unknown()
    {
        await using var open = await OpenStudy.Of(Site());
        var panel = open.Part<CircuitPanel>(_ => { });
        Assert.Contains("a licensed electrician decide", panel.Markup, StringComparison.Ordinal);
        Assert.Contains("not known", panel.FindAll("tbody tr")[1].TextContent);
    }

    // 60 W at 120 V: 0.50 A at least; with 0.55 A read, power factor 0.91 and ten of them draw 5.5 A.
    [Fact]
    public async Task take_a_current_read_at_a_luminaire()
    {
        await using var open = await OpenStudy.Of(Site());
        var panel = open.Part<CircuitPanel>(_ => { });
        Assert.Contains("at least 0.50", panel.FindAll("tbody tr")[0].TextContent);
        await panel.Find("#f-lines-0-reading-amperes").ChangeAsync(new() { Value = "0.55" });
        Assert.Equal(0.55, open.Study.Lines[0].Reading!.Amperes);
        var cells = open.Part<CircuitPanel>(_ => { }).FindAll("tbody tr")[0].Children.Select(cell => cell.TextContent);
        Assert.Equal(["Line a", "now", "10", "120", "0.91", "0.55", "5.5", "6.9", "29"], cells);
    }
}
