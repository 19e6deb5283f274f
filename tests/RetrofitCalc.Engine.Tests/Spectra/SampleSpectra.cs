using CsCheck;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Files.Spectra;

namespace RetrofitCalc.Engine.Tests.Spectra;

internal static class SampleSpectra
{
    /// <summary>Spectra over 350–850 nm with uneven steps, as instruments have them, and values between 0.1 and 10.</summary>
    public static Gen<SpectralDistribution> Any { get; } =
        Gen.Select(Gen.Double[0.5, 12].Array[60], Gen.Double[0.1, 10].Array[60]).Select((steps, values) =>
        {
            var total = steps.Sum();
            var nm = 350.0;
            var samples = new List<SpectralSample> { SpectralSample.Of(nm, values[0]) };
            for (var i = 0; i < steps.Length; i++)
                samples.Add(SpectralSample.Of(nm += steps[i] * 500 / total, values[i]));
            return Shape(samples);
        });

    public static SpectralDistribution Shape(IEnumerable<SpectralSample> samples, SpectralScale scale = SpectralScale.Relative) =>
        new("Sample", new(samples), scale, new(EvidenceKind.Invented, "made for this test"));

    public static SpectralDistribution Named(string name) => ShippedSpectra.Find(name)!;

    public static SpectrumFigures Figures(SpectralDistribution spectrum) => SpectrumFigures.Of(spectrum, ShippedSpectra.Tables);

    public static SpectrumFigures Figures(string name) => Figures(Named(name));
}
