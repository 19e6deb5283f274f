using Bunit;
using RetrofitCalc.Web.Charts;

namespace RetrofitCalc.Web.Tests.Charts;

/// <summary>The figure's words are markup; the drawing is handed to the script, once for each new list.</summary>
public class A_chart_on_a_page : BunitContext
{
    private static readonly ChartFigure Figure = new(
        "Ballasts take 14 % of the load", "Watts connected", "Watts by set-up: 7,200 W now.",
        new ChartSpec(ChartKind.Bars, [new ChartSeries("now", Ink.NowHatched, [new ChartPoint(800, 0, "6,000")], "now")]) { Groups = [["Two T8", "100 luminaires"]] },
        new ChartTable(["Set-up", "W"], [["Two T8", "6,000"]])) { Legend = [new(Ink.NowHatched, "ballast loss")] };

    private readonly BunitJSModuleInterop _drawing;
    private readonly BunitJSModuleInterop _module;

    public A_chart_on_a_page()
    {
        _module = JSInterop.SetupModule("./Charts/Chart.razor.js");
        _drawing = _module.SetupModule("draw", _ => true);
        _drawing.SetupVoid("set", _ => true).SetVoidResult();
        _drawing.SetupVoid("destroy").SetVoidResult();
    }

    [Fact]
    public void is_titled_with_the_finding_and_spoken_in_a_sentence()
    {
        var page = Render<Chart>(p => p.Add(c => c.Figure, Figure));
        Assert.Equal("Ballasts take 14 % of the load", page.Find("figcaption h3").TextContent);
        Assert.Equal("Watts connected", page.Find("figcaption p").TextContent);
        Assert.Equal("Watts by set-up: 7,200 W now.", page.Find("[role=img]").GetAttribute("aria-label"));
        Assert.Equal(page.Find("h3").Id, page.Find("figure").GetAttribute("aria-labelledby"));
        Assert.Contains("now-hatched", page.Find(".keys .key").ClassName);
    }

    [Fact]
    public void has_the_same_figures_as_a_table()
    {
        var table = Render<Chart>(p => p.Add(c => c.Figure, Figure)).Find("details.twin table");
        Assert.Equal(["Set-up", "W"], table.QuerySelectorAll("thead th").Select(th => th.TextContent));
        Assert.Equal(["Two T8", "6,000"], table.QuerySelectorAll("tbody tr > *").Select(cell => cell.TextContent));
    }

    [Fact]
    public void hands_the_finished_list_to_the_script_once()
    {
        var page = Render<Chart>(p => p.Add(c => c.Figure, Figure));
        page.Render(p => p.Add(c => c.Figure, Figure with { Drawn = "the same list" }));
        Assert.Same(Figure.Spec, Assert.Single(_module.Invocations["draw"]).Arguments[1]);
        Assert.Empty(_drawing.Invocations["set"]);
    }

    [Fact]
    public void hands_over_a_new_list_without_starting_again()
    {
        var page = Render<Chart>(p => p.Add(c => c.Figure, Figure));
        var next = Figure.Spec with { Groups = [["Two T5", "9 luminaires"]] };
        page.Render(p => p.Add(c => c.Figure, Figure with { Spec = next }));
        Assert.Single(_module.Invocations["draw"]);
        Assert.Same(next, Assert.Single(_drawing.Invocations["set"]).Arguments[0]);
    }

    [Fact]
    public async Task takes_the_drawing_down_with_the_page()
    {
        Render<Chart>(p => p.Add(c => c.Figure, Figure));
        await DisposeComponentsAsync();
        Assert.Single(_drawing.Invocations["destroy"]);
    }
}
