using RetrofitCalc.Engine.Quantities;
using static System.Math;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>An evenly bright, diffuse rectangle that faces a parallel level.</summary>
/// <remarks>Siegel and Howell, Thermal Radiation Heat Transfer, configuration factors, from memory; checked against integration (E-52).</remarks>
public static class RectangleSource
{
    /// <summary>Share of the light of a rectangle's emittance that reaches a point under its corner. [unitless, 0–0.25]</summary>
    /// <param name="first">One side. [m]</param>
    /// <param name="second">The other side. [m]</param>
    /// <param name="height">Distance of the planes. [m, above 0]</param>
    /// <exception cref="ArgumentOutOfRangeException">A height of zero.</exception>
    public static double CornerFactor(Length first, Length second, Length height) =>
        Corner(first.Metres, second.Metres, Above(height));

    /// <summary>Photons that reach a point of the level from a rectangle whose middle is above the origin. [µmol m⁻² s⁻¹]</summary>
    /// <param name="length">Side along x. [m, above 0]</param>
    /// <param name="width">Side along y. [m, above 0]</param>
    /// <param name="output">Photons it sends out on its lower side. [µmol/s]</param>
    /// <param name="place">The point, and the height of the rectangle above it. [m, height above 0]</param>
    /// <remarks>E = Φ/A · Σ of the factors of four corners, with sign.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A side or height of zero.</exception>
    public static PhotonFluxDensity At(Length length, Length width, PhotonFlux output, (PlanePoint Point, Length Height) place)
    {
        var emittance = output.MicromolesPerSecond / (Above(length) * Above(width));
        double h = Above(place.Height), x = length.Metres / 2, y = width.Metres / 2;
        var sum = 0.0;
        foreach (var (a, b) in new[] { (x - place.Point.X, y - place.Point.Y), (x - place.Point.X, y + place.Point.Y), (x + place.Point.X, y - place.Point.Y), (x + place.Point.X, y + place.Point.Y) })
            sum += Sign(a) * Sign(b) * Corner(Abs(a), Abs(b), h);
        return PhotonFluxDensity.FromMicromolesPerSquareMetre(Max(0, emittance * sum));
    }

    /// <summary>Share of one rectangle's light that falls on an equal one opposite. [unitless, 0–1]</summary>
    /// <param name="length">One side. [m, above 0]</param>
    /// <param name="width">The other side. [m, above 0]</param>
    /// <param name="apart">Distance of the planes. [m, above 0]</param>
    /// <remarks>Howell, A Catalog of Radiation Heat Transfer Configuration Factors, C-11 family, from memory; F(2,2) = 0.4153 seen (E-52).</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A side or distance of zero.</exception>
    public static double ExchangeFactor(Length length, Length width, Length apart)
    {
        double x = Above(length) / Above(apart), y = Above(width) / apart.Metres, xx = Sqrt(1 + x * x), yy = Sqrt(1 + y * y);
        return 2 / (PI * x * y) * (Log(xx * xx * yy * yy / (1 + x * x + y * y)) / 2
            + x * yy * Atan(x / yy) + y * xx * Atan(y / xx) - x * Atan(x) - y * Atan(y));
    }

    private static double Corner(double first, double second, double height)
    {
        double x = first / height, y = second / height, xx = Sqrt(1 + x * x), yy = Sqrt(1 + y * y);
        return (x / xx * Atan(y / xx) + y / yy * Atan(x / yy)) / (2 * PI);
    }

    private static double Above(Length length) => Require.InRange(length.Metres, double.Epsilon, double.MaxValue, nameof(length));
}
