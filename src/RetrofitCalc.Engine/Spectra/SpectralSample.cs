using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Spectra;

/// <summary>One point of a curve over wavelength.</summary>
/// <param name="At">Where. [nm]</param>
/// <param name="Value">How much, in the unit of the curve. [unit of the curve]</param>
public readonly record struct SpectralSample(Wavelength At, double Value)
{
    /// <summary>A point at a wavelength in nanometres.</summary>
    /// <param name="nanometres">Where. [nm]</param>
    /// <param name="value">How much. [unit of the curve]</param>
    /// <exception cref="ArgumentOutOfRangeException">The wavelength is negative or not a number.</exception>
    public static SpectralSample Of(double nanometres, double value) => new(Wavelength.FromNanometres(nanometres), value);
}
