using System.IO.Compression;

namespace RetrofitCalc.Files.Surveys.Workbooks;

/// <summary>Refuses workbooks that unpack to far more than a survey: a few kilobytes can hold gigabytes.</summary>
internal static class WorkbookLimits
{
    public const int UnpackedMegabytes = 200;
    public const int Parts = 2000;
    public const int Sheets = 100;
    public const int SharedStrings = 500_000;
    private const int HighestRatio = 300;
    private const long RatioMattersFrom = 10 * 1024 * 1024;
    private const long UnpackedBytes = UnpackedMegabytes * 1024L * 1024;

    private static readonly string TooMuch =
        $"The workbook unpacks to more than {UnpackedMegabytes} MB, far more than a survey. Nothing was read. Copy the survey's sheet to a new workbook and try again.";

    private const string TooInvolved =
        "The workbook is built in a way no spreadsheet writes: far too many parts nested in each other or held at once. Nothing was read. Copy the survey's sheet to a new workbook and try again.";

    /// <summary>Why the packed file is refused; null when it may be opened. Sizes are counted while unpacking: the stated ones can lie.</summary>
    public static string? ProblemOf(byte[] file)
    {
        using var zip = new ZipArchive(new MemoryStream(file, writable: false), ZipArchiveMode.Read);
        if (zip.Entries.Count > Parts) return $"The workbook has more than {Parts} parts. Nothing was read.";
        var left = UnpackedBytes;
        var buffer = new byte[81920];
        foreach (var entry in zip.Entries)
        {
            var most = Math.Min(left, Math.Max(RatioMattersFrom, entry.CompressedLength * HighestRatio));
            var size = Size(entry, most, buffer);
            if (size > most) return TooMuch;
            left -= size;
        }
        return zip.Entries.All(XmlLimits.Allow) ? null : TooInvolved;
    }

    private static long Size(ZipArchiveEntry entry, long most, byte[] buffer)
    {
        using var content = entry.Open();
        long size = 0;
        for (int read; size <= most && (read = content.Read(buffer)) > 0;) size += read;
        return size;
    }
}
