using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Light at points for the whole rated output in each of the model's shapes: what the fitted shares multiply.</summary>
/// <param name="Columns">Strip, tube, file, constant; a value for each point. [µmol m⁻² s⁻¹; the constant in µmol/s]</param>
internal sealed record LightShapes(double[][] Columns)
{
    public const int Strip = 0, Tube = 1, File = 2, Constant = 3, Count = 4;

    public int Points => Columns[Constant].Length;

    /// <summary>Lights all sources in each shape; those with a file have only that one.</summary>
    /// <param name="sources">The lit lamps and luminaires.</param>
    /// <param name="points">Places on the level of the crop.</param>
    /// <param name="box">Surfaces that throw light back; null without.</param>
    /// <param name="shares">What the shapes will be weighed with: those of share zero are left dark; null for all.</param>
    public static LightShapes Of(IReadOnlyList<LightSource> sources, IReadOnlyList<PlanePoint> points, ReflectingCavity? box, double[]? shares = null)
    {
        LightSource[] bare = [.. sources.Where(source => source.Distribution is null)], filed = [.. sources.Where(source => source.Distribution is not null)];
        var output = sources.Sum(source => source.Tube.Output.MicromolesPerSecond);
        double[] In(int shape, LightSource[] seen) => shares?[shape] == 0 ? new double[points.Count] : Light(seen, points, box);
        return new([
            In(Strip, As(bare, TubeEmission.DownFacingStrip)), In(Tube, As(bare, TubeEmission.BareTube)), In(File, filed),
            [.. Enumerable.Repeat(box is null ? output : 0, points.Count)]]);
    }

    /// <summary>The box around a bench; null where surroundings or the size of the bench are not known.</summary>
    public static ReflectingCavity? Box(Surroundings? surroundings, (Length Length, Length Width)? bench) =>
        surroundings is { Height.Metres: > 0 } && bench is { } size ? new(size.Length, size.Width, surroundings.Height, surroundings.Reflectance) : null;

    /// <summary>The shapes weighed with shares, at one point. [µmol m⁻² s⁻¹]</summary>
    public double At(int point, double[] shares) => Columns.Zip(shares, (column, share) => column[point] * share).Sum();

    /// <summary>The mean of a shape over the points.</summary>
    public double Mean(int shape) => Columns[shape].Average();

    public static LightShapes Join(IEnumerable<LightShapes> sets)
    {
        LightShapes[] all = [.. sets];
        return new([.. Enumerable.Range(0, Count).Select(shape => all.SelectMany(set => set.Columns[shape]).ToArray())]);
    }

    private static LightSource[] As(LightSource[] sources, TubeEmission emission) => [.. sources.Select(source => source with { Tube = source.Tube.As(emission) })];

    private static double[] Light(LightSource[] sources, IReadOnlyList<PlanePoint> points, ReflectingCavity? box)
    {
        var reflected = box is null || sources.Length == 0 ? 0 : ShelfLight.Reflected(sources, box).MicromolesPerSquareMetre;
        return [.. LightField.Over(sources, points).Select(light => light.MicromolesPerSquareMetre + reflected)];
    }
}
