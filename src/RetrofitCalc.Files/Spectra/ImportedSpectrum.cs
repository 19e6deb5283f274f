using RetrofitCalc.Engine.Spectra;

namespace RetrofitCalc.Files.Spectra;

/// <summary>A spectrum from a file.</summary>
/// <param name="Spectrum">On the watt basis, whatever the file had.</param>
/// <param name="Notes">What was changed or set aside in reading.</param>
public sealed record ImportedSpectrum(SpectralDistribution Spectrum, IReadOnlyList<string> Notes);
