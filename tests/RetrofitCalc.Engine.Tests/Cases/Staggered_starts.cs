using NodaTime;
using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Cases;

/// <summary>E-31 with numbers anyone can redo: two racks of 6 kW each, lit 6 to 14 and 13 to 21, meet for one hour a day at 12 kW.</summary>
public class Staggered_starts
{
    // An hour apart they never meet: 6 kW instead of 12, at 10 a kilowatt twelve times a year 720.
    [Fact]
    public void of_either_rack_take_the_hour_away_in_which_they_meet()
    {
        var offers = Staggering.Offers(Racks());
        Assert.Equal([("a", -60, 720.0), ("b", 60, 720.0)], offers.Select(offer => (offer.Area, offer.Shift, Math.Round(offer.Saving.Units, 2))));
        Assert.All(offers, offer => Assert.Equal((6.0, 720.0), (Math.Round(offer.Drop!.Power.Kilowatts, 9), Math.Round(offer.Demand.Units, 2))));
    }

    // The tubes draw half as much: 3 kW of demand, 360.
    [Fact]
    public void save_less_once_the_lights_draw_less()
    {
        var study = Racks() with
        {
            Options = [new() { Id = "tubes", Name = "Tubes", Measures = [new("a", new DirectWire(SampleCatalogue.TubeT8.Id)), new("b", new DirectWire(SampleCatalogue.TubeT8.Id))] }],
        };
        Assert.All(Staggering.Offers(study), offer => Assert.Equal((720.0, 360.0), (Math.Round(offer.Saving.Units, 2), Math.Round(offer.SavingAfter!.Value.Units, 2))));
    }

    // 5 kW besides: 17 kW on the meter while they meet, 11 kW else. The readings are kept; the lights move within them.
    [Fact]
    public void move_the_lights_within_the_readings_of_a_meter()
    {
        var metered = Racks() with { Meter = Hourly(hour => hour switch { 13 => 17, >= 6 and < 21 => 11, _ => 5 }) };
        Assert.Equal([("a", -60, 720.0), ("b", 60, 720.0)], Staggering.Offers(metered).Select(offer => (offer.Area, offer.Shift, Math.Round(offer.Saving.Units, 2))));
    }

    // Something else draws 12 kW from 21 to 22 and from 5 to 6: moved there, the racks would raise the peak from 17 to 23 kW.
    [Fact]
    public void are_not_offered_where_they_meet_something_else_on_the_meter()
    {
        var metered = Racks() with { Meter = Hourly(hour => hour switch { 13 => 17, 5 or 21 or 4 or 22 => 17, >= 6 and < 21 => 11, _ => 5 }) };
        Assert.Empty(Staggering.Offers(metered));
    }

    [Fact]
    public void are_not_offered_without_a_price_for_demand_or_hours() =>
        Assert.Empty(Staggering.Offers(Racks() with { Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.1)) }));

    // 13:00 to 14:00 costs 0.30 instead of 0.10; an hour later rack b leaves it: 6 kWh × 0.20 × 365 = 438.
    [Fact]
    public void leave_dear_hours_too()
    {
        var dear = new Tariff
        {
            Name = "Invented",
            Energy =
            [
                new() { Name = "Dear", When = new() { Windows = [new(DayKind.All, new(13, 0), new(14, 0))] }, Blocks = [new(null, EnergyPrice.FromPerKilowattHour(0.3))] },
                new() { Name = "Cheap", Blocks = [new(null, EnergyPrice.FromPerKilowattHour(0.1))] },
            ],
        };
        var offer = Staggering.Offers(Racks() with { Tariff = dear }).Single(offer => offer.Area == "b");
        Assert.Equal(60, offer.Shift);
        Assert.Equal(438, offer.Saving.Units, 0.13);
        Assert.Null(offer.Drop);
    }

    // Only from 5 to 6 it is below 8 °C outside: rack a an hour earlier heats then, 2,190 kWh = 93.41 therm of fuel at 80 %, besides the 720.
    [Fact]
    public void count_the_fuel_that_the_heat_of_the_lights_saves_at_other_hours()
    {
        var study = Racks() with { Weather = new() { Name = "Invented", DryBulb = [.. Enumerable.Range(0, 8760).Select(hour => hour % 24 == 5 ? 0.0 : 10)] } };
        study = study with { Site = study.Site with { Plant = new() { Method = PlantMethod.Hourly, FuelPricePerTherm = Money.FromUnits(1) } } };
        Assert.Equal([("a", 813.41), ("b", 720.0)], Staggering.Offers(study).Select(offer => (offer.Area, Math.Round(offer.Saving.Units, 2))));
    }

    [Fact]
    public void keep_the_length_of_every_lit_day()
    {
        var moved = Staggering.Moved(Rack("a", 22, 10), 60);
        Assert.Equal((new LocalTime(23, 0), new LocalTime(11, 0)), (moved.Seasons[0].Stages[0].LightsOn, moved.Seasons[0].Stages[0].LightsOff));
    }

    [Fact]
    public void never_carry_a_lit_day_into_another_nor_touch_lights_that_burn_day_and_night()
    {
        // From 23:00 an hour later would be the next day; a rack lit from 5 to 5 has no other time.
        var study = Racks() with { Areas = [Rack("a", 23, 7), Rack("b", 5, 5)] };
        Assert.DoesNotContain(Staggering.Offers(study), offer => offer.Shift > 0 || offer.Area == "b");
    }

    [Fact]
    public void can_be_stopped() =>
        Assert.Throws<OperationCanceledException>(() => Staggering.Offers(Racks(), new CancellationToken(canceled: true)));

    private static Study Racks() => new()
    {
        Name = "Two racks",
        Invented = true,
        Site = new() { Name = "Invented site", TimeZone = "Etc/UTC" },
        Areas = [Rack("a", 6, 14), Rack("b", 13, 21)],
        Lines = [Line("a"), Line("b")],
        Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.1)) with { Demand = [new DemandCharge { Name = "Demand", Price = DemandPrice.FromPerKilowatt(10) }] },
        Catalogue = SampleCatalogue.All,
    };

    /// <summary>A hundred luminaires, measured at 60 W.</summary>
    private static SurveyLine Line(string area) => new()
    {
        Id = area, Name = area, Area = area, SetUp = SampleCatalogue.TwoT8.Id, Count = 100, Reading = new(Power.FromWatts(60), new LocalDate(2026, 5, 1)),
    };

    private static Area Rack(string id, int on, int off) => new()
    {
        Id = id,
        Name = id,
        GrowsCrop = true,
        Seasons =
        [
            new Season
            {
                Name = "Year", Start = new(1, 1), End = new(12, 31),
                Stages = [new Stage { Name = "Growing", LightsOn = new LocalTime(on, 0), LightsOff = new LocalTime(off, 0) }],
            },
        ],
    };

    private static MeterYear Hourly(Func<int, double> kilowatts) =>
        SampleMeter.Of(new LocalDate(2027, 1, 1), 60, Enumerable.Range(0, 8760).Select(hour => kilowatts(hour % 24)));
}
