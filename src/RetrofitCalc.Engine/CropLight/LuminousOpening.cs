namespace RetrofitCalc.Engine.CropLight;

/// <summary>The luminous part of a luminaire, as a photometric file gives it: zero for none, below zero for a rounded side.</summary>
/// <param name="WidthMetres">Across. [m]</param>
/// <param name="LengthMetres">Along. [m]</param>
/// <param name="HeightMetres">Upright. [m]</param>
public readonly record struct LuminousOpening(double WidthMetres, double LengthMetres, double HeightMetres)
{
    /// <summary>Whether some side is rounded, as of a disc, a sphere or an upright cylinder.</summary>
    public bool Rounded => WidthMetres < 0 || LengthMetres < 0 || HeightMetres < 0;
}
