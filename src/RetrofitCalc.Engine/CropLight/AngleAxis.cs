using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>The angles along one side of a table of intensities.</summary>
internal sealed class AngleAxis
{
    private readonly double[] _degrees;

    public AngleAxis(IEnumerable<double> degrees, (double Low, double High) range, string name)
    {
        _degrees = [.. degrees.Select(angle => Require.InRange(angle, range.Low, range.High, name))];
        if (_degrees.Length == 0 || _degrees.Zip(_degrees.Skip(1)).Any(pair => !(pair.First < pair.Second)))
            throw new ArgumentException("Must hold angles that rise.", name);
    }

    public IReadOnlyList<double> Degrees => _degrees;

    public double First => _degrees[0];

    public double Last => _degrees[^1];

    public double Span => Last - First;

    /// <summary>The two angles around one that lies between the ends, and how far it lies towards the second.</summary>
    public (int Low, int High, double Share) Around(double angle)
    {
        var at = Array.BinarySearch(_degrees, angle);
        if (at >= 0) return (at, at, 0);
        if (~at == 0) return (0, 0, 0);
        if (~at == _degrees.Length) return (_degrees.Length - 1, _degrees.Length - 1, 0);
        return (~at - 1, ~at, (angle - _degrees[~at - 1]) / (_degrees[~at] - _degrees[~at - 1]));
    }
}
