using NodaTime;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Schedules;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Schedules;

public class A_year_of_light
{
    private static readonly IReadOnlyList<CalendarDay> Days = OperationCalendar.Of(SmallStudies.OneRack(), "rack");

    [Fact]
    public void draws_equal_days_as_one_pale_rectangle_at_its_hours()
    {
        var drawing = new YearStripDrawing(Days, 1000);
        var lit = Assert.Single(drawing.Lit);
        Assert.Equal(drawing.PlotLeft + (drawing.PlotWidth * 59 / 365), lit.X, 6); // March 1 is the 60th day
        Assert.Equal(drawing.PlotWidth * 245 / 365, lit.Width, 6);
        Assert.Equal(YearStripDrawing.PlotTop + (YearStripDrawing.PlotHeight * 6 / 24.0), lit.Y, 6);
        Assert.Equal(YearStripDrawing.PlotHeight * 16 / 24.0, lit.Height, 6);
    }

    [Fact]
    public void adds_up_by_month_and_season_to_the_year()
    {
        var hours = LightHours.Of(Days);
        Assert.Equal(["Plugs"], hours.Seasons);
        Assert.Equal(31 * 16, hours.Months.Single(m => m.Name == "July").Total, 9);
        Assert.Equal(0, hours.Months.Single(m => m.Name == "January").Total);
        Assert.Equal(3920, hours.Total, 9);
        Assert.Equal(3920, Assert.Single(hours.SeasonTotals), 9);
    }

    // On at 18:00, off at 10:00: each lit day shows 0–10 and 18–24.
    [Fact]
    public void shows_light_past_midnight_on_the_day_it_falls_on()
    {
        var study = ScheduleEdits.Stage(SmallStudies.OneRack(), new(new(0, 0), 0), s => s with { LightsOn = new(18, 0), LightsOff = new(10, 0) });
        var day = OperationCalendar.Of(study, "rack").Single(d => d.Date == new LocalDate(2027, 7, 1));
        Assert.Equal([(0, 600), (1080, 1440)], day.Spans.Select(s => (s.StartMinute, s.EndMinute)));
    }

    [Fact]
    public void names_the_days_after_the_last_stage_of_a_season()
    {
        var study = ScheduleEdits.Stage(SmallStudies.OneRack(), new(new(0, 0), 0), s => s with { Days = 42 });
        var light = AreaYear.OfAll(study, []).Single();
        var gaps = ScheduleText.Gaps(light, study.Areas[0], System.Globalization.CultureInfo.GetCultureInfo("en-US"));
        Assert.Contains(gaps, g => g.StartsWith("No stage Apr 12 to Oct 31, though Plugs goes on", StringComparison.Ordinal));
    }

    [Fact]
    public void offers_only_lit_steps_that_set_ups_of_the_area_have()
    {
        var choices = LitSteps.In(SmallStudies.OneRack(), "rack", "one of three lamps");
        Assert.Equal(["all lamps", "one of three lamps (no set-up here has it)"], choices.Select(c => c.Text));
    }
}
