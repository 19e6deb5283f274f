using System.Text.Json;
using NodaTime;
using RetrofitCalc.Data.Model;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Data;

/// <summary>Tariffs as rows and back.</summary>
internal static class TariffJson
{
    public static string Write(Tariff tariff) => JsonSerializer.Serialize(tariff, RetrofitJson.Options);

    public static Tariff Read(string json) => JsonSerializer.Deserialize<Tariff>(json, RetrofitJson.Options)!;

    public static StoredTariff Stored(TariffRow row) => new(row.Id, row.Version, Read(row.Json), row.Note, row.Retired, row.Own);

    public static TariffRow NewRow(string id, Tariff tariff, string note, bool own) => new()
    {
        Id = id,
        Name = PlainText.Storable(tariff.Name),
        Note = PlainText.Storable(note),
        Json = Write(tariff),
        Version = 1,
        Retired = false,
        Own = own,
    };

    /// <summary>Puts new values into a row and counts the edit.</summary>
    public static void Fill(TariffRow row, Tariff tariff, string note)
    {
        row.Name = PlainText.Storable(tariff.Name);
        row.Note = PlainText.Storable(note);
        row.Json = Write(tariff);
        row.Version++;
    }

    public static TariffHistoryRow Edit(TariffRow row, CatalogueChange change, Instant now) => new()
    {
        Id = Guid.CreateVersion7(),
        TariffId = row.Id,
        Version = row.Version,
        Change = change,
        Json = row.Json,
        At = now,
    };
}
