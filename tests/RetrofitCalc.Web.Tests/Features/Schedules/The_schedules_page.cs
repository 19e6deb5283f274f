using Bunit;
using NodaTime;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Schedules;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Schedules;

public class The_schedules_page
{
    // March 1 to October 31 are 245 days; 245 × 16 h = 3,920 h.
    [Fact]
    public async Task says_how_long_and_how_often_the_lights_burn()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        var page = open.Page<SchedulesPage>();
        Assert.Contains("Rack burns longest: 3,920", page.Find("h1").TextContent, StringComparison.Ordinal);
        Assert.Equal("Lit 3,920\u00A0h a year, switched on 245 times", page.Find("figcaption h3").TextContent);
    }

    [Fact]
    public async Task names_the_days_without_a_season()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        var gaps = open.Page<SchedulesPage>().FindAll(".cell-message.ask").Select(m => m.TextContent);
        Assert.Equal(
            ["No season Jan 1 to Feb 28: the area stands empty and dark.", "No season Nov 1 to Dec 31: the area stands empty and dark."], gaps);
    }

    [Fact]
    public async Task names_an_overlap_beside_the_later_season_and_keeps_what_was_typed()
    {
        var study = SmallStudies.OneRack();
        study = ScheduleEdits.Area(study, 0, a => a with { Seasons = [.. a.Seasons, SmallStudies.Season("Winter", new(11, 1), new(2, 28))] });
        await using var open = await OpenStudy.Of(study);
        var page = open.Page<SchedulesPage>();
        await page.Find("#f-areas-0-seasons-1-start").ChangeAsync(new() { Value = "Oct 15" });
        await page.WaitForStateAsync(() => open.Session.Problems.Count > 0);
        var winter = page.Find("section[aria-label='Winter in Rack']");
        Assert.Contains("\"Plugs\" and \"Winter\" of Rack overlap on 15 October", winter.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("overlap", page.Find("section[aria-label='Plugs in Rack']").TextContent, StringComparison.Ordinal);
        Assert.Equal("Oct 15", page.Find("#f-areas-0-seasons-1-start").GetAttribute("value"));
        Assert.Equal(new AnnualDate(10, 15), open.Study.Areas[0].Seasons[1].Start);
    }

    [Fact]
    public async Task keeps_an_impossible_hour_in_its_cell_with_the_reason_below_the_row()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        var page = open.Page<SchedulesPage>();
        await page.Find("#f-areas-0-seasons-0-stages-0-lightsoff").ChangeAsync(new() { Value = "25:00" });
        Assert.Equal("25:00", page.Find("#f-areas-0-seasons-0-stages-0-lightsoff").GetAttribute("value"));
        Assert.Contains("Lights off: 25:00", page.Find("tr.message").TextContent, StringComparison.Ordinal);
        Assert.Equal(new LocalTime(22, 0), open.Study.Areas[0].Seasons[0].Stages[0].LightsOff);
    }

    [Fact]
    public async Task starts_a_weekly_schedule_where_people_work()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack() with { Areas = [new Area { Id = "hall", Name = "Hall" }] });
        var page = open.Page<SchedulesPage>();
        await page.FindAll("button").Single(b => b.TextContent.StartsWith("Start with Monday", StringComparison.Ordinal)).ClickAsync(new());
        // 2027 has 261 days from Monday to Friday; 261 × 10 h = 2,610 h.
        Assert.Contains("2,610", page.Find("h1").TextContent, StringComparison.Ordinal);
    }
}
