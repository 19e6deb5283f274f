using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Tests.Harness;

/// <summary>Studies small enough to redo by hand. All invented.</summary>
internal static class SmallStudies
{
    /// <summary>One rack, lit 16 h a day from March 1 to October 31, at a flat 0.12 a kilowatt-hour.</summary>
    public static Study OneRack() => new()
    {
        Name = "Invented rack",
        Invented = true,
        Site = new Site { Name = "Invented nursery" },
        Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.12)),
        Areas = [new Area { Id = "rack", Name = "Rack", GrowsCrop = true, Seasons = [Season("Plugs", new(3, 1), new(10, 31))] }],
    };

    /// <summary>The same with ten two-lamp luminaires of 59 W: 590 W over 3,920 h.</summary>
    public static Study TenLuminaires() => OneRack() with
    {
        Lines = [new SurveyLine { Id = "shelf", Name = "Shelf", Area = "rack", SetUp = "f32t8-2-is-nlo", Count = 10 }],
    };

    /// <summary>The same with two 18 W tubes asked for in each luminaire: 360 W.</summary>
    public static Study TenWithTubes() => TenLuminaires() with
    {
        Options = [new RetrofitOption { Id = "tubes", Name = "Tubes", Measures = [new LineMeasure("shelf", new DirectWire("dw-4ft-t8-18"))] }],
    };

    public static Season Season(string name, AnnualDate start, AnnualDate end) => new()
    {
        Name = name,
        Start = start,
        End = end,
        Stages = [new Stage { Name = "Growing", LightsOn = new LocalTime(6, 0), LightsOff = new LocalTime(22, 0) }],
    };
}
