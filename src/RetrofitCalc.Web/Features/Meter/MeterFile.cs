using System.Globalization;
using NodaTime;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Meters;
using RetrofitCalc.Files.Meters.Espi;
using RetrofitCalc.Files.Meters.Tables;
using RetrofitCalc.Files.Surveys.Workbooks;

namespace RetrofitCalc.Web.Features.Meter;

/// <summary>A chosen file being understood: ESPI with its meters, or a table whose columns are matched. Slow: call it off the page's thread.</summary>
public sealed class MeterFile(UploadedFile file, CultureInfo culture, DateTimeZone zone)
{
    private const int Sniffed = 256;

    public string Name => file.Name;

    /// <summary>Sheets of a workbook; none for other files.</summary>
    public IReadOnlyList<string> Sheets { get; private set; } = [];

    public string? Sheet { get; private set; }

    /// <summary>The first rows of a table; null for ESPI.</summary>
    public MeterSample? Sample { get; private set; }

    /// <summary>What the columns are taken for; null for ESPI.</summary>
    public MeterLayout? Layout { get; private set; }

    /// <summary>Meters to choose from.</summary>
    public IReadOnlyList<MeterSource> Sources { get; private set; } = [];

    public IReadOnlyList<string> Problems { get; private set; } = [];

    /// <summary>The first meter that can be used; the first when none can.</summary>
    public int FirstUsable => Math.Max(0, Sources.ToList().FindIndex(source => source.Refusal is null));

    /// <summary>Looks at what kind of file it is and reads it by the best guess.</summary>
    public void Open()
    {
        if (IsXml(file.FromStart()))
        {
            Take(EspiFile.Read(file.FromStart()), content => content.Meters);
            return;
        }
        Sheets = WorkbookTable.Sheets(file.FromStart()).Value ?? [];
        UseSheet(Sheets.Count > 0 ? Sheets[0] : null);
    }

    public void UseSheet(string? sheet)
    {
        Sheet = sheet;
        var look = MeterTableFile.Look(file.FromStart(), culture, sheet);
        (Sample, Layout, Sources) = (look.Value, null, []);
        Problems = [.. look.Problems.Select(problem => problem.ToString())];
        if (look.Value is { } sample) UseLayout(sample.Guess);
    }

    public void UseLayout(MeterLayout layout)
    {
        Layout = layout;
        var name = Sheet is null ? Name : $"{Name}, sheet {Sheet}";
        Take(MeterTableFile.Read(file.FromStart(), new MeterTableOptions(name, culture, Sheet), layout, zone), source => [source]);
    }

    private void Take<T>(Parsed<T> read, Func<T, IReadOnlyList<MeterSource>> sources)
    {
        Problems = [.. read.Problems.Select(problem => problem.ToString())];
        Sources = read.Value is { } value ? sources(value) : [];
    }

    /// <summary>XML begins with a bracket, whatever the file is called; UTF-16 puts a zero beside it.</summary>
    private static bool IsXml(Stream stream)
    {
        var start = new byte[Sniffed];
        var read = stream.ReadAtLeast(start, Sniffed, throwOnEndOfStream: false);
        byte[] ignored = [0xEF, 0xBB, 0xBF, 0xFF, 0xFE, 0, (byte)' ', (byte)'\t', (byte)'\r', (byte)'\n'];
        return start.Take(read).SkipWhile(ignored.Contains).FirstOrDefault() == '<';
    }
}
