using RetrofitCalc.Engine.CropLight;

namespace RetrofitCalc.Web.Features.Light.Layout.Photometry;

/// <summary>Intensity around a luminaire of type C in two upright planes, in the units of a drawing: down is down.</summary>
public sealed record PolarPlot
{
    public const double Size = 340, Radius = 140, Middle = Size / 2;
    private const double StepDegrees = 2.5;

    /// <summary>The plane along the luminaire, left and right, as the points of a line.</summary>
    public required IReadOnlyList<(double X, double Y)> Along { get; init; }

    /// <summary>The plane across it.</summary>
    public required IReadOnlyList<(double X, double Y)> Across { get; init; }

    /// <summary>Rings by their intensity. [cd]</summary>
    public required IReadOnlyList<double> Rings { get; init; }

    /// <summary>Intensity at the edge of the drawing. [cd]</summary>
    public required double Highest { get; init; }

    public static PolarPlot? Of(LuminousIntensityDistribution light)
    {
        var highest = light.Candelas.SelectMany(plane => plane).Max();
        if (light.Type != PhotometricType.C || highest <= 0) return null;
        var step = Round(highest / 3);
        IReadOnlyList<double> rings = [.. Enumerable.Range(1, (int)Math.Floor(highest / step + 1e-9)).Select(i => i * step)];
        return new() { Rings = rings, Highest = highest, Along = Plane(light, 0, highest), Across = Plane(light, 90, highest) };
    }

    public double RadiusOf(double candelas) => candelas / Highest * Radius;

    /// <summary>From straight up on the left, down and around to straight up on the right.</summary>
    private static IReadOnlyList<(double X, double Y)> Plane(LuminousIntensityDistribution light, double horizontal, double highest)
    {
        var points = new List<(double, double)>();
        for (var angle = -180.0; angle <= 180; angle += StepDegrees)
        {
            var intensity = light.IntensityAt(Math.Abs(angle), angle < 0 ? horizontal + 180 : horizontal) / highest * Radius;
            var (sine, cosine) = Math.SinCos(angle * Math.PI / 180);
            points.Add((Middle + intensity * sine, Middle + intensity * cosine));
        }
        return points;
    }

    private static double Round(double value)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(value)));
        return new[] { 1, 2, 2.5, 5, 10 }.First(round => round * power >= value * (1 - 1e-9)) * power;
    }
}
