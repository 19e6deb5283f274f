using NodaTime;
using RetrofitCalc.Engine.Heat;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Heat;

/// <summary>Hour h of an EPW file covers (h−1, h] of local standard time: EPW data dictionary, and the project's stated conventions.</summary>
public class What_the_plant_does_by_the_hour
{
    private static readonly PlantInteraction Plant = new() { Method = PlantMethod.Hourly, CoolingBalance = 12, HeatingBalance = 8 };
    private static readonly SiteYear Year = new("America/New_York", 2027);
    private static readonly LitMode Lit = new(LitMode.AllYear, null, null, 1);

    [Theory, InlineData(7.9, PlantMode.Heating), InlineData(8, PlantMode.Neither), InlineData(11.9, PlantMode.Neither), InlineData(12, PlantMode.Cooling), InlineData(30, PlantMode.Cooling)]
    public void follows_the_balance_temperatures(double outdoor, PlantMode mode) => Assert.Equal(mode, PlantHours.ModeAt(Plant, outdoor));

    [Theory, InlineData(12, PlantMode.Neither), InlineData(18, PlantMode.Neither), InlineData(18.1, PlantMode.Cooling), InlineData(5, PlantMode.Heating)]
    public void leaves_cooling_to_an_economiser_up_to_its_limit(double outdoor, PlantMode mode) =>
        Assert.Equal(mode, PlantHours.ModeAt(Plant with { EconomiserLimit = 18 }, outdoor));

    // Hot from 14:00 to 15:00 standard time, row 15 of the day: in July the wall clock then shows 15:00 to 16:00.
    [Theory, InlineData(1, 14), InlineData(7, 15)]
    public void keeps_standard_time_through_summer(int month, int wallHour)
    {
        var hours = new PlantHours(Plant, SampleWeather.Of(hour => hour % 24 == 14 ? 25 : 10), Year);
        var day = new LocalDate(2027, month, 10);
        var cooled = Assert.Single(hours.Cut([new(Year.StartOf(day), Year.StartOf(day.PlusDays(1)), Lit)]), piece => piece.Mode.Plant == PlantMode.Cooling);
        Assert.Equal(day.At(new LocalTime(wallHour, 0)), Year.WallTime(cooled.Start));
        Assert.Equal(1, cooled.Hours);
    }

    // 28 February is hot, 1 March is cold: 29 February 2028 takes the hot day again, and every later day keeps its date.
    [Fact]
    public void repeats_28_February_on_the_leap_day()
    {
        var leap = new SiteYear("America/New_York", 2028);
        var hours = new PlantHours(Plant, SampleWeather.Of(hour => hour / 24 == 58 ? 25 : 0), leap);
        var cooled = hours.Cut([new(leap.Start, leap.End, Lit)]).Where(piece => piece.Mode.Plant == PlantMode.Cooling).ToList();
        Assert.Equal((leap.StartOf(new(2028, 2, 28)), leap.StartOf(new(2028, 3, 1))), (Assert.Single(cooled).Start, cooled[0].End));
    }

    // India keeps UTC+5:30: an hour of its standard time begins on the half hour of UTC.
    [Fact]
    public void cuts_hours_where_standard_time_has_them()
    {
        var air = new OutdoorAir(new() { Name = "Invented", UtcOffset = 5.5, DryBulb = SampleWeather.Steady(20).DryBulb });
        var halfPastTwo = Instant.FromUtc(2027, 3, 1, 2, 30).ToUnixTimeSeconds();
        Assert.Equal(halfPastTwo, air.HourStart(halfPastTwo + 3599));
        Assert.Equal(halfPastTwo, air.HourStart(halfPastTwo));
    }

    [Fact]
    public void loses_no_second_of_light()
    {
        var hours = new PlantHours(Plant, SampleWeather.Of(hour => hour % 37), Year);
        LitSpell[] spells = [new(Year.Start + 17, Year.Start + 90_000, Lit), new(Year.Start + 100_001, Year.End, Lit)];
        var cut = hours.Cut(spells);
        Assert.Equal(spells.Sum(spell => spell.End - spell.Start), cut.Sum(piece => piece.End - piece.Start));
        Assert.All(cut.Zip(cut.Skip(1)), pair => Assert.True(pair.First.End <= pair.Second.Start));
    }
}
