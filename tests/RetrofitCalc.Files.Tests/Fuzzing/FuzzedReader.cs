using System.Globalization;
using System.Text;
using NodaTime;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Metering;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Examples;
using RetrofitCalc.Files.Meters;
using RetrofitCalc.Files.Meters.Espi;
using RetrofitCalc.Files.Meters.Tables;
using RetrofitCalc.Files.Photometry;
using RetrofitCalc.Files.Readings;
using RetrofitCalc.Files.Spectra;
using RetrofitCalc.Files.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Files.Tariffs;
using RetrofitCalc.Files.Tests.Meters;
using RetrofitCalc.Files.Tests.Photometry;
using RetrofitCalc.Files.Tests.Spectra;
using RetrofitCalc.Files.Tests.Studies;
using RetrofitCalc.Files.Tests.Surveys;
using RetrofitCalc.Files.Tests.Weather;
using RetrofitCalc.Files.Typing;
using RetrofitCalc.Files.Weather;

namespace RetrofitCalc.Files.Tests.Fuzzing;

/// <summary>A reader to be tried: good files it reads, and what it says of any bytes.</summary>
/// <param name="Good">Files that read.</param>
/// <param name="Read">Problems of a file; null when it gave neither a value nor a problem.</param>
internal sealed record FuzzedReader(IReadOnlyList<byte[]> Good, Func<byte[], IReadOnlyList<string>?> Read)
{
    private static readonly DateTimeZone NewYork = DateTimeZoneProviders.Tzdb["America/New_York"];
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-US");

    public static IReadOnlyDictionary<string, Func<FuzzedReader>> All { get; } = new Dictionary<string, Func<FuzzedReader>>
    {
        ["ESPI XML"] = () => new([new EspiFeed().Bytes(), (new EspiFeed() with { Accumulation = 3, Unit = 72, Quality = "<e:ReadingQuality><e:quality>8</e:quality></e:ReadingQuality>" }).Bytes()],
            bytes => Said(EspiFile.Read(Stream(bytes)), feed => feed.Meters.ToList().ForEach(Clean))),
        ["meter CSV"] = () => new([Text(MeterRows("Start,kWh", "uuuu-MM-dd HH:mm")), Text(MeterRows("Interval ending;kW", "dd.MM.uuuu HH:mm").Replace(',', ';')), Text(DayRows())], bytes => ReadTable(bytes)),
        ["meter XLSX"] = () => new([MeterBook()], bytes => ReadTable(bytes), InsideZip: true),
        ["survey CSV"] = () => new([SurveyRows()], ReadSurvey),
        ["survey XLSX"] = () => new([Workbooks.OneSheet("<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>Area</t></is></c><c r=\"B1\" t=\"s\"><v>0</v></c></row><row r=\"2\"><c r=\"A2\" t=\"inlineStr\"><is><t>Hall</t></is></c><c r=\"B2\"><v>4</v></c></row>", shared: "<si><t>Count</t></si>")], ReadSurvey, InsideZip: true),
        ["study JSON"] = () => new([StudyFile.Write(SmallStudy.Make()), StudyFile.Write(WorkedExample.Load() with { Meter = null, Weather = null }), MeteredStudy()], bytes => Said(StudyFile.Read(bytes))),
        ["rate record JSON"] = () => new([RateRecordFile.Write(WorkedExample.Load().Tariff).Value!.Json], bytes => Said(RateRecordFile.Read(Stream(bytes)), records => { foreach (var record in records.Take(20)) _ = record.Read(); })),
        ["EPW"] = () => new([Text(string.Join('\n', EpwText.Lines(hour => 10 + hour % 24)))], bytes => Said(EpwFile.Read(Stream(bytes)))),
        ["LM-63"] = () => new([Text(PhotometricText.Diffuse), Text(PhotometricText.Tilted), Text(PhotometricText.Floodlight)], bytes => Said(Lm63File.Read(Stream(bytes)), Light)),
        ["spectrum CSV"] = () => new([Spectrum(English), Spectrum(CultureInfo.GetCultureInfo("de-DE")), Text("Integration time 40 ms\nnm\tµmol/s/nm\n400\t0.1\n450\t1.2\n550\t.8\n700\t0.2\n")], ReadSpectrum),
        ["TM-27 XML"] = () => new([Text(A_TM_27_file.File("flux", A_TM_27_file.TwoPoints)), Text(A_TM_27_file.File("relative", "<SpectralData wavelength=\"400\">0.1</SpectralData><SpectralData wavelength=\"800\">1</SpectralData>"))],
            bytes => Said(Tm27File.Read(Stream(bytes)), Light)),
        ["readings text"] = () => new([Text("lx (cm),-30,0,30\n-15,6500.5,,6400\n15,6300,7000,6350\n"), Text("m\t0\t0.1\n0°\t200\t185\n90°\t198\t184"), Text("\t0\t1 ft 6 in\n0\t120\t\"99\"\n12 in\t80\t–")],
            bytes => Said(ReadingsCsv.Read(Stream(bytes), English, LengthUnit.Inches), Readings)),
    };

    /// <summary>Whether the file is a packed one whose parts are spoilt as well.</summary>
    public bool InsideZip { get; init; }

    private FuzzedReader(IReadOnlyList<byte[]> good, Func<byte[], IReadOnlyList<string>?> read, bool InsideZip) : this(good, read) => this.InsideZip = InsideZip;

    private static MemoryStream Stream(byte[] bytes) => new(bytes, writable: false);

    private static byte[] Text(string text) => Encoding.UTF8.GetBytes(text);

    private static IReadOnlyList<string>? Said<T>(Parsed<T> read, Action<T>? use = null)
    {
        if (read.Value is { } value) use?.Invoke(value);
        return read.Value is null && read.Problems.Count == 0 ? null : [.. read.Problems.Select(problem => problem.Message)];
    }

    private static IReadOnlyList<string>? ReadTable(byte[] bytes)
    {
        var look = MeterTableFile.Look(Stream(bytes), English);
        return look.Value is { } sample ? Said(MeterTableFile.Read(Stream(bytes), new("Fuzzed", English), sample.Guess, NewYork), Clean) : Said(look);
    }

    private static void Clean(MeterSource source)
    {
        var cleaned = MeterCleaning.Of(source.Readings, NewYork);
        if (BillingSpans.Of(cleaned, new()) is [var span, ..]) GapFilling.Fill(cleaned.Year(span.First, source.Name, Provenance.None), NewYork);
    }

    private static IReadOnlyList<string>? ReadSurvey(byte[] bytes)
    {
        var study = SmallStudy.Make();
        return Said(SurveyFile.Read(Stream(bytes), English), table => SurveyImport.Preview(table, ColumnMatch.Guess(table.Headers), study, new SurveyContext(English, SurveyContext.UsualUnit(English), study.Areas, study.Catalogue)));
    }

    private static IReadOnlyList<string>? ReadSpectrum(byte[] bytes)
    {
        var table = SpectrumCsv.Read(Stream(bytes));
        return table.Value is { } rows && SpectrumChoice.Guess(rows) is { } choice ? Said(SpectrumBuild.Of(rows, choice, "Fuzzed", Provenance.None), Light)
            : table.Value is null ? Said(table) : ["one column"];
    }

    private static byte[] Spectrum(CultureInfo culture) => SpectrumCsv.Write(ShippedSpectra.Find("FL11")!, culture);

    /// <summary>Whatever reads must give its figures and go into a study; what the study cannot hold is a problem there, never an exception.</summary>
    private static void Light(ImportedSpectrum read)
    {
        _ = SpectrumFigures.Of(read.Spectrum, ShippedSpectra.Tables);
        _ = StudyFile.Read(StudyFile.Write(StudySpectra.Add(SmallStudy.Make(), read.Spectrum, read.Spectrum.Name))).Problems;
    }

    private static void Light(PhotometricFile file)
    {
        Require.Finite(file.Distribution.TotalFlux.Lumens + Lm63Writer.Write(file).Length);
        var study = StudyDistributions.Add(SmallStudy.Make(), file, StudyDistributions.NameIn(file) ?? "none");
        if (StudyEvaluation.Check(study).Count == 0) _ = StudyDistributions.Of(study.Distributions[0]);
    }

    private static void Readings(ReadingGrid grid)
    {
        var bench = new AreaLight { BenchLength = Length.FromMetres(1.2), BenchWidth = Length.FromMetres(0.6) };
        if (ReadingPlaces.Into(new ReadingSet { Id = "fuzzed", Height = Length.FromMetres(0.3) }, grid, bench).Value is not { } set) return;
        var study = SmallStudy.Make();
        _ = StudyEvaluation.Check(study with { Areas = [study.Areas[0] with { Light = bench with { Readings = [set] } }, study.Areas[1]] });
    }

    private static string MeterRows(string heading, string pattern) => heading + "\n" + string.Concat(Enumerable.Range(0, 200).Select(i =>
        $"{new LocalDateTime(2026, 3, 7, 0, 0).PlusMinutes(15 * i).ToString(pattern, CultureInfo.InvariantCulture)},{0.25 * (i % 7)}\n"));

    private static string DayRows() => "Date," + string.Join(',', Enumerable.Range(0, 24)) + "\n" +
        string.Concat(Enumerable.Range(1, 9).Select(day => $"2026-03-{day:00},{string.Join(',', Enumerable.Range(0, 24))}\n"));

    private static byte[] MeterBook() => Workbooks.OneSheet("<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>Start</t></is></c><c r=\"B1\" t=\"inlineStr\"><is><t>kWh</t></is></c></row>" +
        string.Concat(Enumerable.Range(2, 40).Select(row => string.Create(CultureInfo.InvariantCulture, $"<row r=\"{row}\"><c r=\"A{row}\" s=\"1\"><v>{46037 + row / 96.0}</v></c><c r=\"B{row}\"><v>{row / 4.0}</v></c></row>"))));

    private static byte[] SurveyRows()
    {
        var study = SmallStudy.Make();
        return SurveyCsv.Write(study.Lines, new SurveyContext(English, SurveyContext.UsualUnit(English), study.Areas, study.Catalogue));
    }

    private static byte[] MeteredStudy() => StudyFile.Write(SmallStudy.Make() with
    {
        Meter = new MeterYear { Name = "x", FirstDay = new(2026, 1, 1), IntervalMinutes = 60, Watts = [.. Enumerable.Range(0, 300).Select(i => i % 50 == 0 ? null : (double?)i * 1.5)] },
    });
}
