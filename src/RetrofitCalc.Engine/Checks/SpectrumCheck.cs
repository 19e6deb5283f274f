using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>Whether a spectrum taken into the study is one <see cref="SpectralDistribution"/> accepts.</summary>
internal static class SpectrumCheck
{
    private const int MostSamples = 100_000;

    public static void Run(StudySpectrum spectrum, string path, Problems problems)
    {
        if (spectrum.Nanometres.Count is < 2 or > MostSamples)
        {
            problems.Add($"{path}.Nanometres", $"Spectrum \"{spectrum.Name}\" has {spectrum.Nanometres.Count} wavelengths; it must have 2 to {MostSamples}.");
            return;
        }
        foreach (var (index, nm) in spectrum.Nanometres.Index())
            problems.InRange($"{path}.Nanometres[{index}]", $"A wavelength of \"{spectrum.Name}\" (nm)", nm, 100, 10_000);
        ReadingCheck.Rising($"{path}.Nanometres", "Wavelengths", spectrum.Nanometres, problems);
        if (spectrum.Values.Count != spectrum.Nanometres.Count)
            problems.Add($"{path}.Values", $"Spectrum \"{spectrum.Name}\" has {spectrum.Values.Count} values for {spectrum.Nanometres.Count} wavelengths; there must be one for each.");
        foreach (var (index, value) in spectrum.Values.Take(MostSamples).Index())
            problems.NotNegative($"{path}.Values[{index}]", $"A value of spectrum \"{spectrum.Name}\"", value);
        if (spectrum.Values.All(value => value == 0))
            problems.Add($"{path}.Values", $"Spectrum \"{spectrum.Name}\" holds nothing but zeros; it would be dark.");
    }
}
