using System.Text;
using CsCheck;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Files.Photometry;
using static RetrofitCalc.Files.Tests.Photometry.PhotometricText;

namespace RetrofitCalc.Files.Tests.Photometry;

public class A_written_photometric_file
{
    private static readonly Gen<double[]> Verticals = Gen.Double[0, 180].Array[2, 20].Select(angles => angles.Distinct().Order().ToArray()).Where(angles => angles.Length > 1);
    private static readonly Gen<double[]> Horizontals = Gen.Double[0, 360].Array[1, 8].Select(angles => angles.Distinct().Order().ToArray());

    private static readonly Gen<PhotometricFile> Files =
        from verticals in Verticals
        from horizontals in Horizontals
        from candelas in Gen.Double[0, 1e5].Array[verticals.Length].Array[horizontals.Length]
        from opening in Gen.Select(Gen.Double[-2, 2], Gen.Double[-2, 2], Gen.Double[-2, 2])
        from watts in Gen.Nullable(Gen.Double[1, 2000])
        from lumens in Gen.Nullable(Gen.Double[1, 50_000])
        from tilt in Gen.Bool
        select new PhotometricFile(Lm63Edition.Of2002, new(PhotometricType.C, verticals, horizontals, candelas)
        {
            Opening = new(opening.Item1, opening.Item2, opening.Item3),
            InputPower = watts is { } w ? Power.FromWatts(w) : null,
            LampFlux = lumens is { } l ? LuminousFlux.FromLumens(l) : null,
            LampCount = 2,
        })
        {
            Labels = [new("TEST", "7"), new("TESTLAB", "Invented"), new("ISSUEDATE", "2026-01-01"), new("MANUFAC", "Invented"), new("OTHER", "TILT=NONE is no label")],
            Tilt = tilt ? new(1, [0, 90], [1, 0.9]) : null,
        };

    [Fact]
    public void reads_back_as_the_same_numbers() => Files.Sample(file =>
    {
        var read = Read(Lm63Writer.Write(file));
        Assert.Empty(read.Problems);
        var (was, now) = (file.Distribution, read.Value!.Distribution);
        Assert.Equal(file.Labels, read.Value.Labels);
        Assert.Equal(was.VerticalDegrees, now.VerticalDegrees);
        Assert.Equal(was.HorizontalDegrees, now.HorizontalDegrees);
        Assert.Equal(was.Candelas, now.Candelas);
        Assert.Equal((was.Opening, was.InputPower, was.LampFlux, was.LampCount), (now.Opening, now.InputPower, now.LampFlux, now.LampCount));
        Assert.Equal(file.Tilt?.Multipliers, read.Value.Tilt?.Multipliers);
    });

    // The factors of the old file, 2 · 0.9 · 0.5, are in the intensities of the new one.
    [Fact]
    public void of_an_old_form_keeps_its_light()
    {
        var old = Whole(Diffuse.Replace("IESNA:LM-63-2002\n", "").Replace("1 -1 1 5", "1 -1 2 5").Replace("\n1 1 36", "\n0.9 0.5 36"));
        var now = Read(Lm63Writer.Write(old)).Value!;
        Assert.Equal(old.Distribution.Candelas, now.Distribution.Candelas);
        Assert.Equal(new PhotometricFactors(1, 1, 1), now.Factors);
        Assert.Empty(now.Notes);
    }

    [Fact]
    public void has_short_lines_and_every_required_keyword()
    {
        var long_text = new PhotometricLabel("OTHER", new string('x', 450) + "\nTILT=NONE");
        var text = Encoding.UTF8.GetString(Lm63Writer.Write(new PhotometricFile(Lm63Edition.Of1986, Whole(Diffuse).Distribution) { Labels = [long_text] }));
        Assert.All(text.Split("\r\n"), line => Assert.True(line.Length <= 256));
        var read = Whole(text);
        Assert.Equal(["OTHER", "MORE", "MORE", "TEST", "TESTLAB", "ISSUEDATE", "MANUFAC"], read.Labels.Select(label => label.Keyword));
        Assert.Empty(read.Notes);
    }
}
