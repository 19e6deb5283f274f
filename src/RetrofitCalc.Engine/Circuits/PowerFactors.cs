namespace RetrofitCalc.Engine.Circuits;

/// <summary>True power factor from what a sheet or an instrument gives (E-30).</summary>
public static class PowerFactors
{
    /// <summary>From the distortion of the current: displacement factor / √(1 + THD²). [unitless, 0–1]</summary>
    /// <param name="distortion">Total harmonic distortion of the current, of its fundamental. [unitless, 0 or more]</param>
    /// <param name="displacement">Cosine of the angle between voltage and fundamental current. [unitless, 0–1]</param>
    /// <remarks>Definition of true power factor. A second definition of distortion, on the whole current, gives other figures.</remarks>
    public static double FromDistortion(double distortion, double displacement = 1) => displacement / Math.Sqrt(1 + distortion * distortion);

    /// <summary>From a reading of power and current: W / (V · A), never above 1. [unitless, 0–1]</summary>
    /// <param name="watts">Input power. [W]</param>
    /// <param name="volts">Supply voltage. [V]</param>
    /// <param name="amperes">Current. [A]</param>
    /// <remarks>Definition; two readings a little apart may give more than 1.</remarks>
    public static double FromReading(double watts, double volts, double amperes) => Math.Min(1, watts / (volts * amperes));
}
