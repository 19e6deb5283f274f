namespace RetrofitCalc.Engine.CropLight;

/// <summary>Light on the surfaces of a cavity, as shares of one amount. [unitless, 0 or more]</summary>
/// <param name="Base">On the bench or shelf.</param>
/// <param name="Sides">On the four sides together.</param>
/// <param name="Top">On what is above.</param>
public readonly record struct CavityShare(double Base, double Sides, double Top)
{
    /// <summary>All of it.</summary>
    public double Total => Base + Sides + Top;
}
