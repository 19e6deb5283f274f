using Bunit;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Meter;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Meter;

public class The_meter_page
{
    [Fact]
    public async Task without_a_meter_year_says_what_bills_rest_on()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var page = open.Page<MeterPage>();
        Assert.Equal("No meter year is taken in yet", page.Find("h1").TextContent);
        Assert.Contains("No load of anything else is stated", page.Find(".lead").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll(".meter-state"));
        Assert.NotNull(page.Find("#meter-file"));
    }

    // 20 kW for 8 h and 50 kW for 16 h a day are 960 kWh; 365 days less a night hour in March and one more in November: 350,400 kWh.
    [Fact]
    public async Task shows_which_year_is_taken_in_and_what_was_filled()
    {
        await using var open = await OpenStudy.Of(Metered(MeterSamples.DayAndNight() with { Filled = [new FilledGap(0, 4, "invented rule")] }));
        var page = open.Page<MeterPage>();
        Assert.Equal("The meter’s own year: 350,400\u00A0kWh, peak 50.0\u00A0kW", page.Find("h1").TextContent);
        var state = page.Find(".meter-state").TextContent;
        Assert.All(new[] { "Invented meter", "January 1, 2027 to December 31, 2027", "30 minutes, 17,520 of them", "4 intervals", "invented rule" },
            part => Assert.Contains(part, state, StringComparison.Ordinal));
        Assert.Equal(2, page.FindAll("figure").Count);
    }

    // 590 W of luminaires over 3,920 h are 2,312.8 kWh of 350,400: 0.7 %.
    [Fact]
    public async Task says_what_share_the_surveyed_lights_explain()
    {
        await using var open = await OpenStudy.Of(Metered(MeterSamples.DayAndNight()));
        var page = open.Page<MeterPage>();
        Assert.Equal("The surveyed lights explain 1\u00A0% of what the meter shows", page.Find("#meter-share").TextContent);
        Assert.Empty(page.FindAll(".notice.warn"));
    }

    // The meter shows 100 W, the luminaires 590 W in all their 3,920 h, half-hourly 7,840 intervals.
    [Fact]
    public async Task warns_where_the_survey_exceeds_the_meter_and_says_what_to_look_at()
    {
        await using var open = await OpenStudy.Of(Metered(MeterSamples.Of(30, _ => 100)));
        var warning = open.Page<MeterPage>().Find(".notice.warn").TextContent;
        Assert.Contains("in 7,840 of 17,520 intervals, by up to 0.5\u00A0kW", warning, StringComparison.Ordinal);
        Assert.Contains("Counts and lamps out", warning, StringComparison.Ordinal);
    }

    [Fact]
    public async Task removes_the_meter_data_as_one_step_that_can_be_undone()
    {
        await using var open = await OpenStudy.Of(Metered(MeterSamples.DayAndNight()));
        var page = open.Page<MeterPage>();
        await page.FindAll("button").First(button => button.TextContent == "Remove the meter data").ClickAsync(new());
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".meter-state")));
        Assert.Null(open.Study.Meter);
        await open.Session.UndoAsync();
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll(".meter-state")));
        Assert.Equal(17_520, open.Study.Meter!.Watts.Count);
    }

    // A study file may bring a meter year with gaps: the bill waits until somebody agrees to fill them.
    [Fact]
    public async Task fills_gaps_a_study_came_with_only_when_asked()
    {
        var meter = MeterSamples.DayAndNight();
        await using var open = await OpenStudy.Of(Metered(meter with { Watts = [null, .. meter.Watts.Skip(1)] }));
        var page = open.Page<MeterPage>();
        Assert.Null(open.Session.Result);
        Assert.Contains("One interval has no reading", page.Find(".meter-state").TextContent, StringComparison.Ordinal);
        await page.FindAll("button").First(button => button.TextContent.Trim() == "Fill and mark it").ClickAsync(new());
        page.WaitForAssertion(() => Assert.NotNull(open.Session.Result?.Meter));
        Assert.Equal((20_000, 1), (open.Study.Meter!.Watts[0], Assert.Single(open.Study.Meter.Filled).Count));
        await open.Session.UndoAsync();
        Assert.Null(open.Study.Meter!.Watts[0]);
    }

    private static Study Metered(MeterYear meter) => SmallStudies.TenWithTubes() with
    {
        Meter = meter,
        Tariff = SmallStudies.OneRack().Tariff with { Demand = [new DemandCharge { Name = "Demand", Price = DemandPrice.FromPerKilowatt(10) }] },
    };
}
