using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Data.Tests;

internal static class SampleStudy
{
    public static Study Named(string name) => new()
    {
        Name = name,
        Invented = true,
        Site = new Site { Name = "Invented nursery" },
        Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.14)),
    };

    public static Study WithLine(string setUp, params Measure[] measures) => Named("Uses rows") with
    {
        Areas = [new Area { Id = "a", Name = "Room" }],
        Lines = [new SurveyLine { Id = "l", Area = "a", SetUp = setUp, Count = 4 }],
        Options = [new RetrofitOption { Id = "o", Name = "Option", Measures = [.. measures.Select(m => new LineMeasure("l", m))] }],
    };
}
