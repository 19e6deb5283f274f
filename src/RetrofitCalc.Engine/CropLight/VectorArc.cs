using System.Numerics;
using static System.Math;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Angles of several directions at a time.</summary>
internal static class VectorArc
{
    private static readonly double EighthOfTurn = Tan(PI / 8);

    /// <summary>Angle of a direction from the first axis, as Math.Atan2 has it. [rad, 0 to π]</summary>
    /// <param name="q">Along the second axis; more than 0.</param>
    /// <param name="p">Along the first axis.</param>
    /// <remarks>Right to some units of the last place.</remarks>
    public static Vector<double> Of(Vector<double> q, Vector<double> p)
    {
        var flat = Vector.Abs(p);
        Vector<double> least = Vector.Min(q, flat), most = Vector.Max(q, flat);
        var steep = Vector.GreaterThan(least, most * EighthOfTurn); // above 22.5°: seen from 45°
        var t = Vector.ConditionalSelect(steep, least - most, least) / Vector.ConditionalSelect(steep, least + most, most);
        var angle = Vector.MultiplyAddEstimate(t, Ratio(t * t), Vector.ConditionalSelect(steep, new Vector<double>(PI / 4), Vector<double>.Zero));
        angle = Vector.ConditionalSelect(Vector.GreaterThan(q, flat), new Vector<double>(PI / 2) - angle, angle);
        return Vector.ConditionalSelect(Vector.LessThan(p, Vector<double>.Zero), new Vector<double>(PI) - angle, angle);
    }

    /// <summary>atan(t)/t as a polynomial of t², for t up to tan(π/8).</summary>
    /// <remarks>Through its values at twelve Chebyshev nodes, worked out to 60 digits; off by less than 1e-17.</remarks>
    private static Vector<double> Ratio(Vector<double> square)
    {
        var sum = new Vector<double>(-0.017803896394812564);
        sum = Vector.MultiplyAddEstimate(sum, square, new(0.03796390316111083));
        sum = Vector.MultiplyAddEstimate(sum, square, new(-0.05035049795312439));
        sum = Vector.MultiplyAddEstimate(sum, square, new(0.05846866752275139));
        sum = Vector.MultiplyAddEstimate(sum, square, new(-0.06662950246036792));
        sum = Vector.MultiplyAddEstimate(sum, square, new(0.07692045194561481));
        sum = Vector.MultiplyAddEstimate(sum, square, new(-0.09090896801472813));
        sum = Vector.MultiplyAddEstimate(sum, square, new(0.11111110744657099));
        sum = Vector.MultiplyAddEstimate(sum, square, new(-0.14285714279244968));
        sum = Vector.MultiplyAddEstimate(sum, square, new(0.19999999999940837));
        sum = Vector.MultiplyAddEstimate(sum, square, new(-0.3333333333333312));
        return Vector.MultiplyAddEstimate(sum, square, Vector<double>.One);
    }
}
