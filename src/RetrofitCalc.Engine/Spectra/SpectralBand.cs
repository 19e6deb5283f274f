using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Spectra;

/// <summary>A stretch of wavelengths.</summary>
/// <remarks>Both ends belong to it; ends have no width, so neighbouring bands add up to the whole. The default is empty, at zero.</remarks>
public readonly record struct SpectralBand
{
    /// <summary>Lower end. [nm]</summary>
    public Wavelength From { get; }

    /// <summary>Upper end. [nm]</summary>
    public Wavelength To { get; }

    /// <summary>Makes a band.</summary>
    /// <param name="from">Lower end. [nm]</param>
    /// <param name="to">Upper end, not below the lower. [nm]</param>
    /// <exception cref="ArgumentOutOfRangeException">The upper end lies below the lower.</exception>
    public SpectralBand(Wavelength from, Wavelength to)
    {
        Require.InRange(to.Nanometres, from.Nanometres, double.MaxValue);
        (From, To) = (from, to);
    }

    /// <summary>A band between wavelengths in nanometres.</summary>
    /// <param name="from">Lower end. [nm]</param>
    /// <param name="to">Upper end, not below the lower. [nm]</param>
    /// <exception cref="ArgumentOutOfRangeException">An end is negative, or the upper lies below the lower.</exception>
    public static SpectralBand OfNanometres(double from, double to) => new(Wavelength.FromNanometres(from), Wavelength.FromNanometres(to));

    /// <summary>Width. [nm]</summary>
    public double WidthNanometres => To.Nanometres - From.Nanometres;
}
