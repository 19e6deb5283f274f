using System.Text.Json;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Reference;

internal static class Figures_of_tubes_over_a_bench
{
    /// <summary>Flux of a metre by its greatest intensity, both from light close below the middle of a very long tube: E = π/2 · I/h.</summary>
    [CanopyAnswer("geometry", "line_flux_ratio")]
    private static Answers FluxByIntensity(JsonElement i)
    {
        const double height = 0.01, fluxPerMetre = 1;
        var light = Tube(TubeEmission.BareTube, 100, 100 * fluxPerMetre, height).At(default).MicromolesPerSquareMetre;
        return fluxPerMetre / (light * height * 2 / Math.PI);
    }

    [CanopyAnswer("geometry", "infinite_line")]
    private static Answers EndlessLine(JsonElement i) =>
        LightField.BelowEndlessLine(Flux(i.Number("flux_per_m")), Metres(i.Number("height"))).MicromolesPerSquareMetre;

    [CanopyAnswer("geometry", "aspect_factor")]
    private static Answers Aspect(JsonElement i)
    {
        var line = Enum.Parse<AxialClass>(i.GetProperty("class").GetString()!);
        var angle = i.Number("angle_deg") * Math.PI / 180;
        return new() { ["parallel"] = AspectFactors.Parallel(line, angle), ["perpendicular"] = AspectFactors.Perpendicular(line, angle) };
    }

    [CanopyAnswer("geometry", "strip_point")]
    private static Answers Strip(JsonElement i) => AtPoint(i, TubeEmission.DownFacingStrip);

    [CanopyAnswer("geometry", "tube_point")]
    private static Answers Bare(JsonElement i) => AtPoint(i, TubeEmission.BareTube);

    /// <summary>All light from one point: a diffuse flat source gives Φ/π straight below at 1 m.</summary>
    [CanopyAnswer("geometry", "inverse_square_ratio")]
    private static Answers AgainstPoint(JsonElement i)
    {
        var height = i.Number("h_over_L");
        return Tube(TubeEmission.DownFacingStrip, 1, Math.PI, height).At(default).MicromolesPerSquareMetre * height * height;
    }

    [CanopyAnswer("geometry", "corner_config_factor")]
    private static Answers Corner(JsonElement i) =>
        RectangleSource.CornerFactor(Metres(i.Number("a")), Metres(i.Number("b")), Metres(i.Number("h")));

    [CanopyAnswer("geometry", "rect_point")]
    private static Answers Rectangle(JsonElement i) => RectangleSource.At(
        Metres(i.Number("length")), Metres(i.Number("width")), Flux(i.Number("ppf")), (Point(i), Metres(i.Number("h")))).MicromolesPerSquareMetre;

    [CanopyAnswer("geometry", "parallel_rect_factor")]
    private static Answers Exchange(JsonElement i) => RectangleSource.ExchangeFactor(Metres(i.Number("X")), Metres(i.Number("Y")), Metres(1));

    [CanopyAnswer("height prediction", "strip_centre_scale")]
    private static Answers OtherHeight(JsonElement i)
    {
        var (read, wanted) = (At("h1"), At("h2"));
        return i.Number("E1") * (wanted / read);
        PhotonFluxDensity At(string height) => Tube(TubeEmission.DownFacingStrip, i.Number("length"), 1, i.Number(height)).At(default);
    }

    [CanopyAnswer("grid", "strip_grid_stats")]
    private static Answers Grid(JsonElement i)
    {
        PlacedTube[] tubes = [.. i.GetProperty("tube_y").EnumerateArray().Select(y =>
            Tube(TubeEmission.DownFacingStrip, i.Number("tube_length"), i.Number("ppf_each"), i.Number("h")) with { Centre = new(0, y.GetDouble()) })];
        var (xs, ys) = (Centres(i, 0), Centres(i, 1));
        var light = LightField.Over(tubes, ys.SelectMany(y => xs.Select(x => new PlanePoint(x, y))));
        var found = LightStatistics.Of(light, AreaWeights.OfCells(light.Count));
        return new()
        {
            ["mean"] = found.Mean.MicromolesPerSquareMetre,
            ["min"] = found.Minimum.MicromolesPerSquareMetre,
            ["max"] = found.Maximum.MicromolesPerSquareMetre,
            ["min_avg"] = found.MinimumToMean!.Value,
            ["min_max"] = found.MinimumToMaximum!.Value,
            ["cv"] = found.CoefficientOfVariation!.Value,
            ["fraction_at_or_above"] = found.ShareAtOrAbove(PhotonFluxDensity.FromMicromolesPerSquareMetre(i.Number("threshold"))),
        };
    }

    private static double[] Centres(JsonElement i, int axis)
    {
        var (side, count) = (i.GetProperty("bench")[axis].GetDouble(), i.GetProperty("cells")[axis].GetInt32());
        return [.. Enumerable.Range(0, count).Select(cell => side * ((cell + 0.5) / count - 0.5))];
    }

    private static Answers AtPoint(JsonElement i, TubeEmission emission) =>
        Tube(emission, i.Number("length"), i.Number("ppf"), i.Number("h")).At(Point(i)).MicromolesPerSquareMetre;

    private static PlacedTube Tube(TubeEmission emission, double length, double flux, double height) =>
        new(emission, Metres(length), Flux(flux), Metres(height));

    private static PlanePoint Point(JsonElement i) => new(i.Number("x"), i.Number("y"));

    private static PhotonFlux Flux(double value) => PhotonFlux.FromMicromolesPerSecond(value);

    private static Length Metres(double value) => Length.FromMetres(value);
}
