using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Samples;

/// <summary>Invented rows around figures of the reference checks: 29 W arc power, ballast factor 0.88, ballast efficiency 0.93.</summary>
internal static class SampleCatalogue
{
    public const string OneLamp = "one of three lamps";

    private static readonly Provenance Invented = new(EvidenceKind.Invented, "Invented for tests");

    public static Lamp LampT8 => new()
    {
        Id = "lamp-t8", Name = "4 ft T8 lamp", Source = Invented, Family = "T8", Base = "G13", Length = Length.FromFeet(4),
        NominalPower = Power.FromWatts(32), ArcPower = Power.FromWatts(29),
        Lives = [new(3, StartMethod.Instant, OperatingTime.FromHours(24_000)), new(12, StartMethod.Instant, OperatingTime.FromHours(30_000))],
        Price = Money.FromUnits(4),
    };

    public static Lamp LampT12 => LampT8 with { Id = "lamp-t12", Name = "8 ft T12 lamp", Family = "T12", Base = "Fa8", Length = Length.FromFeet(8), ArcPower = null };

    public static Ballast Electronic => new()
    {
        Id = "electronic", Name = "Instant-start ballast", Source = Invented, Technology = BallastTechnology.Electronic, StartMethod = StartMethod.Instant,
        Circuit = LampCircuit.Parallel, BallastFactor = 0.88, LuminousEfficiency = 0.93, LampsOutPower = Power.FromWatts(2),
        RatedLife = OperatingTime.FromHours(50_000), RatedCaseTemperature = 70, Price = Money.FromUnits(18),
    };

    public static Ballast Magnetic => new()
    {
        Id = "magnetic", Name = "Magnetic ballast", Source = Invented, Technology = BallastTechnology.Magnetic, StartMethod = StartMethod.Rapid,
        Circuit = LampCircuit.Series, LampsOutPower = Power.FromWatts(4),
    };

    public static SetUp TwoT8 => new() { Id = "2-t8", Name = "2 × T8", Source = Invented, Lamp = "lamp-t8", Ballasts = [new("electronic", 2)] };

    public static SetUp ThreeT8InTwoSteps => new()
    {
        Id = "3-t8", Name = "3 × T8, two steps", Source = Invented, Lamp = "lamp-t8",
        Ballasts = [new("electronic", 1), new("electronic", 2)], Steps = [new(OneLamp, [0])],
    };

    public static SetUp TwoT12 => new()
    {
        Id = "2-t12", Name = "2 × 8 ft T12", Source = Invented, Lamp = "lamp-t12", Ballasts = [new("magnetic", 2)], TestedPower = Power.FromWatts(158),
    };

    public static DirectWireTube TubeT8 => new()
    {
        Id = "tube-t8", Name = "4 ft tube, 15 W", Source = Invented, LinePower = Power.FromWatts(15), Length = Length.FromMetres(1.2), Base = "G13",
        Voltage = new(120, 277), RatedLife = OperatingTime.FromHours(50_000), TestHours = OperatingTime.FromHours(9000), Price = Money.FromUnits(11),
    };

    public static ReadyWiredLuminaire NewLuminaire => new()
    {
        Id = "strip", Name = "8 ft strip, 60 W", Source = Invented, LinePower = Power.FromWatts(60), Length = Length.FromFeet(8),
        RatedLife = OperatingTime.FromHours(60_000), Price = Money.FromUnits(95),
    };

    public static CatalogueExtract All => new()
    {
        SetUps = [TwoT8, ThreeT8InTwoSteps, TwoT12], Lamps = [LampT8, LampT12], Ballasts = [Electronic, Magnetic], Tubes = [TubeT8], Luminaires = [NewLuminaire],
    };
}
