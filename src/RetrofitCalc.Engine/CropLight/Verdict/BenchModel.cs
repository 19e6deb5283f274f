using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Light of each line at the places of the best readings, for its whole rated output (E-78).</summary>
/// <remarks>
/// With a layout: the fitted model, times what each reading says over what the model says there. Without one: what was read, shared out by the
/// photons each line sends out.
/// </remarks>
internal sealed class BenchModel
{
    private readonly PresentBench _bench;
    private readonly FittedLight? _newBodies;
    private readonly IReadOnlyList<PlanePoint> _points;
    private readonly object _places;
    private readonly double[] _read;
    private readonly double[] _local;

    /// <summary>Readies the model for readings.</summary>
    /// <param name="bench">The bench.</param>
    /// <param name="read">The readings whose places count.</param>
    /// <param name="points">Other places, such as those of a map, where readings correct nothing; null for those of the readings.</param>
    public BenchModel(PresentBench bench, MeasuredLight read, IReadOnlyList<PlanePoint>? points = null)
    {
        (_bench, Read) = (bench, read);
        _places = points ?? (object)read;
        _points = points ?? [.. read.Readings.Select(reading => reading.Point)];
        _read = [.. read.Readings.Select(reading => reading.Light.MicromolesPerSquareMetre)];
        _newBodies = bench.Fit?.InNewBodies();
        _local = [.. Enumerable.Repeat(1.0, _points.Count)];
        if (bench.Fit is not null && points is null)
            _local = [.. ModelAsRead().Zip(_read, (model, light) => model > 0 ? light / model : 1)];
    }

    /// <summary>The readings.</summary>
    public MeasuredLight Read { get; }

    /// <summary>Number of places. [count]</summary>
    public int Places => _points.Count;

    /// <summary>Whether light with a line hung in a way can be told; without a layout only as it hangs now.</summary>
    /// <param name="line">The line.</param>
    /// <param name="hung">How it hangs.</param>
    public bool Reaches(FittedLine line, Hanging hung) => _bench.Fit?.Reaches(hung.Height) ?? hung == new Hanging(PresentBench.HeightOf(line, Read));

    /// <summary>Light of one line, before wear, dirt and dimming; null when its photons are not known. [µmol m⁻² s⁻¹]</summary>
    /// <param name="line">The line and what is fitted.</param>
    /// <param name="present">The same line as it is today.</param>
    /// <param name="hung">How it hangs, within reach.</param>
    /// <param name="step">Name of the lit step; null for all lamps.</param>
    public double[]? Of(FittedLine line, FittedLine present, Hanging hung, string? step)
    {
        if (_bench.Fit is null)
            return ByPhotons(line, step);
        var light = Cached(line, present, hung, step);
        return light is null || line.Fitting is LuminaireFitting ? light : [.. light.Zip(_local, (model, local) => model * local)];
    }

    private double[]? Cached(FittedLine line, FittedLine present, Hanging hung, string? step)
    {
        var key = new LitLine(_places, line.Line.Id, line.Fitting, line.Luminaires, hung, step);
        if (!_bench.Known.TryGetValue(key, out var light))
        {
            if (_bench.Sources.Of(line, present, step) is not { } source)
                return null;
            var sources = BenchLayout.Sources(hung.Over(_bench.Light, line.Line.Id), new(new Dictionary<string, FittedSource> { [line.Line.Id] = source }), hung.Height, step);
            var fit = line.Fitting is LuminaireFitting ? _newBodies! : _bench.Fit!;
            _bench.Known[key] = light = [.. fit.Over(sources, hung.Height, _points).Select(each => each.MicromolesPerSquareMetre)];
        }
        return light;
    }

    /// <summary>What was read, times the line's photons over all that were lit then.</summary>
    private double[]? ByPhotons(FittedLine line, string? step)
    {
        var asRead = _bench.Lines.Sum(each => _bench.Output(each, Read.Set.LitStep) * _bench.Ageing[each.Line.Id].At(0));
        return _bench.Output(line, step) is { } output && asRead > 0 ? [.. _read.Select(light => light * output / asRead.Value)] : null;
    }

    private IEnumerable<double> ModelAsRead()
    {
        var sum = new double[_points.Count];
        foreach (var line in _bench.Lines)
            foreach (var (at, light) in Cached(line, line, new(Read.Set.Height), Read.Set.LitStep)!.Index())
                sum[at] += light * _bench.Ageing[line.Line.Id].At(0);
        return sum;
    }
}
