using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Spectra;

/// <summary>Spectra of what a study has now and would get, for reports.</summary>
public static class ProductSpectra
{
    /// <summary>Lamps of the survey first, then what the option fits, each once.</summary>
    /// <param name="study">The study.</param>
    /// <param name="option">Id of the option; null for its choice.</param>
    public static IReadOnlyList<ProductSpectrum> Of(Study study, string? option)
    {
        var chosen = study.Options.FirstOrDefault(each => each.Id == (option ?? study.ChosenOption)) ?? study.Options.FirstOrDefault();
        var lamps = study.Lines.Select(line => study.Catalogue.SetUps.FirstOrDefault(setUp => setUp.Id == line.SetUp)?.Lamp);
        var fitted = chosen?.Measures.Select(measure => measure.Measure switch { DirectWire tube => tube.Tube, ReplaceLuminaire luminaire => luminaire.Luminaire, _ => null }) ?? [];
        return [.. lamps.Concat(fitted).OfType<string>().Distinct().Select(id => new ProductSpectrum(id, Name(study.Catalogue, id), Figures(study, id)))];
    }

    private static string Name(CatalogueExtract catalogue, string id) => catalogue.All.FirstOrDefault(entry => entry.Id == id)?.Name ?? id;

    private static SpectrumFigures? Figures(Study study, string product) =>
        StudySpectra.Find(study, study.Products.FirstOrDefault(light => light.Product == product)?.Spectrum) is { } spectrum
            ? SpectrumFigures.Of(spectrum, ShippedSpectra.Tables)
            : null;
}
