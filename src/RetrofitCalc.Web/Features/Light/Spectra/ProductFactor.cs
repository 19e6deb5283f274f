using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Spectra;

namespace RetrofitCalc.Web.Features.Light.Spectra;

/// <summary>Lux of a micromole for a product, and how that is known.</summary>
/// <param name="Factor">The factor.</param>
/// <param name="Uncertainty">How far it may be off, either way; null where the sheet does not say.</param>
/// <param name="From">In plain words.</param>
public sealed record ProductFactor(LuxFactor Factor, double? Uncertainty, string From)
{
    /// <summary>Spread of lamps of a family against one shipped spectrum (S-55). [unitless share]</summary>
    public const double OfShipped = 0.07;

    /// <summary>A spectrum measured of the very product: what an array spectrometer repeats; common practice, no source. [unitless share]</summary>
    public const double OfOwn = 0.03;

    /// <summary>The spectrum chosen for it, else a factor chosen for it, else lumens by photons of its sheet; null when none is known.</summary>
    public static ProductFactor? Of(Study study, UsedProduct product)
    {
        var light = ProductLights.Of(study, product.Id);
        if (StudySpectra.Find(study, light.Spectrum) is { } spectrum && FactorOf(spectrum) is { } factor)
            return new(factor, light.Conversion?.Uncertainty ?? UncertaintyOf(study, light.Spectrum!), spectrum.Name);
        if (light.Conversion is { } chosen)
            return new(new(chosen.LuxPerMicromole), chosen.Uncertainty, chosen.Source.Source is { Length: > 0 } source ? source : "unsourced");
        return OfSheet(product) is { } sheet ? new(sheet, null, "lumens over photons of its sheet") : null;
    }

    /// <summary>Lumens over photons of its sheet; null where it gives only one of them.</summary>
    public static LuxFactor? OfSheet(UsedProduct product) =>
        product is { Flux.Lumens: > 0 and var lumens, Photons.MicromolesPerSecond: > 0 and var photons } ? new(lumens / photons) : null;

    /// <summary>The product with a spectrum: its factor goes with it, since the study is computed without the shipped tables.</summary>
    public static Study UseSpectrum(Study study, string product, string id)
    {
        if (StudySpectra.Find(study, id) is not { } spectrum || FactorOf(spectrum) is not { } factor) return study;
        var source = spectrum.Provenance with { Kind = EvidenceKind.Computed, Source = $"spectrum {spectrum.Name}: {spectrum.Provenance.Source}" };
        return ProductLights.Change(study, product, light => light with { Spectrum = id, Conversion = new(factor.LuxPerMicromole, UncertaintyOf(study, id), source) });
    }

    private static double UncertaintyOf(Study study, string id) => study.Spectra.Any(own => own.Id == id) ? OfOwn : OfShipped;

    /// <summary>Null where the samples do not reach over 400–700 nm, or hold no light.</summary>
    private static LuxFactor? FactorOf(SpectralDistribution spectrum)
    {
        if (!spectrum.Curve.Covers(PlantBands.Par)) return null;
        var (lumens, photons) = (spectrum.Light(ShippedSpectra.Tables), spectrum.Photons(PlantBands.Par));
        return lumens > 0 && photons > 0 ? new(lumens / photons) : null;
    }

    public static Study UseFamily(Study study, string product, NamedLuxFactor family) => ProductLights.Change(study, product, light => light with
    {
        Spectrum = null,
        Conversion = new(family.Factor.LuxPerMicromole, family.Uncertainty, family.Provenance with { Source = $"{family.Name}: {family.Provenance.Source}" }),
    });

    public static Study UseSheet(Study study, string product) => ProductLights.Change(study, product, light => light with { Spectrum = null, Conversion = null });

    /// <summary>A spectrum gone from the study: products that had it fall back to their sheets.</summary>
    public static Study RemoveSpectrum(Study study, string id) =>
        study.Products.Where(light => light.Spectrum == id).Aggregate(study, (left, light) => UseSheet(left, light.Product)) with { Spectra = [.. study.Spectra.Where(own => own.Id != id)] };

    /// <summary>Photons by the sheet, else by its lumens and this factor.</summary>
    public static PhotonFlux? Photons(UsedProduct product, ProductFactor? factor) =>
        product.Photons ?? (product.Flux is { } lumens && factor is not null ? factor.Factor.ToPhotonFlux(lumens) : null);
}
