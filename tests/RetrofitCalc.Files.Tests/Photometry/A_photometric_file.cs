using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Files.Photometry;
using static RetrofitCalc.Files.Tests.Photometry.PhotometricText;

namespace RetrofitCalc.Files.Tests.Photometry;

// The layout is that of IES LM-63, as public descriptions of its five forms give it; the files are written for these tests.
public class A_photometric_file
{
    [Fact]
    public void of_the_plain_form_is_read_whole_and_without_a_remark()
    {
        var file = Whole(Diffuse);
        Assert.Equal(Lm63Edition.Of2002, file.Edition);
        Assert.Equal("Invented laboratory", file.Label("testlab"));
        Assert.Equal([0, 22.5, 45, 67.5, 90], file.Distribution.VerticalDegrees);
        Assert.Equal(DiffuseCandelas, file.Distribution.Candelas[0]);
        Assert.Equal(new LuminousOpening(0.1, 1.2, 0), file.Distribution.Opening);
        Assert.Equal(36, file.Distribution.InputPower!.Value.Watts);
        Assert.Null(file.Distribution.LampFlux);
        Assert.Empty(file.Notes);
    }

    [Theory]
    [InlineData("", Lm63Edition.Of1986)]
    [InlineData("IESNA91\n", Lm63Edition.Of1991)]
    [InlineData("IESNA:LM-63-1995\n", Lm63Edition.Of1995)]
    [InlineData("IESNA:LM-63-2002\n", Lm63Edition.Of2002)]
    [InlineData("IES:LM-63-2019\n", Lm63Edition.Of2019)]
    [InlineData("\nies:lm-63-2019 \n", Lm63Edition.Of2019)]
    public void names_its_edition_in_the_first_line(string version, Lm63Edition edition) =>
        Assert.Equal(edition, Whole(Diffuse.Replace("IESNA:LM-63-2002\n", version)).Edition);

    // Intensity = value · multiplier 2 · ballast factor 0.9, and · 0.5 up to 1995: 1800 or 900 cd straight down.
    [Theory]
    [InlineData("", 900)]
    [InlineData("IESNA91\n", 900)]
    [InlineData("IESNA:LM-63-1995\n", 900)]
    [InlineData("IESNA:LM-63-2002\n", 1800)]
    [InlineData("IES:LM-63-2019\n", 1800)]
    public void has_a_second_factor_that_multiplies_up_to_1995_only(string version, double candelas)
    {
        var text = Diffuse.Replace("IESNA:LM-63-2002\n", version).Replace("1 -1 1 5", "1 -1 2 5").Replace("\n1 1 36", "\n0.9 0.5 36");
        var file = Whole(text);
        Assert.Equal(candelas, file.Distribution.IntensityAt(0, 0), tolerance: 1e-9);
        Assert.Equal(new PhotometricFactors(2, 0.9, 0.5), file.Factors);
        Assert.Equal(version.Contains("2002"), file.Notes.Any(note => note.Contains("was not multiplied with")));
    }

    // 4 ft = 1.2192 m, 0.5 ft = 0.1524 m.
    [Fact]
    public void in_feet_gives_metres()
    {
        var opening = Whole(Diffuse.Replace("1 1 2 0.1 1.2 0", "1 1 1 0.5 4 0")).Distribution.Opening;
        Assert.Equal(1.2192, opening.LengthMetres, tolerance: 1e-12);
        Assert.Equal(0.1524, opening.WidthMetres, tolerance: 1e-12);
    }

    // Two lamps of 2000 lm in a luminaire of about π · 1000 lm: efficiency 0.78.
    [Fact]
    public void with_lamp_lumens_gives_an_efficiency()
    {
        var light = Whole(Diffuse.Replace("\n1 -1 1", "\n2 2000 1")).Distribution;
        Assert.Equal(2, light.LampCount);
        Assert.Equal(2000, light.LampFlux!.Value.Lumens);
        Assert.Equal(light.TotalFlux.Lumens / 4000, light.Efficiency!.Value, tolerance: 1e-12);
    }

    [Fact]
    public void with_tilt_keeps_its_table()
    {
        var tilt = Whole(Diffuse.Replace("TILT=NONE", "TILT=INCLUDE\n1\n3\n0 45 90\n1 0.95 0.9")).Tilt!;
        Assert.Equal(1, tilt.LampGeometry);
        Assert.Equal([0, 45, 90], tilt.Degrees);
        Assert.Equal([1, 0.95, 0.9], tilt.Multipliers);
    }

    [Fact]
    public void with_tilt_elsewhere_says_that_it_was_left_out() =>
        Assert.Contains(Whole(Diffuse.Replace("TILT=NONE", "TILT=lamp.tlt")).Notes, note => note.Contains("\"lamp.tlt\""));

    [Theory]
    [InlineData(1, PhotometricType.C, "0 90", "0 180", DistributionSymmetry.Bilateral)]
    [InlineData(1, PhotometricType.C, "0 90", "90 270", DistributionSymmetry.BilateralAcross)]
    [InlineData(1, PhotometricType.C, "90 180", "0 90", DistributionSymmetry.Quadrant)]
    [InlineData(1, PhotometricType.C, "0 180", "0 360", DistributionSymmetry.None)]
    [InlineData(2, PhotometricType.B, "-90 90", "-90 90", DistributionSymmetry.None)]
    [InlineData(2, PhotometricType.B, "-90 90", "0 90", DistributionSymmetry.Bilateral)]
    [InlineData(3, PhotometricType.A, "0 90", "0 90", DistributionSymmetry.Quadrant)]
    public void of_every_type_and_symmetry_is_known(int number, PhotometricType type, string verticals, string horizontals, DistributionSymmetry symmetry)
    {
        var light = Whole($"IESNA91\nTILT=NONE\n1 1000 1 2 2 {number} 2 0 0 0\n1 1 40\n{verticals}\n{horizontals}\n10 20\n30 40").Distribution;
        Assert.Equal((type, symmetry), (light.Type, light.Symmetry));
        Assert.Equal([30, 40], light.Candelas[1]);
    }
}
