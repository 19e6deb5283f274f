using System.Text;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Files.Spectra;

namespace RetrofitCalc.Files.Tests.Spectra;

public class A_TM_27_file
{
    private static Parsed<ImportedSpectrum> Read(string text) => Tm27File.Read(new MemoryStream(Encoding.UTF8.GetBytes(text)));

    internal static string File(string quantity, string data, string extra = "") => $"""
        <?xml version="1.0"?>
        <IESTM2714 xmlns="iestm2714" version="1.0">
          <Header><Manufacturer>Invented</Manufacturer><Description>Invented lamp</Description><Laboratory>Invented laboratory</Laboratory><ReportNumber>7</ReportNumber></Header>
          <SpectralDistribution>
            <SpectralQuantity>{quantity}</SpectralQuantity>{extra}
            {data}
          </SpectralDistribution>
        </IESTM2714>
        """;

    internal const string TwoPoints = """<SpectralData wavelength="403.1">0.5</SpectralData><SpectralData wavelength="405.5">1.25</SpectralData>""";

    // Structure and numbers of the sample in the colour-science library (BSD 3-Clause), its header replaced by invented words.
    private static readonly double[] Sample =
    [
        0.47, 0.51, 0.56, 0.61, 0.66, 0.72, 0.76, 0.77, 0.79, 0.81, 0.83, 0.85, 0.88, 0.92, 0.95, 0.99, 0.99, 1.00, 0.95, 0.91, 0.76, 0.62, 0.51, 0.40, 0.29, 0.21,
    ];

    [Fact]
    public void of_the_published_form_is_read_whole()
    {
        var data = string.Concat(Sample.Select((value, i) => FormattableString.Invariant($"<SpectralData wavelength=\"{400 + 10 * i}.0\">{value}</SpectralData>\n")));
        var read = Read(File("relative", data, "<BandwidthFWHM>2.0</BandwidthFWHM><BandwidthCorrected>true</BandwidthCorrected>")).Value!;
        Assert.Equal(Sample, read.Spectrum.Curve.Samples.Select(sample => sample.Value));
        Assert.Equal(SpectralBand.OfNanometres(400, 650), read.Spectrum.Curve.Range);
        Assert.Equal("Invented lamp", read.Spectrum.Name);
        Assert.Equal("TM-27 file: Invented laboratory, 7", read.Spectrum.Provenance.Source);
        Assert.Equal(SpectralScale.Relative, read.Spectrum.Scale);
        Assert.Empty(read.Notes);
    }

    [Fact]
    public void counts_as_tested_only_with_a_laboratory_or_a_report()
    {
        Assert.Equal(EvidenceKind.Tested, Read(File("flux", TwoPoints)).Value!.Spectrum.Provenance.Kind);
        var without = File("flux", TwoPoints).Replace("<Laboratory>Invented laboratory</Laboratory><ReportNumber>7</ReportNumber>", "<ReportDate>2026-01-01</ReportDate>", StringComparison.Ordinal);
        Assert.Equal(EvidenceKind.Unsourced, Read(without).Value!.Spectrum.Provenance.Kind);
    }

    [Fact]
    public void of_flux_is_in_watts_and_may_have_uneven_steps()
    {
        var spectrum = Read(File("flux", TwoPoints)).Value!.Spectrum;
        Assert.Equal(SpectralScale.RadiantPower, spectrum.Scale);
        Assert.Equal([403.1, 405.5], spectrum.Curve.Samples.Select(sample => sample.At.Nanometres));
    }

    [Fact]
    public void may_hold_elements_nobody_here_knows()
    {
        var read = Read(File("flux", TwoPoints, "<Geometry><Angle>8</Angle></Geometry>"));
        Assert.Empty(read.Problems);
        Assert.Equal(2, read.Value!.Spectrum.Curve.Samples.Count);
    }

    [Fact]
    public void of_another_quantity_of_light_gives_its_shape_and_says_so()
    {
        var read = Read(File("irradiance", TwoPoints, "<BandwidthCorrected>false</BandwidthCorrected>")).Value!;
        Assert.Equal(SpectralScale.Relative, read.Spectrum.Scale);
        Assert.Contains("shape alone", read.Notes[0]);
        Assert.Contains("bandwidth", read.Notes[1]);
    }

    [Theory]
    [InlineData("reflectance", TwoPoints, "The file holds reflectance, which is a surface or a glass, not a lamp.")]
    [InlineData("flux", "", "The file has fewer than two <SpectralData> elements.")]
    [InlineData("flux", "<SpectralData wavelength=\"x\">1</SpectralData>", "line 6, column 6: The wavelength \"x\" is not a number.")]
    [InlineData("flux", "<SpectralData>1</SpectralData>", "line 6, column 6: The wavelength \"\" is not a number.")]
    [InlineData("flux", "<SpectralData wavelength=\"400\">NaN</SpectralData>", "line 6, column 6: \"NaN\" is not a number.")]
    [InlineData("flux", "<SpectralData wavelength=\"400\">1</SpectralData>\n<SpectralData wavelength=\"400\">1</SpectralData>", "line 7, column 1: 400 nm follows 400 nm. Wavelengths must all rise or all fall, each once.")]
    public void with_a_mistake_says_what_and_where(string quantity, string data, string problem) =>
        Assert.Equal(problem, Assert.Single(Read(File(quantity, data)).Problems).ToString());

    [Fact]
    public void that_is_cut_off_names_the_place()
    {
        var whole = File("flux", TwoPoints);
        Assert.NotNull(Assert.Single(Read(whole[..^20]).Problems).Line);
        Assert.Contains("not a TM-27 file", Assert.Single(Read("<html/>").Problems).Message);
        Assert.Contains("not XML", Assert.Single(Read("380,1\n").Problems).Message);
    }

    // A document type could fetch files or grow without end: it is refused before anything of it is read.
    [Fact]
    public void with_a_document_type_is_refused()
    {
        const string hostile = """<?xml version="1.0"?><!DOCTYPE x [<!ENTITY a SYSTEM "file:///etc/hostname">]><IESTM2714><Header><Description>&a;</Description></Header></IESTM2714>""";
        Assert.Contains("DTD", Assert.Single(Read(hostile).Problems).Message);
    }

    [Fact]
    public void beyond_the_limits_is_refused()
    {
        var many = string.Concat(Enumerable.Range(0, SpectrumLimits.Samples + 1).Select(i => $"<SpectralData wavelength=\"{300 + i * 0.01:0.00}\">1</SpectralData>"));
        Assert.Contains("samples", Assert.Single(Read(File("flux", many)).Problems).Message);
        Assert.NotEmpty(Read(File("flux", new string(' ', SpectrumLimits.FileMegabytes * 1024 * 1024) + TwoPoints)).Problems);
    }

    [Fact]
    public void nested_without_end_does_no_harm()
    {
        var deep = string.Concat(Enumerable.Repeat("<a>", 100_000));
        Assert.NotEmpty(Read($"<IESTM2714><Header>{deep}").Problems);
    }

    /// <summary>Found by spoiling files: byte-order marks within the declaration made the framework's reader throw.</summary>
    [Fact]
    public void with_byte_order_marks_in_its_declaration_is_refused()
    {
        var text = "<?xml version=\"1.0" + string.Concat(Enumerable.Repeat("\uFEFF", 500)) + "\"?><IESTM2714 />";
        var read = Read(text);
        Assert.Null(read.Value);
        Assert.Single(read.Problems);
    }
}
