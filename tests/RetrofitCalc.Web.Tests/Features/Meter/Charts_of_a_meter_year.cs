using NodaTime;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Charts;
using RetrofitCalc.Web.Features.Meter;

namespace RetrofitCalc.Web.Tests.Features.Meter;

public class Charts_of_a_meter_year
{
    private const string S = "\u00A0";
    private static readonly QuantityText Text = new("en-US", "USD", UnitSystem.UsCustomary);

    [Fact]
    public void the_year_map_names_the_highest_hour_and_the_median()
    {
        // 16 of 24 hours at 50 kW: the median hour is one of them.
        var peak = new LocalDateTime(2027, 7, 15, 14, 0);
        var figure = Map(MeterSamples.Of(60, time => time == peak ? 71_000 : time.Hour is >= 6 and < 22 ? 50_000 : 20_000));
        Assert.Equal($"The highest hour is 71.0{S}kW, on July 15, 2027 at 14:00; half of all hours stay below 50.0{S}kW", figure.Finding);
    }

    [Fact]
    public void the_year_map_has_a_sign_for_every_hour_and_a_tick_for_every_month()
    {
        var figure = Map(MeterSamples.DayAndNight());
        Assert.Equal(365 * 24, figure.Spec.Cells.Length);
        Assert.Equal(12, figure.Spec.Across.Ticks.Count);
        // Seven shades of 5 kW from 20 to 55; nights are the first, days the last. The clocks skip 2:00 on March 14, day 72.
        Assert.Equal("000000" + new string('6', 16) + "00", figure.Spec.Cells[..24]);
        Assert.Equal('.', figure.Spec.Cells[72 * 24 + 2]);
    }

    [Fact]
    public void the_year_map_marks_filled_and_exporting_hours()
    {
        var year = MeterSamples.Of(60, time => time.Hour == 12 ? -5_000 : 20_000) with { Filled = [new FilledGap(0, 1, "invented rule")] };
        var cells = Map(year).Spec.Cells;
        Assert.Equal(('a', '0', '-'), (cells[0], cells[1], cells[12]));
    }

    [Fact]
    public void the_year_map_has_a_table_of_months_by_hours()
    {
        var twin = Map(MeterSamples.DayAndNight()).Twin;
        Assert.Equal(13, twin.Head.Count);
        Assert.Equal(24, twin.Rows.Count);
        Assert.Equal(["05:00–06:00", "20.0"], twin.Rows[5].Take(2));
        Assert.Equal(["06:00–07:00", "50.0"], twin.Rows[6].Take(2));
    }

    [Fact]
    public void the_load_duration_curve_says_what_the_rarest_hours_add()
    {
        // 80 kW in ten hours of the year, 50 kW else: all but 88 hours stay below 50 kW, the peak is 80.
        var curve = LoadDuration.Of(MeterSamples.Of(60, time => time.Month == 7 && time.Day == 1 && time.Hour < 10 ? 80_000 : 50_000), Text);
        Assert.Equal($"All but 88 hours of the year stay below 50.0{S}kW; the peak is 80.0{S}kW", curve.Finding);
        Assert.Equal(["the peak", "80.0"], curve.Twin.Rows[0]);
        Assert.Equal(["all of it", "50.0"], curve.Twin.Rows[^1]);
    }

    [Fact]
    public void the_load_duration_curve_is_thinned_and_never_rises()
    {
        var points = LoadDuration.Of(MeterSamples.Of(15, time => 20_000 + time.Hour * 1000 + time.DayOfYear), Text).Spec.Series[0].Points;
        Assert.InRange(points.Count, 100, 250);
        Assert.Equal((0, 100), (points[0].X, points[^1].X));
        Assert.All(points.Zip(points.Skip(1)), pair => Assert.True(pair.First.Y >= pair.Second.Y && pair.First.X < pair.Second.X));
    }

    private static ChartFigure Map(MeterYear year) => YearMap.Of(MeterHours.Of(year, MeterSamples.Zone), Text);
}
