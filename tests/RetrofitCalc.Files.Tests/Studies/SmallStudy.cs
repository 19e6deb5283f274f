using System.Text;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Files.Tests.Studies;

/// <summary>A small invented study with round figures.</summary>
internal static class SmallStudy
{
    private static readonly Provenance Invented = new(EvidenceKind.Invented, "Invented for tests");

    public static string Text() => Encoding.UTF8.GetString(StudyFile.Write(Make()));

    public static Study Make() => new()
    {
        Name = "Two racks",
        Invented = true,
        Site = new Site { Name = "Quillmere" },
        Areas =
        [
            new Area { Id = "racks", Name = "Seedling racks", Weekly = AllWeek(6, 22) },
            new Area { Id = "hall", Name = "Packing hall", Weekly = AllWeek(8, 18) },
        ],
        Lines =
        [
            new SurveyLine { Id = "line-1", Area = "racks", Name = "Rack A", SetUp = "2x4ft-t8", Count = 10 },
            new SurveyLine { Id = "line-2", Area = "hall", Name = "Hall", SetUp = "2x4ft-t8", Count = 4, LampsOut = 1 },
        ],
        Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.2)),
        Options = [new RetrofitOption { Id = "tubes", Name = "Direct-wire tubes", Measures = [new LineMeasure("line-1", new DirectWire("tube-4ft"))] }],
        Catalogue = Catalogue(),
    };

    private static WeeklySchedule AllWeek(int on, int off) => new()
    {
        Hours = [new WeeklyHours([.. Enumerable.Range(1, 7).Select(d => (NodaTime.IsoDayOfWeek)d)], new(on, 0), new(off, 0))],
    };

    public static CatalogueExtract Catalogue() => new()
    {
        Lamps = [new Lamp { Id = "t8-32", Name = "4 ft T8, 32 W", Source = Invented, Family = "T8", Base = "G13", Length = Length.FromFeet(4), NominalPower = Power.FromWatts(32), ArcPower = Power.FromWatts(30) }],
        Ballasts = [new Ballast { Id = "eb-2", Name = "Electronic, instant start, two lamps", Source = Invented, Technology = BallastTechnology.Electronic, StartMethod = StartMethod.Instant, BallastFactor = 0.88 }],
        SetUps =
        [
            new SetUp { Id = "2x4ft-t8", Name = "2-lamp 4 ft T8, instant start", Source = Invented, Lamp = "t8-32", Ballasts = [new BallastPosition("eb-2", 2)], TestedPower = Power.FromWatts(59) },
            new SetUp { Id = "4x4ft-t8", Name = "4-lamp 4 ft T8, instant start", Source = Invented, Lamp = "t8-32", Ballasts = [new BallastPosition("eb-2", 4)], TestedPower = Power.FromWatts(112) },
        ],
        Tubes = [new DirectWireTube { Id = "tube-4ft", Name = "Direct-wire tube 4 ft, 15 W", Source = Invented, LinePower = Power.FromWatts(15), Length = Length.FromFeet(4), Base = "G13", Price = Money.FromUnits(12) }],
    };
}
