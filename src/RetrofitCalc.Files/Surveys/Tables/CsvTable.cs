using System.Text;
using CsvHelper;

namespace RetrofitCalc.Files.Surveys.Tables;

/// <summary>Reads a text table: CSV with comma, semicolon, tab or bar between the columns.</summary>
public static class CsvTable
{
    private const int SampleBytes = 4 * 1024 * 1024;
    private const int LongestRecordBytes = 1024 * 1024;

    /// <summary>Reads row by row and stops at the limits; the file is never held in memory as a whole.</summary>
    public static Parsed<SurveyTable> Read(Stream stream)
    {
        try
        {
            var sample = BoundedRead.UpTo(stream, SampleBytes);
            if (sample.Length == 0) return Parsed.Bad<SurveyTable>("The file is empty.");
            if (NotText(sample) is { } other) return Parsed.Bad<SurveyTable>(other);
            var (encoding, mark, note) = TextEncoding.Of(sample, whole: sample.Length < SampleBytes);
            if (encoding is null) return Parsed.Bad<SurveyTable>("This is not a text file. Save the table as CSV in UTF-8, or as XLSX, and try again.");
            using var rest = new HeadAndRest(sample.AsMemory(mark), stream);
            using var reader = new StreamReader(rest, encoding, detectEncodingFromByteOrderMarks: false);
            var start = TextEncoding.StartOf(sample.AsSpan(mark), encoding);
            return Read(reader, Separator.Of(start), note is null ? [] : [note]);
        }
        catch (IOException unreadable)
        {
            return Parsed.Bad<SurveyTable>($"The file could not be read: {unreadable.Message}");
        }
    }

    private static Parsed<SurveyTable> Read(TextReader text, char separator, IReadOnlyList<string> notes)
    {
        var builder = new TableBuilder();
        builder.Notes.AddRange(notes);
        FileProblem? unclosed = null;
        try
        {
            using var csv = CsvReader.Create(text, Settings(separator, record => unclosed ??= Unclosed(record, builder)), leaveOpen: true);
            while (csv.Read())
                if (!builder.Add((int)csv.LineNumber, Cells(csv))) break;
        }
        catch (CsvFormatException tooLong)
        {
            return Parsed.Bad<SurveyTable>(new FileProblem((int)tooLong.LineNumber, null, "", TableLimits.CellTooLong));
        }
        catch (DecoderFallbackException)
        {
            return Parsed.Bad<SurveyTable>(
                "Some letters far down the file are in another encoding than the rest. Nothing was read. Save the file as UTF-8 and try again.");
        }
        return unclosed is null || builder.Refusal is not null ? builder.Finish() : Parsed.Bad<SurveyTable>(unclosed);
    }

    private static string[] Cells(CsvReader csv)
    {
        var cells = new string[Math.Min(csv.FieldCount, TableLimits.Columns + 1)];
        for (var i = 0; i < cells.Length; i++) cells[i] = SpreadsheetText.Unguard(csv.GetString(i));
        return cells;
    }

    private static FileProblem? Unclosed(CsvMalformedRecord record, TableBuilder builder)
    {
        if (record.Reason == CsvMalformedReason.UnterminatedQuote)
            return new FileProblem((int)record.LineNumber, null, "", "A quotation mark opened in this row is never closed, so the rows after it cannot be told apart. Nothing was read.");
        builder.Notes.Add($"Row at line {record.LineNumber}: a stray quotation mark was kept as text.");
        return null;
    }

    private static CsvReaderOptions Settings(char separator, Action<CsvMalformedRecord> onMalformed) => new()
    {
        Separator = separator,
        HasHeader = false,
        TrackLineNumbers = true,
        MaxRecordSize = LongestRecordBytes,
        OnMalformedRecord = onMalformed,
    };

    private static string? NotText(ReadOnlySpan<byte> sample)
    {
        if (sample.StartsWith("PK"u8)) return "This is a workbook, not a text table. Import it as XLSX.";
        if (sample.StartsWith<byte>([0xD0, 0xCF, 0x11, 0xE0])) return "This is a workbook in the old XLS format. Save it as XLSX or CSV and try again.";
        if (sample.StartsWith("%PDF"u8)) return "This is a PDF. Tables in a PDF cannot be imported.";
        return null;
    }
}
