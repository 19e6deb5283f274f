using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Spectra;
using RetrofitCalc.Reports;
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

    /// <summary>Products whose spectrum and sheet disagree by more than lamps of a family do.</summary>
    public static IEnumerable<string> Disagreements(IReadOnlyList<UsedProduct> products, Study study, QuantityText text) =>
        from product in products
        let sheet = ProductFactor.OfSheet(product)
        let chosen = ProductFactor.Of(study, product)
        where sheet is not null && Math.Abs(chosen!.Factor.LuxPerMicromole / sheet.LuxPerMicromole - 1) > ProductFactor.OfShipped
        select $"{product.Name}: its sheet gives {text.Number(sheet.LuxPerMicromole, 1)} lx for one µmol, {chosen.From} {text.Number(chosen.Factor.LuxPerMicromole, 1)}. Photons are taken from the sheet where it gives them; is it the right spectrum?";

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
