using Bunit;
using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Schedules.Staggered;
using RetrofitCalc.Web.Tests.Features.Meter;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Schedules;

/// <summary>Two racks of 100 luminaires of 59 W meet from 13 to 14: 5.9 kW of demand, at 10 a kilowatt 708 a year.</summary>
public class Lights_at_other_times
{
    private const string S = "\u00A0";

    [Fact]
    public async Task are_offered_with_demand_and_saving_and_the_grower_is_asked()
    {
        await using var open = await OpenStudy.Of(Racks());
        var panel = await AskAsync(open);
        var offers = panel.FindAll(".findings li");
        Assert.Equal(2, offers.Count);
        Assert.StartsWith($"Start Rack A an hour earlier: demand −5.9{S}kW, saves $708 a year.", offers[0].TextContent.Trim(), StringComparison.Ordinal);
        Assert.StartsWith($"Start Rack B an hour later: demand −5.9{S}kW, saves $708 a year.", offers[1].TextContent.Trim(), StringComparison.Ordinal);
        Assert.Contains("Ask the grower first", panel.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task are_entered_as_one_edit_that_keeps_the_lit_day_and_can_be_undone()
    {
        await using var open = await OpenStudy.Of(Racks());
        var panel = await AskAsync(open);
        await panel.FindAll(".findings button")[1].ClickAsync(new());
        var stage = open.Study.Areas[1].Seasons[0].Stages[0];
        Assert.Equal((new LocalTime(14, 0), new LocalTime(22, 0)), (stage.LightsOn, stage.LightsOff));
        Assert.Equal("start of Rack B an hour later", open.Session.CanUndo);
        panel.WaitForAssertion(() => Assert.Contains("The study has changed since", panel.Markup, StringComparison.Ordinal));
        await open.Session.UndoAsync();
        Assert.Equal(new LocalTime(13, 0), open.Study.Areas[1].Seasons[0].Stages[0].LightsOn);
    }

    [Fact]
    public async Task are_not_entered_beside_a_meter_year_that_shows_the_present_times()
    {
        await using var open = await OpenStudy.Of(Racks() with
        {
            Meter = MeterSamples.Of(60, time => time.Hour switch { 13 => 17_000, >= 6 and < 21 => 11_000, _ => 5_000 }),
        });
        var panel = await AskAsync(open);
        Assert.NotEmpty(panel.FindAll(".findings li"));
        Assert.Empty(panel.FindAll(".findings button"));
        Assert.Contains("The meter year shows the lights at their present times", panel.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task that_save_nothing_are_said_so()
    {
        await using var open = await OpenStudy.Of(Racks() with { Tariff = SmallStudies.OneRack().Tariff });
        var panel = await AskAsync(open);
        Assert.Contains("No shift of one area by up to two hours takes anything off this bill", panel.Markup, StringComparison.Ordinal);
    }

    private static async Task<IRenderedComponent<StaggerPanel>> AskAsync(OpenStudy open)
    {
        var panel = open.Part<StaggerPanel>(_ => { });
        await panel.Find("button").ClickAsync(new());
        panel.WaitForAssertion(() => Assert.Equal("Work it out again", panel.Find("button").TextContent), TimeSpan.FromSeconds(30));
        return panel;
    }

    private static Study Racks() => SmallStudies.OneRack() with
    {
        Areas = [Rack("a", "Rack A", 6), Rack("b", "Rack B", 13)],
        Lines = [Line("a"), Line("b")],
        Tariff = SmallStudies.OneRack().Tariff with { Demand = [new DemandCharge { Name = "Demand", Price = DemandPrice.FromPerKilowatt(10) }] },
    };

    private static SurveyLine Line(string area) => new() { Id = $"line-{area}", Name = area, Area = area, SetUp = "f32t8-2-is-nlo", Count = 100 };

    private static Area Rack(string id, string name, int on)
    {
        var season = SmallStudies.Season("Year", new(1, 1), new(12, 31));
        return new Area
        {
            Id = id, Name = name, GrowsCrop = true,
            Seasons = [season with { Stages = [season.Stages[0] with { LightsOn = new LocalTime(on, 0), LightsOff = new LocalTime(on + 8, 0) }] }],
        };
    }
}
