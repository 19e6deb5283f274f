using System.Buffers;
using System.Text;
using System.Text.Unicode;

namespace RetrofitCalc.Files.Studies;

/// <summary>Checks that bytes are text in UTF-8 before anyone reads them as JSON.</summary>
internal static class StudyFileText
{
    private static ReadOnlySpan<byte> Utf8Mark => [0xEF, 0xBB, 0xBF];

    public static ReadOnlyMemory<byte> WithoutMark(ReadOnlyMemory<byte> text) =>
        text.Span.StartsWith(Utf8Mark) ? text[Utf8Mark.Length..] : text;

    public static FileProblem? ProblemOf(ReadOnlyMemory<byte> text)
    {
        var bytes = text.Span;
        if (bytes.IsEmpty || !bytes.ContainsAnyExcept(" \t\r\n"u8)) return FileProblem.Of("The file is empty.");
        if (bytes.StartsWith<byte>([0xFF, 0xFE]) || bytes.StartsWith<byte>([0xFE, 0xFF]))
            return FileProblem.Of("The file is saved as UTF-16. Save it as UTF-8 and try again.");
        if (bytes.StartsWith("PK"u8)) return FileProblem.Of("This is a workbook or an archive, not a study file.");
        if (bytes.StartsWith("%PDF"u8)) return FileProblem.Of("This is a PDF. Save the study file attached to it, and open that.");
        if (Utf8.IsValid(bytes)) return null;
        var (line, column) = JsonPlace.At(bytes, FirstInvalid(bytes));
        return new FileProblem(line, column, "", "The file is not UTF-8 text from here on. Save it as UTF-8 and try again.");
    }

    private static int FirstInvalid(ReadOnlySpan<byte> bytes)
    {
        var at = 0;
        while (at < bytes.Length && Rune.DecodeFromUtf8(bytes[at..], out _, out var length) == OperationStatus.Done) at += length;
        return at;
    }
}
