using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Spectra;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Light.Spectra;

/// <summary>Sentences of the spectra page.</summary>
public static class SpectraText
{
    public static string Title(IReadOnlyList<UsedProduct> products, Study study)
    {
        if (products.Count == 0) return "No lamp is surveyed yet";
        var unknown = products.Count(product => ProductFactor.Of(study, product) is null);
        return unknown switch
        {
            0 => "The lux of a photon is known for every lamp and tube of this study",
            1 => $"The spectrum of {products.First(product => ProductFactor.Of(study, product) is null).Name} is not known",
            _ => $"Spectra of {CountText.Word(unknown).ToLowerInvariant()} products are not known",
        };
    }

    /// <summary>What the values of a file mean, in the words of the page.</summary>
    public static string Unit(SpectrumUnit unit) => unit switch
    {
        SpectrumUnit.Relative => "watts, shape only (relative, or per area or angle)",
        SpectrumUnit.RelativePhotons => "photons, shape only (relative, or per area)",
        SpectrumUnit.WattsPerNanometre => "watts: W/nm of one lamp",
        SpectrumUnit.MilliwattsPerNanometre => "watts: mW/nm of one lamp",
        _ => "photons: µmol/s per nm of one lamp",
    };
}
