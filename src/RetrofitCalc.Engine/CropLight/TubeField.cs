using System.Numerics;
using RetrofitCalc.Engine.Quantities;
using static System.Math;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Direct light of many tubes at many points: what <see cref="PlacedTube.At"/> says, several points at a time (E-63).</summary>
/// <remarks>
/// Both ends of a tube are taken together: with a, b the distances along it from the point to its ends and L = a − b, p = ρ² + a b, q = ρ L,
/// the difference of G is ½ (atan2(q, p) + q (ρ² − a b)/(p² + q²)): one arc, and nothing is lost far away where two arcs are nearly the same.
/// </remarks>
internal sealed class TubeField
{
    private readonly Line[] _strips;
    private readonly Line[] _bare;

    public TubeField(IEnumerable<PlacedTube> tubes)
    {
        var kinds = tubes.ToLookup(tube => tube.Emission == TubeEmission.BareTube, tube => new Line(tube));
        (_strips, _bare) = ([.. kinds[false]], [.. kinds[true]]);
    }

    /// <summary>Light at each point. [µmol m⁻² s⁻¹]</summary>
    public PhotonFluxDensity[] Over(PlanePoint[] points)
    {
        var light = new PhotonFluxDensity[points.Length];
        Span<double> x = stackalloc double[Vector<double>.Count], y = stackalloc double[Vector<double>.Count], sum = stackalloc double[Vector<double>.Count];
        for (var first = 0; first < points.Length; first += x.Length)
        {
            for (var lane = 0; lane < x.Length; lane++) (x[lane], y[lane]) = points[Min(first + lane, points.Length - 1)]; // the last group is filled up
            At(new(x), new(y)).CopyTo(sum);
            for (var lane = 0; lane < x.Length && first + lane < light.Length; lane++)
                light[first + lane] = PhotonFluxDensity.FromMicromolesPerSquareMetre(sum[lane]);
        }
        return light;
    }

    /// <summary>Light at each point times the area it stands for, all together. [µmol/s]</summary>
    /// <param name="points">Places, in whole groups.</param>
    /// <param name="areas">Area of each. [m²]</param>
    public double On(PointLanes points, double[] areas)
    {
        var sum = Vector<double>.Zero;
        for (var group = 0; group < points.Groups; group++)
            sum += At(points.X(group), points.Y(group)) * new Vector<double>(areas, group * Vector<double>.Count);
        return Vector.Sum(sum);
    }

    private Vector<double> At(Vector<double> x, Vector<double> y)
    {
        Vector<double> strips = Vector<double>.Zero, bare = Vector<double>.Zero;
        foreach (ref readonly var line in _strips.AsSpan()) strips += line.Strip(x, y);
        foreach (ref readonly var line in _bare.AsSpan()) bare += line.Bare(x, y);
        return strips + bare;
    }

    /// <summary>A tube with all that does not depend on the point.</summary>
    private readonly struct Line
    {
        private readonly double _x, _y, _sine, _cosine, _half, _squareHeight, _facingDown, _facingAside, _amount;

        public Line(PlacedTube tube)
        {
            (_x, _y) = tube.Centre;
            (_sine, _cosine) = SinCos(tube.AxisDegrees * PI / 180);
            var (tiltSine, tiltCosine) = SinCos(tube.TiltDegrees * PI / 180);
            var height = tube.Height.Metres;
            (_half, _squareHeight, _facingDown, _facingAside) = (tube.Length.Metres / 2, height * height, height * tiltCosine, tiltSine);
            var amount = tube.Output.MicromolesPerSecond / (PI * tube.Length.Metres) * height / 2;
            _amount = tube.Emission == TubeEmission.BareTube ? amount / PI : amount;
        }

        /// <summary>Φ/(πL) · h (h cos τ + y sin τ)/ρ³ · G, nothing behind it.</summary>
        public Vector<double> Strip(Vector<double> x, Vector<double> y)
        {
            var (along, across) = Beside(x, y);
            var square = Vector.MultiplyAddEstimate(across, across, new(_squareHeight));
            var facing = Vector.Max(Vector<double>.Zero, Vector.MultiplyAddEstimate(new(_facingAside), across, new(_facingDown)));
            var away = Vector.SquareRoot(square);
            return facing * _amount * Seen(along, square, away, square * away);
        }

        /// <summary>Φ/(π²L) · h/ρ² · G.</summary>
        public Vector<double> Bare(Vector<double> x, Vector<double> y)
        {
            var (along, across) = Beside(x, y);
            var square = Vector.MultiplyAddEstimate(across, across, new(_squareHeight));
            return _amount * Seen(along, square, Vector.SquareRoot(square), square);
        }

        private (Vector<double> Along, Vector<double> Across) Beside(Vector<double> x, Vector<double> y)
        {
            Vector<double> east = x - new Vector<double>(_x), north = y - new Vector<double>(_y);
            return (east * _cosine + north * _sine, north * _cosine - east * _sine);
        }

        /// <summary>Twice the difference of G between both ends, over a divisor.</summary>
        private Vector<double> Seen(Vector<double> along, Vector<double> square, Vector<double> away, Vector<double> by)
        {
            var ends = along * along - new Vector<double>(_half * _half); // a · b
            Vector<double> p = square + ends, q = away * (2 * _half), both = p * p + q * q;
            return Vector.MultiplyAddEstimate(VectorArc.Of(q, p), both, q * (square - ends)) / (both * by);
        }
    }
}
