using System.Text.Json;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Data.Seed;

/// <summary>The catalogue that ships inside the program.</summary>
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

    private static T[] Read<T>(string name)
    {
        using var stream = typeof(Shipped).Assembly.GetManifestResourceStream($"RetrofitCalc.Data.Seed.{name}.json")!;
        return JsonSerializer.Deserialize<T[]>(stream, RetrofitJson.Options)!;
    }
}
