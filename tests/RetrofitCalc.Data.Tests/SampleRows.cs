using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Data.Tests;

internal static class SampleRows
{
    private static readonly Provenance MadeUp = new(EvidenceKind.Invented, "Made up for a test.");

    public static Lamp Lamp(string id) => new()
    {
        Id = id, Name = "Test lamp", Source = MadeUp, Family = "T8", Base = "G13",
        Length = Length.FromMetres(1.2), NominalPower = Power.FromWatts(32),
    };

    public static Ballast Ballast(string id) => new()
    {
        Id = id, Name = "Test ballast", Source = MadeUp,
        Technology = BallastTechnology.Electronic, StartMethod = StartMethod.Instant,
    };

    public static SetUp SetUp(string id, string lamp, string ballast) => new()
    {
        Id = id, Name = "Test set-up", Source = MadeUp, Lamp = lamp,
        Ballasts = [new BallastPosition(ballast, 2)], TestedPower = Power.FromWatts(59),
    };

    public static DirectWireTube Tube(string id) => new()
    {
        Id = id, Name = "Test tube", Source = MadeUp, Base = "G13",
        Length = Length.FromMetres(1.2), LinePower = Power.FromWatts(15),
    };

    /// <summary>A lamp, a ballast, the set-up built from them, and a tube.</summary>
    public static IReadOnlyList<CatalogueEntry> Family() =>
        [Lamp("t-lamp"), Ballast("t-ballast"), SetUp("t-setup", "t-lamp", "t-ballast"), Tube("t-tube")];
}
