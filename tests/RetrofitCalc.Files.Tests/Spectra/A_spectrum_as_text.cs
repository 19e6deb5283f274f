using System.Globalization;
using System.Text;
using CsCheck;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Files.Spectra;

namespace RetrofitCalc.Files.Tests.Spectra;

public class A_spectrum_as_text
{
    private static readonly Provenance Instrument = new(EvidenceKind.Measured, "invented instrument");

    private static Parsed<SpectrumTable> Read(string text) => SpectrumCsv.Read(new MemoryStream(Encoding.UTF8.GetBytes(text)));

    private static Parsed<ImportedSpectrum> Import(string text, Func<SpectrumChoice, SpectrumChoice>? choose = null)
    {
        var table = Read(text).Value!;
        var guess = SpectrumChoice.Guess(table)!;
        return SpectrumBuild.Of(table, choose is null ? guess : choose(guess), "Lamp", Instrument);
    }

    private static IEnumerable<(double, double)> Points(Parsed<ImportedSpectrum> read) =>
        read.Value!.Spectrum.Curve.Samples.Select(sample => (Math.Round(sample.At.Nanometres, 9), Math.Round(sample.Value, 9)));

    public static TheoryData<string> Ways =>
    [
        "Wavelength (nm),Value\n380.5,0.12\n385,1e-3\n",
        "Wavelength (nm);Value\r\n380,5;0,12\r\n385;0,001\r\n",
        "Wavelength (nm)\tValue\n380,5\t0,12\n385\t0,001\n",
        "380.5|0.12\n385|0.001\n",
        "380.5   0.12\n385  0.001\n",
        "\"Wavelength (nm)\",\"Value, relative\"\n\"380.5\",\"0.12\"\n\"385\",\"0.001\"\n",
        "385,0.001\n380.5,0.12\n",
        "Instrument: invented\nIntegration time;100\nWavelength (µm);Value\n0,3805;0,12\n0,385;0,001\n>>>>>End<<<<<\n",
    ];

    [Theory, MemberData(nameof(Ways))]
    public void is_read_in_the_ways_instruments_write_it(string text)
    {
        var read = Import(text);
        Assert.Empty(read.Problems);
        Assert.Equal([(380.5, 0.12), (385, 0.001)], Points(read));
        Assert.Equal(SpectralScale.Relative, read.Value!.Spectrum.Scale);
        Assert.Equal(Instrument, read.Value.Spectrum.Provenance);
    }

    [Fact]
    public void says_what_it_did_not_use_and_what_it_turned_round()
    {
        Assert.Contains("2 lines of text", Assert.Single(Read("Made up\nnm,Value\n380,1\n385,2\n[end]\n").Value!.Notes));
        Assert.Equal(2, Import("385,1\n380,2\n").Value!.Notes.Count); // no headings, falling
    }

    [Theory]
    [InlineData("Power (W/nm)", SpectrumUnit.WattsPerNanometre)]
    [InlineData("mW / nm", SpectrumUnit.MilliwattsPerNanometre)]
    [InlineData("µmol/s/nm", SpectrumUnit.MicromolesPerSecondNanometre)]
    [InlineData("µmol m-2 s-1 (photons)", SpectrumUnit.RelativePhotons)]
    [InlineData("W/m²/nm", SpectrumUnit.Relative)]
    [InlineData("µW/nm", SpectrumUnit.Relative)]
    [InlineData("Lamp 1", SpectrumUnit.Relative)]
    public void has_its_unit_guessed_from_the_heading_only_where_it_says_so(string heading, SpectrumUnit unit) =>
        Assert.Equal(unit, SpectrumChoice.Guess(Read($"Wavelength;{heading}\n380;1\n385;2\n").Value!)!.Unit);

    // 1 µmol/s per nm at 450 nm is 119.62657 / 450 = 0.265837 W/nm; at 650 nm 0.184041, a ratio of 1.444.
    [Fact]
    public void in_photons_is_turned_into_watts()
    {
        var read = Import("nm,µmol/s/nm\n450,1\n650,1\n").Value!.Spectrum;
        Assert.Equal(0.265837, read.Curve.Samples[0].Value, 1e-6);
        Assert.Equal(650.0 / 450, read.Curve.Samples[0].Value / read.Curve.Samples[1].Value, 1e-9);
        Assert.Equal(SpectralScale.RadiantPower, read.Scale);
        Assert.All(read.PhotonSamples, sample => Assert.Equal(1, sample.Value, 1e-12));
    }

    [Fact]
    public void in_milliwatts_is_a_thousandth() =>
        Assert.Equal([(450, 0.0015), (650, 0.002)], Points(Import("nm,mW/nm\n450,1.5\n650,2\n")));

    [Fact]
    public void of_several_lamps_gives_the_one_chosen()
    {
        const string text = "nm;Lamp A (relative);Lamp B (W/nm)\n380;1;\n385;2;7\n390;3;8\n395;4;9\n";
        var table = Read(text).Value!;
        var read = Import(text, guess => guess.WithValue(2, table));
        Assert.Equal([(385, 7), (390, 8), (395, 9)], Points(read)); // a blank cell is no zero
        Assert.Equal(SpectralScale.RadiantPower, read.Value!.Spectrum.Scale);
    }

    [Theory]
    [InlineData("nm,Value\n380,1\n385,x\n390,2\n", "line 3, column 2: \"x\" is not a number.")]
    [InlineData("nm,Value\n380,1\n380,2\n", "line 3, column 1: 380 nm follows 380 nm. Wavelengths must all rise or all fall, each once.")]
    [InlineData("nm,Value\n380,1\n390,1\n385,2\n", "line 4, column 1: 385 nm follows 390 nm. Wavelengths must all rise or all fall, each once.")]
    [InlineData("nm,Value\n30,1\n35,2\n", "line 2, column 1: 30 nm is no wavelength of a lamp. Is it nanometres or micrometres, and is this the column of wavelengths?")]
    [InlineData("nm,Value\n380,1\n385,-0.5\n", "line 3, column 2: The value is negative, by more than noise. Was a dark reading taken off twice?")]
    [InlineData("nm,Value\n380,0\n385,0\n", "line 2, column 2: All values of the column are zero or less: there is no light in it.")]
    public void with_a_mistake_names_its_place(string text, string problem)
    {
        var table = Read(text);
        var problems = table.Value is { } rows ? SpectrumBuild.Of(rows, SpectrumChoice.Guess(rows)!, "Lamp", Instrument).Problems : table.Problems;
        Assert.Equal(problem, Assert.Single(problems).ToString());
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("hello\nworld\n", "No rows of numbers")]
    [InlineData("380\n385\n390\n", "No rows of numbers")]
    public void that_is_none_is_refused(string text, string words) => Assert.Contains(words, Assert.Single(Read(text).Problems).Message);

    [Fact]
    public void that_goes_on_and_on_is_refused()
    {
        var rows = string.Concat(Enumerable.Range(0, SpectrumLimits.Samples + 1).Select(i => $"{i},1\n"));
        Assert.Contains("more than", Assert.Single(Read(rows).Problems).Message);
        Assert.Contains("larger than", Assert.Single(SpectrumCsv.Read(new MemoryStream(new byte[SpectrumLimits.FileMegabytes * 1024 * 1024 + 1])).Problems).Message);
    }

    [Fact]
    public void takes_noise_below_zero_for_zero_and_says_so()
    {
        var read = Import("nm,Value\n380,-0.002\n385,1\n390,0.5\n");
        Assert.Equal([(380, 0), (385, 1), (390, 0.5)], Points(read));
        Assert.Contains("noise", Assert.Single(read.Value!.Notes));
    }

    [Theory, InlineData("en-US"), InlineData("de-DE")]
    public void written_reads_back_the_same(string culture) =>
        Gen.Select(Gen.Double[100, 4000].HashSet[3, 40], Gen.Double[0, 1000].Array[40]).Sample((places, values) =>
        {
            var samples = places.Order().Zip(values, SpectralSample.Of).ToList();
            samples[0] = samples[0] with { Value = 1 };
            var before = new SpectralDistribution("=Lamp", new(samples), SpectralScale.RadiantPower, Instrument);
            var table = SpectrumCsv.Read(new MemoryStream(SpectrumCsv.Write(before, CultureInfo.GetCultureInfo(culture)))).Value!;
            var after = SpectrumBuild.Of(table, SpectrumChoice.Guess(table)!, "Lamp", Instrument).Value!.Spectrum;
            Assert.Equal(samples, after.Curve.Samples);
            Assert.Equal(SpectralScale.RadiantPower, after.Scale);
        }, iter: 30);

    // Whatever comes in, an answer comes out: a table, or problems, and no exception.
    [Fact]
    public void of_any_bytes_ends_in_a_table_or_in_problems() =>
        Gen.OneOf(Gen.Byte.Array[0, 200], Gen.String[Gen.Char["0123456789.,;\t\"\n -eEnm"], 0, 200].Select(Encoding.UTF8.GetBytes)).Sample(bytes =>
        {
            var table = SpectrumCsv.Read(new MemoryStream(bytes));
            if (table.Value is not { } rows || SpectrumChoice.Guess(rows) is not { } choice)
                return table.Ok == table.Value is not null;
            var read = SpectrumBuild.Of(rows, choice, "Lamp", Instrument);
            return read.Ok == read.Value is not null;
        }, iter: 2000);
}
