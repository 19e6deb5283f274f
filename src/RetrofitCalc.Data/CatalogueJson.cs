using System.Text.Json;
using NodaTime;
using RetrofitCalc.Data.Model;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Data;

/// <summary>Catalogue entries as rows and back.</summary>
internal static class CatalogueJson
{
    public static CatalogueKind KindOf(CatalogueEntry entry) => entry switch
    {
        SetUp => CatalogueKind.SetUp,
        Lamp => CatalogueKind.Lamp,
        Ballast => CatalogueKind.Ballast,
        DirectWireTube => CatalogueKind.Tube,
        ReadyWiredLuminaire => CatalogueKind.Luminaire,
        _ => throw new ArgumentException($"No kind of catalogue row holds a {entry.GetType().Name}.", nameof(entry)),
    };

    public static string Write(CatalogueEntry entry) => JsonSerializer.Serialize(entry, entry.GetType(), RetrofitJson.Options);

    public static CatalogueEntry Read(CatalogueKind kind, string json) =>
        (CatalogueEntry)JsonSerializer.Deserialize(json, TypeOf(kind), RetrofitJson.Options)!;

    public static CatalogueRow NewRow(CatalogueEntry entry, bool own) => new()
    {
        Id = entry.Id,
        Kind = KindOf(entry),
        Name = PlainText.Storable(entry.Name),
        Json = Write(entry),
        Version = 1,
        Retired = entry.Retired,
        Own = own,
    };

    /// <summary>Puts new values into a row and counts the edit.</summary>
    public static void Fill(CatalogueRow row, CatalogueEntry entry)
    {
        row.Name = PlainText.Storable(entry.Name);
        row.Json = Write(entry);
        row.Retired = entry.Retired;
        row.Version++;
    }

    public static CatalogueHistoryRow Edit(CatalogueRow row, CatalogueChange change, Instant now) => new()
    {
        Id = Guid.CreateVersion7(),
        EntryId = row.Id,
        Version = row.Version,
        Change = change,
        Json = row.Json,
        At = now,
    };

    public static CatalogueExtract Extract(IEnumerable<CatalogueEntry> entries)
    {
        var all = entries.OrderBy(e => e.Id, StringComparer.Ordinal).ToList();
        return new CatalogueExtract
        {
            SetUps = [.. all.OfType<SetUp>()],
            Lamps = [.. all.OfType<Lamp>()],
            Ballasts = [.. all.OfType<Ballast>()],
            Tubes = [.. all.OfType<DirectWireTube>()],
            Luminaires = [.. all.OfType<ReadyWiredLuminaire>()],
        };
    }

    private static Type TypeOf(CatalogueKind kind) => kind switch
    {
        CatalogueKind.SetUp => typeof(SetUp),
        CatalogueKind.Lamp => typeof(Lamp),
        CatalogueKind.Ballast => typeof(Ballast),
        CatalogueKind.Tube => typeof(DirectWireTube),
        _ => typeof(ReadyWiredLuminaire),
    };
}
