using System.Text;
using CsCheck;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Files.Photometry;
using RetrofitCalc.Files.Tests.Studies;
using static RetrofitCalc.Files.Tests.Photometry.PhotometricText;

namespace RetrofitCalc.Files.Tests.Photometry;

// Labels, numbers and ends of file as public descriptions of files in use show them (a parser's note of 1998, a summary of five editions).
public class A_photometric_file_in_use
{
    [Fact]
    public void of_1986_has_free_text_above_its_numbers()
    {
        var file = Whole("Invented lights, test 7\nFour foot strip\nTILT=NONE\n1 -1 1 5 1 1 2 0.1 1.2 0\n1 1 36\n0 22.5 45 67.5 90\n0\n1000 923.88 707.107 382.683 0");
        Assert.Equal(Lm63Edition.Of1986, file.Edition);
        Assert.Equal([new("", "Invented lights, test 7"), new("", "Four foot strip")], file.Labels);
        Assert.Equal("Invented lights, test 7", StudyDistributions.NameIn(file));
    }

    // A maker's name and a date are no report.
    [Fact]
    public void counts_as_tested_only_with_a_test_or_a_laboratory()
    {
        EvidenceKind Kind(string text) => StudyDistributions.Add(SmallStudy.Make(), Whole(text), "Strip").Distributions[^1].Source.Kind;
        Assert.Equal(EvidenceKind.Tested, Kind(Diffuse));
        Assert.Equal(EvidenceKind.Unsourced, Kind(Diffuse.Replace("[TEST] INV-1", "[TEST]", StringComparison.Ordinal).Replace("[TESTLAB] Invented laboratory", "[TESTLAB]", StringComparison.Ordinal)));
    }

    /// <summary>Keywords of a user begin with a line below; blocks hold several luminaires' words; a label goes on under MORE.</summary>
    [Fact]
    public void keeps_every_label_in_its_order()
    {
        var labels = "[LUMCAT] INV-1\n[LUMINAIRE] Strip for shelves\n[_SHELF] third\n[BLOCK]\n[LAMP] Invented tube\n[ENDBLOCK]\n[OTHER] goes\n[MORE] on\n[DATE] 1991-05-01\n";
        var file = Whole(Diffuse.Replace("TILT=NONE", labels + "TILT=NONE"));
        Assert.Equal(
            ["TEST", "TESTLAB", "ISSUEDATE", "MANUFAC", "LUMCAT", "LUMINAIRE", "_SHELF", "BLOCK", "LAMP", "ENDBLOCK", "OTHER", "MORE", "DATE"],
            file.Labels.Select(label => label.Keyword));
        Assert.Equal("Strip for shelves", StudyDistributions.NameIn(file));
        Assert.Empty(file.Notes);
    }

    [Theory]
    [InlineData("tabs", "0 22.5 45 67.5 90", "0\t22.5\t45\t67.5\t90")]
    [InlineData("signs and bare points", "1000 923.88 707.107 382.683 0", "+1000. 923.88 707.107 382.683 .0")]
    [InlineData("powers of ten", "1000 923.88", "1.0E+03 9.2388e2")]
    [InlineData("leading zeros", "0 22.5", "000.0 0022.50")]
    [InlineData("an old end-of-file mark", "382.683 0", "382.683 0\n\u001A")]
    [InlineData("no angle of zero straight down but after a blank", "\n0\n1000", "\n  0  \n  1000")]
    [InlineData("several intensities to a line and a space at its end", "707.107 382.683", "707.107 \n 382.683")]
    public void in_its_numbers_is_the_same(string what, string text, string changed)
    {
        var file = Whole(Diffuse.Replace(text, changed));
        Assert.True(DiffuseCandelas.SequenceEqual(file.Distribution.Candelas[0]), what);
    }

    [Theory]
    [InlineData(new byte[] { 0xEF, 0xBB, 0xBF })]
    [InlineData(new byte[] { })]
    public void may_begin_with_a_byte_order_mark(byte[] mark) =>
        Assert.Equal(Lm63Edition.Of2002, Read([.. mark, .. Encoding.UTF8.GetBytes(Diffuse)]).Value!.Edition);

    [Fact]
    public void in_UTF_16_is_read_too() =>
        Assert.Equal(DiffuseCandelas, Read([0xFF, 0xFE, .. Encoding.Unicode.GetBytes(Diffuse)]).Value!.Distribution.Candelas[0]);

    /// <summary>Planes given from 90 down to 0 are sorted, each with its intensities: 2000 cd belong to plane 90.</summary>
    [Fact]
    public void in_the_order_of_its_planes_is_sorted()
    {
        var light = Whole("IESNA91\nTILT=NONE\n1 -1 1 2 2 1 2 0 0 0\n1 1 40\n0 90\n90 0\n2000 0\n1000 0").Distribution;
        Assert.Equal([0, 90], light.HorizontalDegrees);
        Assert.Equal((1000, 2000), (light.IntensityAt(0, 0), light.IntensityAt(0, 90)));
    }

    /// <summary>Tilt tables of all three lamp positions, longer than the format's own examples.</summary>
    [Theory, InlineData(1), InlineData(2), InlineData(3)]
    public void with_any_position_of_the_lamp_keeps_its_tilt(int geometry) =>
        Assert.Equal(geometry, Whole(Diffuse.Replace("TILT=NONE", $"TILT=INCLUDE\n{geometry}\n4\n0 30 60 90\n1 0.98 0.95 0.9")).Tilt!.LampGeometry);

    [Theory]
    [InlineData("TILT=NONE", "TILT=INCLUDE\n4\n1\n0\n1", "The lamp geometry of the tilt is 4; it must be a whole number, 1 to 3.")]
    [InlineData("TILT=NONE", "TILT=INCLUDE\n1\n1001\n0\n1", "The number of tilt angles is 1001; it must be a whole number, 1 to 1000.")]
    [InlineData("1 1 36", "0 1 36", "The ballast factor is 0; it must be 1E-06 to 1000000.")]
    [InlineData("1 1 36", "1 1 -36", "The input watts is -36; it must be 0 to 1000000000.")]
    [InlineData("2 0.1 1.2 0", "2 0.1 5000 0", "The luminous length is 5000; it must be -1000 to 1000.")]
    [InlineData("1 1 2 0.1", "1 1 3 0.1", "The units is 3; it must be a whole number, 1 to 2.")]
    [InlineData("\n1 -1 1 5", "\n-1 -1 1 5", "The number of lamps is -1; it must be a whole number, 0 to 100000.")]
    [InlineData("1000 923.88", "1000 9,23.88.1", "\"23.88.1\" is not a number")]
    [InlineData("1000 923.88", "1000 0x39B", "\"0x39B\" is not a number")]
    [InlineData("1000 923.88", "1000 ١٢٣", "is not a number")]
    [InlineData("1000 923.88", "1000 1.0D+03", "\"1.0D+03\" is not a number")]
    public void with_impossible_numbers_says_which(string text, string broken, string problem)
    {
        var read = Read(Diffuse.Replace(text, broken));
        Assert.Null(read.Value);
        Assert.Contains(problem, Assert.Single(read.Problems).Message);
    }

    /// <summary>Types A and B have angles below zero and two planes at least; all three types are written and read as the same numbers.</summary>
    [Fact]
    public void of_types_A_and_B_reads_back_as_written() => Gen.Select(
        Gen.Enum<PhotometricType>().Where(type => type != PhotometricType.C), Gen.Double[-90, 90].Array[2, 12], Gen.Double[-90, 90].Array[2, 6]).SelectMany((type, verticals, horizontals) =>
        {
            double[] up = [.. verticals.Distinct().Order()], along = [.. horizontals.Distinct().Order()];
            return Gen.Double[0, 1e5].Array[up.Length].Array[along.Length].Select(candelas => (type, up, along, candelas));
        }).Where(t => t.up.Length > 1 && t.along.Length > 1).Sample(t =>
        {
            var light = new LuminousIntensityDistribution(t.type, t.up, t.along, t.candelas) { InputPower = Power.FromWatts(40) };
            var now = Read(Lm63Writer.Write(new(Lm63Edition.Of2002, light))).Value!.Distribution;
            Assert.Equal(t.type, now.Type);
            Assert.Equal(t.up, now.VerticalDegrees);
            Assert.Equal(t.along, now.HorizontalDegrees);
            Assert.Equal(t.candelas, now.Candelas);
        }, iter: 200);

    [Fact]
    public void of_each_edition_can_be_cut_off_anywhere_without_an_exception()
    {
        foreach (var version in new[] { "", "IESNA91\n", "IESNA:LM-63-1995\n", "IES:LM-63-2019\n" })
            foreach (var whole in new[] { Tilted.Replace("IESNA:LM-63-2002\n", version), version + Floodlight[8..] })
                for (var length = 0; length < whole.Length - 2; length++)
                    Assert.NotEmpty(Read(whole[..length]).Problems);
    }
}
