using System.Globalization;
using System.Xml;
using DocumentFormat.OpenXml.Packaging;
using RetrofitCalc.Files.Surveys.Tables;

namespace RetrofitCalc.Files.Surveys.Workbooks;

/// <summary>Reads one sheet of an XLSX workbook as text cells, numbers and dates written as their user types them.</summary>
public static class WorkbookTable
{
    /// <summary>Names of the sheets, to choose from.</summary>
    public static Parsed<IReadOnlyList<string>> Sheets(Stream stream) => Open(stream, book => Parsed.Good(SheetIndex.Of(book).Names));

    /// <summary>Reads a sheet.</summary>
    /// <param name="stream">The XLSX file.</param>
    /// <param name="culture">How its reader types numbers.</param>
    /// <param name="sheet">Name of the sheet; null for the first.</param>
    public static Parsed<SurveyTable> Read(Stream stream, CultureInfo culture, string? sheet = null)
    {
        var builder = new TableBuilder();
        return Fill(stream, (culture, WithTimes: false), builder, sheet) is { } problem ? Parsed.Bad<SurveyTable>(problem) : builder.Finish();
    }

    /// <summary>Hands the rows of a sheet on until the sink wants no more. Returns why the workbook cannot be read; null when it can.</summary>
    internal static FileProblem? Fill(Stream stream, (CultureInfo Culture, bool WithTimes) cells, TableSink sink, string? sheet)
    {
        var read = Open(stream, book => Fill(book, cells, sink, sheet));
        return read.Ok ? null : read.Problems[0];
    }

    private static Parsed<bool> Fill(SpreadsheetDocument book, (CultureInfo Culture, bool WithTimes) cells, TableSink sink, string? sheet)
    {
        var sheets = SheetIndex.Of(book);
        if (sheets.Names.Count > WorkbookLimits.Sheets) return Parsed.Bad<bool>($"The workbook has more than {WorkbookLimits.Sheets} sheets. Nothing was read.");
        if (sheets.PartOf(sheet) is not { } part)
            return Parsed.Bad<bool>(sheet is null ? "The workbook has no sheet with cells." : $"The workbook has no sheet {CellText.Quote(sheet)}. It has: {string.Join(", ", sheets.Names)}.");
        var words = SharedWords.Of(book);
        if (words is null) return Parsed.Bad<bool>(TableLimits.TooLarge);
        SheetReader.Fill(part, new CellReader(words, NumberFormats.Of(book), cells.Culture) { WithTimes = cells.WithTimes }, sink);
        var others = sheets.Names.Where(name => name != (sheet ?? sheets.Names[0]));
        if (sheets.Names.Count > 1) sink.Notes.Add($"Read from sheet {CellText.Quote(sheet ?? sheets.Names[0])}. The workbook also has: {string.Join(", ", others)}.");
        return Parsed.Good(true);
    }

    private static Parsed<T> Open<T>(Stream stream, Func<SpreadsheetDocument, Parsed<T>> read)
    {
        try
        {
            var file = BoundedRead.All(stream, TableLimits.FileBytes);
            if (file is null) return Parsed.Bad<T>(TableLimits.TooLarge);
            if (NotWorkbook(file) is { } other) return Parsed.Bad<T>(other);
            if (WorkbookLimits.ProblemOf(file) is { } tooMuch) return Parsed.Bad<T>(tooMuch);
            using var book = SpreadsheetDocument.Open(new MemoryStream(file, writable: false), isEditable: false);
            return book.WorkbookPart is null ? Parsed.Bad<T>(Damaged) : read(book);
        }
        catch (Exception broken) when (IsDamage(broken))
        {
            return Parsed.Bad<T>(Damaged);
        }
    }

    private const string Damaged = "The workbook is damaged or not an XLSX file. Nothing was read. Open it in a spreadsheet, save it as XLSX again and try once more.";

    /// <summary>What the packing, XML and workbook readers throw on damaged files; they have no common type.</summary>
    private static bool IsDamage(Exception e) => e is InvalidDataException or XmlException or OpenXmlPackageException or FormatException or IOException
        or ArgumentException or InvalidOperationException or NotSupportedException or IndexOutOfRangeException or KeyNotFoundException or OverflowException
        or UriFormatException;

    private static string? NotWorkbook(ReadOnlySpan<byte> file)
    {
        if (file.IsEmpty) return "The file is empty.";
        if (file.StartsWith("PK"u8)) return null;
        return file.StartsWith<byte>([0xD0, 0xCF, 0x11, 0xE0])
            ? "This is a workbook in the old XLS format, or one with a password. Save it as plain XLSX and try again."
            : "This is not an XLSX workbook. If it is a text table, import it as CSV.";
    }
}
