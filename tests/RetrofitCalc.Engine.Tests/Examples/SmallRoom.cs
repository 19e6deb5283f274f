using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.Examples;

/// <summary>Ten two-lamp luminaires lit 12 h a day, 4,380 h a year, at a flat 0.10 a kilowatt-hour: figures anyone can redo. All invented.</summary>
internal static class SmallRoom
{
    private static readonly Provenance Source = new(EvidenceKind.Invented, "example");

    public static Lamp Lamp { get; } = new()
    {
        Id = "lamp", Name = "32 W T8", Source = Source, Family = "T8", Base = "G13", Length = Length.FromMetres(1.2),
        NominalPower = Power.FromWatts(32), Price = Money.FromUnits(3),
        Lives =
        [
            new(3, StartMethod.Instant, Hours(24_000)), new(12, StartMethod.Instant, Hours(30_000)),
            new(3, StartMethod.Programmed, Hours(30_000)), new(12, StartMethod.Programmed, Hours(36_000)),
        ],
    };

    public static Ballast Ballast { get; } = new()
    {
        Id = "ballast", Name = "Two-lamp electronic", Source = Source, Technology = BallastTechnology.Electronic,
        StartMethod = StartMethod.Instant, Circuit = LampCircuit.Parallel, RatedLife = Hours(50_000), RatedCaseTemperature = 70,
        Price = Money.FromUnits(20),
    };

    public static SetUp SetUp { get; } = new()
    {
        Id = "set-up", Name = "Two-lamp T8", Source = Source, Lamp = "lamp", Ballasts = [new("ballast", 2)], TestedPower = Power.FromWatts(60),
    };

    public static DirectWireTube Tube { get; } = new()
    {
        Id = "tube", Name = "15 W tube", Source = Source, LinePower = Power.FromWatts(15), Length = Length.FromMetres(1.2), Base = "G13",
        RatedLife = Hours(50_000), TestHours = Hours(10_000), Price = Money.FromUnits(8),
    };

    public static ReadyWiredLuminaire Luminaire { get; } = new()
    {
        Id = "luminaire", Name = "28 W luminaire", Source = Source, LinePower = Power.FromWatts(28), Length = Length.FromMetres(1.2),
        RatedLife = Hours(100_000), TestHours = Hours(9_000), Price = Money.FromUnits(60),
    };

    public static Area Area { get; } = new()
    {
        Id = "room", Name = "Room",
        Weekly = new() { Hours = [new([.. Enum.GetValues<IsoDayOfWeek>().Where(d => d != IsoDayOfWeek.None)], new(6, 0), new(18, 0))] },
    };

    public static SurveyLine Line { get; } = new() { Id = "line", Area = "room", SetUp = "set-up", Count = 10 };

    public static LineOperation Operation { get; } = new(Hours(4_380), 365, 12);

    public static BallastedFitting Fitting { get; } = new(SetUp, Lamp, [Ballast]);

    public static FittedLine Fitted { get; } = new(Line, Area, Fitting, 10);

    public static RetrofitOption Tubes { get; } = new()
    {
        Id = "tubes", Name = "Direct-wire tubes", Measures = [new("line", new DirectWire("tube"))],
    };

    public static Study Study { get; } = new()
    {
        Name = "Small room", Invented = true, Site = new() { Name = "Small room" }, Areas = [Area], Lines = [Line],
        Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.10)), Options = [Tubes],
        Catalogue = new() { SetUps = [SetUp], Lamps = [Lamp], Ballasts = [Ballast], Tubes = [Tube], Luminaires = [Luminaire] },
    };

    public static OperatingTime Hours(double hours) => OperatingTime.FromHours(hours);
}
