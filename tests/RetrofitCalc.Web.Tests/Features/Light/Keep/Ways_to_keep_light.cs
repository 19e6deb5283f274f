using Bunit;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Features.Light;
using RetrofitCalc.Web.Features.Light.Keep;
using RetrofitCalc.Web.Tests.Harness;
using static RetrofitCalc.Web.Tests.Features.Light.LightSamples;

namespace RetrofitCalc.Web.Tests.Features.Light.Keep;

public class Ways_to_keep_light
{
    private static readonly QuantityText Text = new("en-US", "USD", UnitSystem.UsCustomary);

    private static LightFix Lower { get; } = new()
    {
        Text = "9 in instead of 12 in", Lines = ["shelf"], Height = Length.FromMetres(0.2286), Light = Figures(183),
        ExtraPower = Power.FromWatts(0), ExtraKilowattHours = 0, WatchOut = "Less even.",
    };

    private static LightFix More { get; } = Lower with
    {
        Text = "3 tubes in each luminaire", Height = null, PerLuminaire = 3, ExtraPower = Power.FromWatts(180), ExtraKilowattHours = 705.6, WatchOut = "",
    };

    [Fact]
    public async Task stand_with_watts_energy_and_the_cost_of_the_whole_bill_and_change_the_option_at_a_press()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var result = open.Session.Result!;
        var table = open.Part<FixesTable>(p => p.Add(t => t.Stage, Loser() with { Fixes = [Lower, More] }).Add(t => t.Result, result).Add(t => t.Option, result.Options[0]).Add(t => t.Text, Text));
        var rows = table.FindAll("table.fixes tbody tr");
        Assert.Equal(["183", "10.5", "0.90", "none", "none"], rows[0].QuerySelectorAll("td").Take(5).Select(cell => cell.TextContent.Trim()));
        Assert.Equal(["180\u00A0W", "706"], rows[1].QuerySelectorAll("td").Skip(3).Take(2).Select(cell => cell.TextContent.Trim()));
        // 10 luminaires × 18 W × 3,920 h at 0.12: 84.67 a year of energy; the maintenance of a third tube comes on top.
        table.WaitForAssertion(() => Assert.DoesNotContain("Working out", table.Markup, StringComparison.Ordinal), TimeSpan.FromSeconds(30));
        var costs = table.FindAll("table.fixes tbody tr").Select(row => row.QuerySelectorAll("td")[5].TextContent.Trim()).ToList();
        Assert.Equal("none", costs[0]);
        Assert.InRange(int.Parse(costs[1].TrimStart('$'), System.Globalization.CultureInfo.InvariantCulture), 84, 110);

        await table.Find("button[aria-label^='Use this: 9 in']").ClickAsync(new());
        Assert.Equal(0.2286, open.Study.Options[0].Measures[0].Height!.Value.Metres);
        Assert.Equal("9 in instead of 12 in in Tubes", open.Session.CanUndo);
        Assert.EndsWith($"/studies/{open.Id}/light?area=rack&season=Plugs&stage=Growing", open.Address, StringComparison.Ordinal);
        Assert.Contains("Tubes now has: 9 in", table.Find("[role=status]").TextContent, StringComparison.Ordinal);
        await open.Session.UndoAsync();
        table.WaitForAssertion(() => Assert.Equal("", table.Find("[role=status]").TextContent));
        Assert.Null(open.Study.Options[0].Measures[0].Height);
    }

    [Fact]
    public void tell_which_other_stages_of_the_area_then_have_too_little()
    {
        Assert.Equal("Every stage here then keeps its light.", new FixOutcome(Money.FromUnits(1), []).Stages);
        Assert.Equal("Every stage here then has enough when new, 3 not until lamps are due.", new FixOutcome(Money.FromUnits(1), [], 3).Stages);
        Assert.Equal("Then too little light in Plugs, Growing.", new FixOutcome(Money.FromUnits(1), [Loser()]).Stages);
        Assert.Equal("Then too little light in Plugs, Growing and 2 more.", new FixOutcome(Money.FromUnits(1), [Loser(), Loser(), Loser()]).Stages);
    }

    [Fact]
    public async Task are_not_asked_for_where_the_light_is_kept()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var result = open.Session.Result!;
        var table = open.Part<FixesTable>(p => p.Add(t => t.Stage, Keeper("rack")).Add(t => t.Result, result).Add(t => t.Option, result.Options[0]).Add(t => t.Text, Text));
        Assert.Contains("Nothing is needed: Tubes keeps the light of this stage.", table.Markup, StringComparison.Ordinal);
        Assert.Empty(table.FindAll("table"));
    }

    private static LightTry Way(double light, double even, double watts, bool meets) => new()
    {
        Name = "18 W tube", Product = "tube", Height = Length.FromMetres(0.3048), Meets = meets, Lines = ["shelf"], Power = Power.FromWatts(watts),
        Light = Figures(light) with { Minimum = PhotonFluxDensity.FromMicromolesPerSquareMetre(light * even) }, MeanAtEnd = PhotonFluxDensity.FromMicromolesPerSquareMetre(light * 0.8),
    };

    [Fact]
    public async Task found_by_search_are_drawn_as_light_against_evenness()
    {
        LightTry bright = Way(200, 0.5, 400, true), even = Way(150, 0.7, 360, false), beaten = Way(140, 0.6, 300, false);
        var found = new LightSearchResult([bright, even, beaten], bright, [bright, even]);
        Assert.Equal("Of 3 ways 1 keep the target. Least watts: 18 W tube, 1\u00A0ft over the crop, all lamps, 400\u00A0W.", SearchWords.Finding(found, Loser(), Text));
        Assert.Equal("More even means less light: from 200 at 0.50 to 150 at 0.70", SearchWords.CurveTitle(found, Text));
        Assert.Equal(["kept", "missed", "more than wanted"], new[] { bright, even, bright with { TooMuch = true } }.Select(SearchWords.Target));
        Assert.Contains("None of 3 ways keeps the target", SearchWords.Finding(found with { Least = null }, Loser(), Text), StringComparison.Ordinal);
        Assert.Equal("Lay out the luminaires.", SearchWords.Finding(new LightSearchResult([], null, []) { Ask = "Lay out the luminaires." }, Loser(), Text));

        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        var svg = open.Part<TradeOffSvg>(p => p.Add(s => s.Found, found).Add(s => s.Wanted, 174).Add(s => s.Text, Text));
        Assert.Equal((3, 2, 1), (svg.FindAll(".tried").Count, svg.FindAll(".c-prop").Count, svg.FindAll(".least").Count));
        // Evenness 0.5 lies 105 of 210 px up from 220; 200 at the end of an axis to 200 lies at 720 − 12.
        Assert.Equal(("708", "115"), (svg.Find(".c-prop").GetAttribute("cx"), svg.Find(".c-prop").GetAttribute("cy")));
        Assert.NotEmpty(svg.FindAll(".target-over"));
    }

    // The option asked for is not in the study: its bill cannot be worked out.
    [Fact]
    public async Task say_so_when_their_cost_cannot_be_worked_out()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var result = open.Session.Result!;
        var gone = result.Options[0] with { Option = result.Options[0].Option with { Id = "gone" } };
        var table = open.Part<FixesTable>(p => p.Add(t => t.Stage, Loser() with { Fixes = [Lower, More] }).Add(t => t.Result, result).Add(t => t.Option, gone).Add(t => t.Text, Text));
        table.WaitForAssertion(() => Assert.Contains("The yearly cost could not be worked out", table.Markup, StringComparison.Ordinal), TimeSpan.FromSeconds(30));
        Assert.All(table.FindAll("table.fixes tbody tr"), row => Assert.Equal("not known", row.QuerySelectorAll("td")[5].TextContent.Trim()));
        Assert.DoesNotContain("Working out", table.Markup, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(10.0, 180.0, "The light stays on target until the lamps are due.")]
    [InlineData(10.0, 160.0, "What is left of the first day's light when lamps are due stands below.")] // 160 · 16 · 0.0036 = 9.2, below 10
    [InlineData(null, 180.0, "No target is set for this stage, so nobody can say when the light is too little.")]
    public async Task stay_on_target_only_where_there_is_one_and_it_is_met_at_the_end(double? wanted, double end, string said)
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        var kept = Keeper("rack") with { Target = wanted is { } least ? AtLeast(least) : null, AtEnd = Figures(end) };
        var part = open.Part<OverTime>(p => p.Add(t => t.Stage, kept).Add(t => t.Option, "Tubes").Add(t => t.Text, Text));
        Assert.Equal(said, part.Find("section p").TextContent);
    }

    [Fact]
    public async Task are_looked_at_over_the_years()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        // 182 now falls to 164 when due: 90 %; 158 to 126: 80 %.
        var now = Stage(LightVerdict.Unchanged) with { Now = Figures(182), After = Figures(182), AtEnd = Figures(163.8), Target = AtLeast(10), BelowTargetAfterYears = 1.2 };
        var proposed = Loser() with { AtEnd = Figures(126.4), BelowTargetAfterYears = 0 };
        var part = open.Part<OverTime>(p => p.Add(t => t.Stage, proposed).Add(t => t.Now, now).Add(t => t.Option, "Tubes").Add(t => t.Text, Text));
        Assert.Contains("The light is below the target from the first day.", part.Markup, StringComparison.Ordinal);
        var rows = part.FindAll("tbody tr");
        Assert.Equal(["90\u00A0%", "80\u00A0%"], rows.Select(row => row.QuerySelectorAll("td")[3].TextContent));
        Assert.Equal(["after 1.2\u00A0yr", "from the first day"], rows.Select(row => row.QuerySelectorAll("td")[4].TextContent));
        // 10 mol/m² in 16 h: 10 / (16 · 0.0036) = 173.6
        Assert.Contains("174 while lit", rows[0].TextContent, StringComparison.Ordinal);
    }
}
