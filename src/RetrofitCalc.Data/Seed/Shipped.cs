using System.Text.Json;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Examples;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Data.Seed;

/// <summary>A tariff that ships with the program.</summary>
/// <param name="Note">Which of its values were derived or assumed.</param>
public sealed record ShippedTariff(string Id, string Note, Tariff Tariff);

/// <summary>The catalogue and the tariffs that ship inside the program.</summary>
public static class Shipped
{
    public static CatalogueExtract Catalogue() => new()
    {
        SetUps = Read<SetUp>("setups"),
        Lamps = Read<Lamp>("lamps"),
        Ballasts = Read<Ballast>("ballasts"),
        Tubes = Read<DirectWireTube>("tubes"),
        Luminaires = Read<ReadyWiredLuminaire>("luminaires"),
    };

    /// <summary>Published schedules, and the invented tariff of the worked example.</summary>
    public static IReadOnlyList<ShippedTariff> Tariffs() =>
        [.. Read<ShippedTariff>("tariffs"), new("quillmere", "Invented for the worked example; it is no utility's tariff.", WorkedExample.Load().Tariff)];

    private static T[] Read<T>(string name)
    {
        using var stream = typeof(Shipped).Assembly.GetManifestResourceStream($"RetrofitCalc.Data.Seed.{name}.json")!;
        return JsonSerializer.Deserialize<T[]>(stream, RetrofitJson.Options)!;
    }
}
