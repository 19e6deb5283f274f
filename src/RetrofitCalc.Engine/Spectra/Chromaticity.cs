namespace RetrofitCalc.Engine.Spectra;

/// <summary>Tristimulus values of the CIE 1931 observer. [relative]</summary>
internal readonly record struct Tristimulus(double X, double Y, double Z)
{
    public double Sum => X + Y + Z;
}

/// <summary>Where a colour lies, its brightness aside (E-45).</summary>
/// <param name="X">CIE 1931 x = X / (X + Y + Z). [unitless, 0–1]</param>
/// <param name="Y">CIE 1931 y = Y / (X + Y + Z). [unitless, 0–1]</param>
public readonly record struct Chromaticity(double X, double Y)
{
    /// <summary>u of the CIE 1960 diagram: 4x / (−2x + 12y + 3). [unitless]</summary>
    public double U => 4 * X / (-2 * X + 12 * Y + 3);

    /// <summary>v of the CIE 1960 diagram: 6y / (−2x + 12y + 3). [unitless]</summary>
    public double V => 6 * Y / (-2 * X + 12 * Y + 3);

    /// <summary>Distance in the CIE 1960 diagram. [unitless]</summary>
    /// <param name="other">The other colour.</param>
    public double DistanceTo(Chromaticity other) => Math.Sqrt((U - other.U) * (U - other.U) + (V - other.V) * (V - other.V));

    internal static Chromaticity Of(Tristimulus colour) => new(colour.X / colour.Sum, colour.Y / colour.Sum);
}
