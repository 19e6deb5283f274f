using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Explains readings by the lamps over the bench (E-62).</summary>
public static class LightModel
{
    private const double OtherHeight = 1.1; // heights a tenth apart tell shapes apart; common practice, no source
    private const double DarkShare = 0.1;
    private const int FewReadings = 3;

    /// <summary>Finds which shares of the rated output explain the readings best.</summary>
    /// <param name="sets">Sets of readings, each with the lamps that were lit over it.</param>
    /// <param name="surroundings">Surfaces that throw light back; null where not known: then an even light that goes with the output stands for them.</param>
    /// <remarks>
    /// Least squares of (model − read) / read with shares of zero or more. A reading below a tenth of its set's mean is weighed as if it were that tenth.
    /// Readings that do not fit those around them (<see cref="MeasuredLight.OutOfLine"/>) are left out: weighed by their own size, one in the shade of a
    /// hand would count most. Readings at one height do not tell a strip from a bare tube: the one that fits better is taken, and <see cref="FittedLight.Determined"/> says so.
    /// </remarks>
    /// <exception cref="ArgumentException">No sets, or no light from any lamp at any reading.</exception>
    public static FittedLight Fit(IReadOnlyList<(MeasuredLight Measured, IReadOnlyList<LightSource> Sources)> sets, Surroundings? surroundings)
    {
        if (sets.Count == 0) throw new ArgumentException("Must hold a set of readings.", nameof(sets));
        var shapes = LightShapes.Join(sets.Select(set => LightShapes.Of(
            set.Sources, [.. set.Measured.Readings.Select(reading => reading.Point)], LightShapes.Box(surroundings, set.Measured.Bench))));
        double[] read = [.. sets.SelectMany(set => set.Measured.Readings).Select(reading => reading.Light.MicromolesPerSquareMetre)];
        double[] size = [.. sets.SelectMany(set => Sizes(set.Measured))];
        double[][] scaled = [.. shapes.Columns.Select(column => column.Zip(size, (light, by) => light / by).ToArray())];
        var (low, high) = (sets.Min(set => set.Measured.Set.Height), sets.Max(set => set.Measured.Set.Height));
        var emission = Emission(sets.SelectMany(set => set.Sources));
        var oneHeight = high / low < OtherHeight;
        int[] used = [.. sets.SelectMany(set => set.Measured.Readings.Select(reading => !set.Measured.OutOfLine.Contains(reading.Index))).Index().Where(each => each.Item).Select(each => each.Index)];
        double[] Used(double[] values) => [.. used.Select(at => values[at])];
        var fit = NonNegativeFit.Best([.. scaled.Select(Used)], Used([.. read.Zip(size, (light, by) => light / by)]), Choices(oneHeight, used.Length, emission))
            ?? throw new ArgumentException("Must hold lamps whose light reaches the readings.", nameof(sets));
        return new(fit, emission, (low, high))
        {
            Residuals = [.. read.Select((light, at) => (shapes.At(at, fit.Shares) - light) / size[at])],
            LeftOut = [.. Enumerable.Range(0, read.Length).Except(used)],
            Box = LightShapes.Box(surroundings, sets.Select(set => set.Measured.Bench).FirstOrDefault(bench => bench is not null)),
            Uncertainty = sets.Max(set => set.Measured.Uncertainty),
            OneHeight = oneHeight,
        };
    }

    private static IEnumerable<double> Sizes(MeasuredLight measured)
    {
        var mean = measured.Statistics.Mean.MicromolesPerSquareMetre;
        var least = mean > 0 ? DarkShare * mean : 1; // in the dark nothing is left to weigh by
        return measured.Readings.Select(reading => Math.Max(least, reading.Light.MicromolesPerSquareMetre));
    }

    /// <summary>Choices of shapes that the readings can tell apart, the lamps' own shape first; never the constant alone.</summary>
    private static IEnumerable<int[]> Choices(bool oneHeight, int readings, TubeEmission emission)
    {
        var (own, other) = emission == TubeEmission.BareTube ? (LightShapes.Tube, LightShapes.Strip) : (LightShapes.Strip, LightShapes.Tube);
        int[][] direct = readings < FewReadings ? [[own], []] : oneHeight ? [[own], [other], []] : [[own], [other], [own, other], []];
        return from bare in direct
               from filed in (int[][])[[], [LightShapes.File]]
               where bare.Length + filed.Length > 0
               from constant in readings < FewReadings ? (int[][])[[]] : [[], [LightShapes.Constant]]
               select (int[])[.. bare, .. filed, .. constant];
    }

    private static TubeEmission Emission(IEnumerable<LightSource> sources)
    {
        double bare = 0, strip = 0;
        foreach (var tube in sources.Where(source => source.Distribution is null).Select(source => source.Tube))
            if (tube.Emission == TubeEmission.BareTube) bare += tube.Output.MicromolesPerSecond;
            else strip += tube.Output.MicromolesPerSecond;
        return bare > strip ? TubeEmission.BareTube : TubeEmission.DownFacingStrip;
    }
}
