using System.Reflection;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Spectra;

namespace RetrofitCalc.Files.Spectra;

/// <summary>A spectrum that comes with the program.</summary>
/// <param name="Group">What kind it is, for lists to choose from.</param>
/// <param name="Spectrum">Its shape.</param>
public sealed record ShippedSpectrum(string Group, SpectralDistribution Spectrum);

/// <summary>Spectra and tables that come with the program; sources and licence in README.md beside the data. Read once.</summary>
public static class ShippedSpectra
{
    private static readonly (string File, string Group, string Source)[] Files =
    [
        ("cie_fl1_fl12_5nm", "CIE fluorescent FL1–12", "CIE 15, illuminants FL1–12, 5 nm"),
        ("cie_fl3_1_fl3_15_5nm", "CIE fluorescent FL3.1–3.15", "CIE 15, illuminants FL3.1–3.15, 5 nm"),
        ("cie_led_series_5nm", "CIE LED", "CIE 015:2018, LED illuminants, 5 nm"),
        ("cie_hp1_hp5_5nm", "CIE high-pressure discharge", "CIE 15, illuminants HP1–5, 5 nm"),
        ("cie_a_d50_d55_d65_d75_e_5nm", "CIE incandescent and daylight", "CIE 15, illuminants A, D50–D75, E, 5 nm"),
        ("nist_cqs_commercial_5nm", "Commercial lamps", "lamps of the NIST colour quality scale data, 5 nm"),
        ("nist_cqs_traditional_5nm", "Lamp families", "lamps of the NIST colour quality scale data, 5 nm"),
        ("nist_cqs_led_5nm", "LED examples", "LED examples of the NIST colour quality scale data, 5 nm; those of several colours are computed shapes"),
    ];

    private static readonly Lazy<IReadOnlyList<ShippedSpectrum>> Spectra = new(() => [.. Files.SelectMany(file => Read(file.File, file.Group, file.Source))]);
    private static readonly Lazy<ColorimetricTables> Colour = new(ReadTables);

    /// <summary>All spectra, by group.</summary>
    public static IReadOnlyList<ShippedSpectrum> All => Spectra.Value;

    /// <summary>Observer functions, eye sensitivity, test colours and daylight components for the engine.</summary>
    public static ColorimetricTables Tables => Colour.Value;

    /// <summary>A spectrum by its name, such as FL11; null when there is none.</summary>
    public static SpectralDistribution? Find(string name) => All.FirstOrDefault(shipped => shipped.Spectrum.Name == name)?.Spectrum;

    private static IEnumerable<ShippedSpectrum> Read(string file, string group, string source)
    {
        var table = Table(file);
        for (var column = 1; column < table.Headings.Count; column++)
        {
            var choice = new SpectrumChoice(0, column, WavelengthUnit.Nanometres, SpectrumUnit.Relative);
            var read = SpectrumBuild.Of(table, choice, table.Headings[column], new(EvidenceKind.Tested, source));
            yield return new(group, Whole(read).Spectrum);
        }
    }

    private static ColorimetricTables ReadTables()
    {
        SpectralCurve[] Columns(string file) => [.. Table(file) is var table ? Enumerable.Range(1, table.Headings.Count - 1).Select(column => SpectrumBuild.Curve(table, column)) : []];
        var observer = Columns("cie1931_2deg_cmf_1nm");
        var daylight = Columns("cie_daylight_S0S1S2");
        return new()
        {
            EyeSensitivity = Columns("cie1924_vlambda_1nm")[0],
            X = observer[0],
            Y = observer[1],
            Z = observer[2],
            Daylight = new(daylight[0], daylight[1], daylight[2]),
            TestColours = Columns("cie13_3_tcs01_14_5nm"),
        };
    }

    private static SpectrumTable Table(string file)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"RetrofitCalc.Files.Spectra.{file}.csv")!;
        return Whole(SpectrumCsv.Read(stream));
    }

    /// <summary>Our own data must read without a problem.</summary>
    private static T Whole<T>(Parsed<T> read) =>
        read is { Ok: true, Value: { } value } ? value : throw new FormatException(string.Join(" ", read.Problems));
}
