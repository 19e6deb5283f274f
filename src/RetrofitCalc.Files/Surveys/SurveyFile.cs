using System.Globalization;
using RetrofitCalc.Files.Surveys.Tables;
using RetrofitCalc.Files.Surveys.Workbooks;

namespace RetrofitCalc.Files.Surveys;

/// <summary>Reads a survey table from a file of either kind, told apart by its first bytes, not by its name.</summary>
public static class SurveyFile
{
    public static Parsed<SurveyTable> Read(Stream stream, CultureInfo culture, string? sheet = null)
    {
        try
        {
            var start = BoundedRead.UpTo(stream, 2);
            using var whole = new HeadAndRest(start, stream);
            return start.AsSpan().SequenceEqual("PK"u8) ? WorkbookTable.Read(whole, culture, sheet) : CsvTable.Read(whole);
        }
        catch (IOException unreadable)
        {
            return Parsed.Bad<SurveyTable>($"The file could not be read: {unreadable.Message}");
        }
    }
}
