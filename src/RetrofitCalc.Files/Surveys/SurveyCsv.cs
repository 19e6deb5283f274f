using System.Globalization;
using CsvHelper;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Surveys;

/// <summary>Writes the survey as CSV that a spreadsheet opens in the same culture, and that imports again.</summary>
public static class SurveyCsv
{
    public static byte[] Write(IReadOnlyList<SurveyLine> lines, SurveyContext context)
    {
        using var file = new MemoryStream();
        using (var csv = CsvWriter.Create(file, Settings(context.Culture), leaveOpen: true))
        {
            csv.WriteRecord(SurveyHeadings.Fields.Select(SurveyHeadings.Of).ToArray());
            foreach (var line in lines)
                csv.WriteRecord(SurveyHeadings.Fields.Select(f => SpreadsheetText.Guard(SurveyCellText.Of(line, f, context))).ToArray());
        }
        return file.ToArray();
    }

    /// <summary>Spreadsheets take the semicolon where the comma is the decimal mark, and know UTF-8 by its mark.</summary>
    internal static CsvWriterOptions Settings(CultureInfo culture) => new()
    {
        Separator = culture.NumberFormat.NumberDecimalSeparator == "," ? ';' : ',',
        WriteByteOrderMark = true,
    };
}
