using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>How products of the study give their light, and the files that was taken from.</summary>
internal static class ProductLightCheck
{
    public static void Run(Study study, Problems problems)
    {
        problems.Unique("Distributions", "Photometric file", study.Distributions.Select(file => file.Id));
        problems.Unique("Spectra", "Spectrum", study.Spectra.Select(spectrum => spectrum.Id));
        foreach (var (index, file) in study.Distributions.Index())
            DistributionCheck.Run(file, $"Distributions[{index}]", problems);
        foreach (var (index, spectrum) in study.Spectra.Index())
            SpectrumCheck.Run(spectrum, $"Spectra[{index}]", problems);
        var named = new HashSet<string>();
        foreach (var (index, product) in study.Products.Index())
        {
            if (!named.Add(product.Product))
                problems.Add($"Products[{index}].Product", $"How \"{product.Product}\" gives its light is said twice; say it once.");
            if (product.Distribution is { } id && study.Distributions.All(file => file.Id != id))
                problems.Add($"Products[{index}].Distribution", $"\"{product.Product}\" has photometric file \"{id}\", which the study does not have.");
            ReadingCheck.CheckConversion(product.Conversion, $"Products[{index}].Conversion", problems);
        }
    }
}
