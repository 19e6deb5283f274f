using System.Globalization;
using CsvHelper;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Files.Surveys.Tables;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Readings;

/// <summary>A set of readings as CSV that a spreadsheet opens in the same culture, and that <see cref="ReadingsText"/> reads again.</summary>
public static class ReadingsCsv
{
    /// <summary>The corner names the unit of the readings and that of the places; directions carry their degree sign.</summary>
    public static byte[] Write(ReadingSet set, CultureInfo culture)
    {
        using var file = new MemoryStream();
        using (var csv = CsvWriter.Create(file, SurveyCsv.Settings(culture), leaveOpen: true))
        {
            csv.WriteRecord([$"{WordOf(set.Unit)} (m)", .. set.Columns.Select(place => NumberText.Write(place, culture))]);
            foreach (var (row, values) in set.Rows.Zip(set.Values))
                csv.WriteRecord([RowOf(set, row, culture), .. values.Select(value => value is { } read ? NumberText.Write(read, culture) : "")]);
        }
        return file.ToArray();
    }

    /// <summary>Reads such a file, or any grid of readings as text.</summary>
    public static Parsed<ReadingGrid> Read(Stream stream, CultureInfo culture, LengthUnit own)
    {
        try
        {
            if (BoundedRead.All(stream, TableLimits.FileBytes) is not { } bytes) return Parsed.Bad<ReadingGrid>(TableLimits.TooLarge);
            var (encoding, mark, _) = TextEncoding.Of(bytes, whole: true);
            return encoding is null
                ? Parsed.Bad<ReadingGrid>("This is not a text file. Save the grid of readings as CSV, or paste it.")
                : ReadingsText.Parse(encoding.GetString(bytes.AsSpan(mark)), culture, own);
        }
        catch (Exception unreadable) when (unreadable is IOException or System.Text.DecoderFallbackException)
        {
            return Parsed.Bad<ReadingGrid>($"The file could not be read: {unreadable.Message}");
        }
    }

    /// <summary>A negative number is no formula to a spreadsheet, so places need no guard.</summary>
    private static string RowOf(ReadingSet set, double row, CultureInfo culture) =>
        NumberText.Write(row, culture) + (set.Pattern == ReadingPattern.Outwards ? "°" : "");

    private static string WordOf(LightUnit unit) => unit switch { LightUnit.Micromoles => "µmol", LightUnit.Lux => "lx", _ => "fc" };
}
