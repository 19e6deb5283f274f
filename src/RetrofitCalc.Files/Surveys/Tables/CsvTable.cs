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
        var builder = new TableBuilder();
        return Fill(stream, builder) is { } problem && builder.Refusal is null ? Parsed.Bad<SurveyTable>(problem) : builder.Finish();
    }

    /// <summary>Hands rows on until the sink wants no more. Returns why the file cannot be read; null when it can.</summary>
    internal static FileProblem? Fill(Stream stream, TableSink sink)
    {
        try
        {
            var sample = BoundedRead.UpTo(stream, SampleBytes);
            if (sample.Length == 0) return FileProblem.Of("The file is empty.");
            if (NotText(sample) is { } other) return FileProblem.Of(other);
            var (encoding, mark, note) = TextEncoding.Of(sample, whole: sample.Length < SampleBytes);
            if (encoding is null) return FileProblem.Of("This is not a text file. Save the table as CSV in UTF-8, or as XLSX, and try again.");
            if (note is not null) sink.Notes.Add(note);
            using var rest = new HeadAndRest(sample.AsMemory(mark), stream);
            using var reader = new StreamReader(rest, encoding, detectEncodingFromByteOrderMarks: false);
            return Fill(reader, Separator.Of(TextEncoding.StartOf(sample.AsSpan(mark), encoding)), sink);
        }
        catch (IOException unreadable)
        {
            return FileProblem.Of($"The file could not be read: {unreadable.Message}");
        }
    }

    private static FileProblem? Fill(TextReader text, char separator, TableSink sink)
    {
        FileProblem? unclosed = null;
        try
        {
            using var csv = CsvReader.Create(text, Settings(separator, record => unclosed ??= Unclosed(record, sink)), leaveOpen: true);
            while (csv.Read())
                if (!sink.Add((int)csv.LineNumber, Cells(csv))) break;
            return unclosed;
        }
        catch (CsvFormatException tooLong)
        {
            return new FileProblem((int)tooLong.LineNumber, null, "", TableLimits.CellTooLong);
        }
        catch (DecoderFallbackException)
        {
            return FileProblem.Of("Some letters far down the file are in another encoding than the rest. Nothing was read. Save the file as UTF-8 and try again.");
        }
    }

    private static string[] Cells(CsvReader csv)
    {
        var cells = new string[Math.Min(csv.FieldCount, TableLimits.Columns + 1)];
        for (var i = 0; i < cells.Length; i++) cells[i] = SpreadsheetText.Unguard(csv.GetString(i));
        return cells;
    }

    private static FileProblem? Unclosed(CsvMalformedRecord record, TableSink sink)
    {
        if (record.Reason == CsvMalformedReason.UnterminatedQuote)
            return new FileProblem((int)record.LineNumber, null, "", "A quotation mark opened in this row is never closed, so the rows after it cannot be told apart. Nothing was read.");
        sink.Notes.Add($"Row at line {record.LineNumber}: a stray quotation mark was kept as text.");
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
