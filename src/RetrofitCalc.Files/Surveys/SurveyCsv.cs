using System.Globalization;
using CsvHelper;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Surveys;

/// <summary>Writes the survey as CSV that a spreadsheet opens in the same culture, and that imports again.</summary>
public static class SurveyCsv
{
    /// <param name="drafts">Texts that wait to be mended: they go out as typed, so that nothing is lost on the way.</param>
    public static byte[] Write(IReadOnlyList<SurveyLine> lines, SurveyContext context, IReadOnlyList<CellDraft>? drafts = null)
    {
        var typed = (drafts ?? []).ToLookup(draft => (draft.Line, draft.Field), draft => draft.Text);
        string Cell(SurveyLine line, SurveyField field) => typed[(line.Id, field.ToString())].FirstOrDefault() ?? SurveyCellText.Of(line, field, context);
        using var file = new MemoryStream();
        using (var csv = CsvWriter.Create(file, Settings(context.Culture), leaveOpen: true))
        {
            csv.WriteRecord(SurveyHeadings.Fields.Select(SurveyHeadings.Of).ToArray());
            foreach (var line in lines)
                csv.WriteRecord(SurveyHeadings.Fields.Select(f => SpreadsheetText.Guard(Cell(line, f))).ToArray());
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
