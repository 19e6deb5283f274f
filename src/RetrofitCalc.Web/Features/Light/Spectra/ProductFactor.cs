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
        if (light.Conversion is { } chosen)
            return new(new(chosen.LuxPerMicromole), chosen.Uncertainty, light.Spectrum is { } id ? StudySpectra.Find(study, id)?.Name ?? id : chosen.Source.Source is { Length: > 0 } source ? source : "unsourced");
        return product is { Flux.Lumens: > 0 and var lumens, Photons.MicromolesPerSecond: > 0 and var photons }
            ? new(new(lumens / photons), null, "lumens over photons of its sheet")
            : null;
    }

    /// <summary>The product with a spectrum: its factor goes with it, since the study is computed without the shipped tables.</summary>
    public static Study UseSpectrum(Study study, string product, string id)
    {
        if (StudySpectra.Find(study, id) is not { } spectrum || SpectrumFigures.Of(spectrum, ShippedSpectra.Tables).Lux is not { } factor) return study;
        var own = study.Spectra.Any(taken => taken.Id == id);
        var source = spectrum.Provenance with { Kind = EvidenceKind.Computed, Source = $"spectrum {spectrum.Name}: {spectrum.Provenance.Source}" };
        return ProductLights.Change(study, product, light => light with
        {
            Spectrum = id,
            Conversion = new(factor.LuxPerMicromole, own ? OfOwn : OfShipped, source),
        });
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
