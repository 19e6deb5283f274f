using MathNet.Numerics.LinearAlgebra;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>A box of diffuse surfaces: a bench or shelf below, four alike sides, and what is above. Each surface is evenly lit in the model.</summary>
/// <remarks>Exchange of flux between three surfaces, with the exact factor between the two level ones (E-59).</remarks>
public sealed record ReflectingCavity
{
    private const double MostReflectance = 0.99; // a box that absorbs nothing has no answer

    private readonly double _opposite;

    /// <summary>Makes the box.</summary>
    /// <param name="length">Along. [m, above 0]</param>
    /// <param name="width">Across. [m, above 0]</param>
    /// <param name="height">From the base to the top. [m, above 0]</param>
    /// <param name="reflectance">Share of light that each surface throws back. [unitless, 0–0.99]</param>
    /// <exception cref="ArgumentOutOfRangeException">A side of zero, or a reflectance outside.</exception>
    public ReflectingCavity(Length length, Length width, Length height, CavityShare reflectance)
    {
        _opposite = RectangleSource.ExchangeFactor(length, width, height);
        Require.InRange(reflectance.Base, 0, MostReflectance, nameof(reflectance));
        Require.InRange(reflectance.Sides, 0, MostReflectance, nameof(reflectance));
        Require.InRange(reflectance.Top, 0, MostReflectance, nameof(reflectance));
        (Length, Width, Height, Reflectance) = (length, width, height, reflectance);
    }

    /// <summary>Along. [m]</summary>
    public Length Length { get; }

    /// <summary>Across. [m]</summary>
    public Length Width { get; }

    /// <summary>From the base to the top. [m]</summary>
    public Length Height { get; }

    /// <summary>Share of light that each surface throws back. [unitless]</summary>
    public CavityShare Reflectance { get; private init; }

    /// <summary>Cavity ratio 5 h (L + W)/(L W) of CIE 17. [unitless]</summary>
    public double Ratio => 5 * Height.Metres * (Length.Metres + Width.Metres) / (Length.Metres * Width.Metres);

    /// <summary>Share of the light of the top that falls straight on the base. [unitless, 0–1]</summary>
    public double TopToBase => _opposite;

    /// <summary>Reflectance of the open top, looking in: what comes out of the light that goes in. [unitless]</summary>
    public double EffectiveReflectance =>
        (this with { Reflectance = Reflectance with { Top = 0 } }).Spread(new(_opposite, 1 - _opposite, 0)).Top;

    /// <summary>Light on each surface in all, with every reflection, from the light that falls on it first.</summary>
    /// <param name="direct">Where light falls first.</param>
    /// <remarks>φ = φ₀ + Σ F ρ φ. What the surfaces keep, Σ (1 − ρ) φ, is what was sent out.</remarks>
    public CavityShare Spread(CavityShare direct)
    {
        var toLevel = (1 - _opposite) * Length.Metres * Width.Metres / (2 * Height.Metres * (Length.Metres + Width.Metres));
        var (b, s, t) = (Reflectance.Base, Reflectance.Sides, Reflectance.Top);
        var exchange = Matrix<double>.Build.DenseOfRowArrays(
            [1, -s * toLevel, -t * _opposite],
            [-b * (1 - _opposite), 1 - s * (1 - 2 * toLevel), -t * (1 - _opposite)],
            [-b * _opposite, -s * toLevel, 1]);
        var all = exchange.Solve(Vector<double>.Build.Dense([direct.Base, direct.Sides, direct.Top]));
        return new(all[0], all[1], all[2]);
    }
}
