using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Light lost to dirt on lamps and luminaires (E-68).</summary>
public static class DirtDepreciation
{
    /// <summary>Share of light left, some time after a cleaning. [unitless, 0–1]</summary>
    /// <param name="light">Gives the loss between two cleanings and the time between them.</param>
    /// <param name="yearsSinceCleaning">Time since the last one; beyond the usual time the loss goes on. [years, 0 or more]</param>
    /// <remarks>(1 − loss)^(t/T): the form of the IES dirt depreciation, with exponent 1, from memory.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A negative time.</exception>
    public static double At(AreaLight light, double yearsSinceCleaning) =>
        Math.Pow(1 - light.DirtLoss, Require.NotNegative(yearsSinceCleaning) * 12 / light.CleaningMonths);
}
