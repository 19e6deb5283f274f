using System.Globalization;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Spectra;
using RetrofitCalc.Files.Studies;
using RetrofitCalc.Files.Tests.Photometry;
using RetrofitCalc.Files.Tests.Studies;

namespace RetrofitCalc.Files.Tests.CommandLine;

public sealed class Light_on_the_command_line : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("retrofitcalc-light-");

    public void Dispose() => _folder.Delete(recursive: true);

    private string Place(string name) => Path.Combine(_folder.FullName, name);

    private string Save(string name, string text)
    {
        File.WriteAllText(Place(name), text);
        return Place(name);
    }

    private string Small => Save("small.json", SmallStudy.Text());

    private Study Written => StudyFile.Read(File.ReadAllBytes(Place("new.json"))).Value!;

    private string FL2
    {
        get
        {
            File.WriteAllBytes(Place("fl2.csv"), SpectrumCsv.Write(ShippedSpectra.Find("FL2")!, CultureInfo.InvariantCulture));
            return Place("fl2.csv");
        }
    }

    [Fact]
    public void readings_go_into_an_area_and_come_out_again()
    {
        var csv = Save("readings.csv", "lx (cm),-30,0,30\n-15,6500,,6400\n15,6300,7000,6350\n");
        var run = BuiltProgram.Run("import-readings", Small, csv, "--area", "Seedling racks", "--height", "1 ft", "--set", "canopy", "--pattern", "crossings", "--lux-of", "cool white fluorescent", "--out", Place("new.json"));
        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        Assert.Contains("Set \"canopy\" of Seedling racks: 5 readings, 2 rows of 3.", run.Output);
        var set = Assert.Single(Written.Areas[0].Light!.Readings);
        Assert.Equal((0.3048, LightUnit.Lux, ReadingPattern.Crossings, 74), (set.Height.Metres, set.Unit, set.Pattern, set.Conversion!.LuxPerMicromole));
        Assert.Equal([[6500, null, 6400], [6300, 7000, 6350]], set.Values);

        Assert.Equal(0, BuiltProgram.Run("export-readings", Place("new.json"), Place("again.csv"), "--area", "racks", "--set", "canopy").ExitCode);
        Assert.Contains("-0.15,6500,,6400", File.ReadAllText(Place("again.csv")));
        Assert.Equal(1, BuiltProgram.Run("export-readings", Place("new.json"), Place("none.csv"), "--area", "racks", "--set", "no").ExitCode);
    }

    [Fact]
    public void lux_of_no_lamp_are_taken_with_a_word_on_what_is_missing()
    {
        var run = BuiltProgram.Run("import-readings", Small, Save("r.csv", "lx (m),0,0.3\n0,6500,6400\n"), "--area", "racks", "--height", "0.3 m", "--out", Place("new.json"));
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("Nothing says how these become photons", run.Output);
        Assert.Null(Written.Areas[0].Light!.Readings[0].Conversion);
    }

    [Theory]
    [InlineData("cm,-30,0\n0,120,x\n", "racks", "1 ft", "line 2, column 3: \"x\" is not a number.")]
    [InlineData("120,121\n118,119\n", "racks", "1 ft", "2 rows of 2 readings, and nothing says where they lie")]
    [InlineData("cm,-30,0\n0,120,20000\n", "racks", "1 ft", "Areas[0].Light.Readings[0].Values[0][1]: The reading in row 1, column 2 (µmol m⁻² s⁻¹) is 20000; it must be 0 to 10000.")]
    [InlineData("cm,-30,0\n0,120,121\n", "attic", "1 ft", "The study has no area attic. It has: racks, hall.")]
    [InlineData("cm,-30,0\n0,120,121\n", "racks", "high", "--height: \"high\" is not a height.")]
    public void readings_with_a_problem_are_named_and_nothing_is_written(string table, string area, string height, string words)
    {
        var run = BuiltProgram.Run("import-readings", Small, Save("r.csv", table), "--area", area, "--height", height, "--out", Place("new.json"));
        Assert.Equal(1, run.ExitCode);
        Assert.Contains(words, run.Errors);
        Assert.False(File.Exists(Place("new.json")));
    }

    // CIE 15 prints 4230 K and Ra 64 for FL2; blue, green and red .243, .507 and .250 are computed over split 5 nm samples.
    [Fact]
    public void a_spectrum_prints_its_figures_without_a_study()
    {
        var run = BuiltProgram.Run("import-spectrum", FL2);
        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        var rows = run.Output.Split('\n').Select(line => line.Split("  ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)).Where(row => row.Length == 2).ToDictionary(row => row[0], row => row[1]);
        Assert.Equal(("0.243", "0.507", "0.25"), (rows["Blue, 400-500 nm, of the photons of 400-700 nm"], rows["Green, 500-600 nm"], rows["Red, 600-700 nm"]));
        Assert.Equal("4225 K", rows["Colour temperature"]);
        Assert.StartsWith("64.2", rows["Colour rendering Ra"], StringComparison.Ordinal);
        Assert.StartsWith("-8", rows["R9"], StringComparison.Ordinal);
    }

    [Fact]
    public void a_spectrum_goes_into_a_study_for_one_of_its_products()
    {
        var run = BuiltProgram.Run("import-spectrum", FL2, "--source", "Invented measurement", "--into", Small, "--product", "tube-4ft", "--name", "Cool", "--out", Place("new.json"));
        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        var own = Assert.Single(Written.Spectra);
        Assert.Equal(("Cool", "Invented measurement"), (own.Name, own.Source.Source));
        Assert.Equal(own.Id, Assert.Single(Written.Products).Spectrum);
    }

    [Fact]
    public void a_photometric_file_prints_its_figures_and_goes_into_a_study()
    {
        var file = Save("diffuse.ies", PhotometricText.Diffuse);
        var alone = BuiltProgram.Run("import-photometry", file);
        Assert.Equal((0, ""), (alone.ExitCode, alone.Errors));
        Assert.Matches("Highest intensity +1000 cd", alone.Output);
        Assert.Matches("Light of its lamps +absolute photometry", alone.Output);
        Assert.Matches("Power +36 W", alone.Output);

        var run = BuiltProgram.Run("import-photometry", file, "--into", Small, "--product", "tube-4ft", "--out", Place("new.json"));
        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        var taken = Assert.Single(Written.Distributions);
        Assert.Equal([0, 22.5, 45, 67.5, 90], taken.Vertical);
        Assert.Equal(PhotometricText.DiffuseCandelas, taken.Candelas[0]);
        Assert.Equal("Photometric file: INV-1, Invented laboratory, 2026-01-01, Invented", taken.Source.Source);
        Assert.Equal(taken.Id, Assert.Single(Written.Products).Distribution);
    }

    [Fact]
    public void light_files_that_are_broken_are_told_by_line_and_product_names_by_what_there_is()
    {
        var broken = BuiltProgram.Run("import-photometry", Save("cut.ies", PhotometricText.Diffuse[..^12]), "--into", Small, "--out", Place("new.json"));
        Assert.Equal(1, broken.ExitCode);
        Assert.Contains("line 11: The file ends before plane 1 of 1", broken.Errors);
        var unknown = BuiltProgram.Run("import-spectrum", FL2, "--into", Small, "--product", "magic", "--out", Place("new.json"));
        Assert.Equal(1, unknown.ExitCode);
        Assert.Contains("no lamp, tube or luminaire magic. It has: t8-32, tube-4ft.", unknown.Errors);
        Assert.False(File.Exists(Place("new.json")));
        Assert.Equal(2, BuiltProgram.Run("import-spectrum", FL2, "--into", Small).ExitCode);
        Assert.Equal(2, BuiltProgram.Run("import-photometry", FL2, "--out", Place("new.json")).ExitCode);
    }

    /// <summary>A study with a crop and no readings says that its light is not known, and what to do.</summary>
    [Fact]
    public void an_evaluation_says_what_becomes_of_the_crops_light()
    {
        var study = SmallStudy.Make();
        var season = new Season { Name = "Year", Start = new(1, 1), End = new(12, 31), Stages = [new Stage { Name = "growing", LightsOn = new(6, 0), LightsOff = new(22, 0) }] };
        File.WriteAllBytes(Place("crop.json"), StudyFile.Write(study with { Areas = [study.Areas[0] with { GrowsCrop = true, Weekly = null, Seasons = [season] }, study.Areas[1]] }));
        var run = BuiltProgram.Run("evaluate", Place("crop.json"));
        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        Assert.Matches("Crop light +not known", run.Output);
        Assert.Contains("Crop light with \"Direct-wire tubes\": Seedling racks: crop light not known", run.Output);
    }
}
