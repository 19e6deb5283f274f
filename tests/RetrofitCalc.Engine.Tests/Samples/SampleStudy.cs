using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.Samples;

/// <summary>A small invented study: a growing room with two seasons and two steps, a hall with office hours, a tariff with everything.</summary>
internal static class SampleStudy
{
    public static Study Small => new()
    {
        Name = "Small",
        Invented = true,
        Site = new() { Name = "Invented site", BaseLoad = Power.FromKilowatts(3), Plant = Plant },
        Areas = [Room, Hall],
        Lines =
        [
            Line("racks", "room", SampleCatalogue.TwoT8.Id, 40),
            Line("shelves", "room", SampleCatalogue.ThreeT8InTwoSteps.Id, 12),
            Line("hall", "hall", SampleCatalogue.TwoT12.Id, 20) with { LampsOut = 5 },
        ],
        Tariff = SampleTariff.TimeOfUse,
        Options = [TubesEverywhere],
        Catalogue = SampleCatalogue.All,
    };

    public static PlantInteraction Plant => new()
    {
        CooledShare = 0.6, CoolingCop = 3, HeatedShare = 0.3, FurnaceEfficiency = 0.8, FuelPricePerTherm = Money.FromUnits(1.1),
    };

    public static Area Room => new()
    {
        Id = "room",
        Name = "Growing room",
        GrowsCrop = true,
        HeatInSpace = 0.9,
        Seasons =
        [
            new()
            {
                Name = "Winter crop",
                Start = new(11, 1),
                End = new(3, 31),
                Stages =
                [
                    new() { Name = "Rooting", Days = 20, LightsOn = new(18, 0), LightsOff = new(10, 0), LitStep = SampleCatalogue.OneLamp },
                    new() { Name = "Growing", LightsOn = new(20, 20), LightsOff = new(12, 20) },
                ],
            },
            new()
            {
                Name = "Summer crop",
                Start = new(5, 10),
                End = new(8, 20),
                Stages = [new() { Name = "All", LightsOn = new(5, 7), LightsOff = new(21, 7), ClockRule = ClockRule.CountsHours }],
            },
        ],
    };

    public static Area Hall => new()
    {
        Id = "hall",
        Name = "Packing hall",
        Weekly = new()
        {
            Hours = [new([IsoDayOfWeek.Monday, IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Friday], new(6, 50), new(17, 5))],
            Holidays = [new FixedHoliday(new(1, 1)), new FixedHoliday(new(12, 25))],
        },
    };

    public static RetrofitOption TubesEverywhere => new()
    {
        Id = "tubes",
        Name = "Direct-wire tubes",
        Measures =
        [
            new("racks", new DirectWire(SampleCatalogue.TubeT8.Id)),
            new("shelves", new DirectWire(SampleCatalogue.TubeT8.Id, 2)),
            new("hall", new ReplaceLuminaire(SampleCatalogue.NewLuminaire.Id, 0.5)),
        ],
    };

    public static SurveyLine Line(string id, string area, string setUp, int count) =>
        new() { Id = id, Name = id, Area = area, SetUp = setUp, Count = count };

    public static IReadOnlyDictionary<string, Measure> MeasuresOf(RetrofitOption option) =>
        option.Measures.ToDictionary(measure => measure.Line, measure => measure.Measure);
}
