using System.Text;
using System.Text.Json;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Files.Photometry;

namespace RetrofitCalc.Engine.Tests.Reference;

internal static class Figures_of_photometric_files
{
    [CanopyAnswer("LM-63", "lm63_flux")]
    private static Answers Read(JsonElement i)
    {
        var file = Lm63File.Read(new MemoryStream(Encoding.UTF8.GetBytes(i.GetProperty("file_text").GetString()!)));
        Assert.Empty(file.Problems);
        var light = file.Value!.Distribution;
        return new()
        {
            ["lumens"] = light.TotalFlux.Lumens,
            ["n_vertical"] = light.VerticalDegrees.Count,
            ["n_horizontal"] = light.HorizontalDegrees.Count,
            ["absolute"] = light.LampFlux is null ? 1 : 0,
            ["units"] = light.Opening.LengthMetres / 1.2, // the file says 1.2, of what unit is the question
            ["length_m"] = light.Opening.LengthMetres,
            ["watts"] = light.InputPower!.Value.Watts,
        };
    }

    /// <summary>A diffuse luminaire that sends out the tested flux, with two lamps of half the rated flux each.</summary>
    [CanopyAnswer("fixture efficiency", "ratio")]
    private static Answers Efficiency(JsonElement i)
    {
        double[] angles = [.. Enumerable.Range(0, 91)], candelas = [.. angles.Select(angle => i.Number("a") / Math.PI * Math.Max(0, Math.Cos(angle * Math.PI / 180)))];
        return new LuminousIntensityDistribution(PhotometricType.C, angles, [0], [candelas])
        {
            LampCount = 2, LampFlux = LuminousFlux.FromLumens(i.Number("b") / 2),
        }.Efficiency!.Value;
    }
}
