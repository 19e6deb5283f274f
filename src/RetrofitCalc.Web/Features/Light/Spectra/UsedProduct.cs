using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Light.Spectra;

/// <summary>A lamp, tube or luminaire that some line has now or would get.</summary>
/// <param name="Now">Whether it burns today; otherwise an option proposes it.</param>
/// <param name="Flux">Lumens by its sheet.</param>
/// <param name="Photons">Photons of 400–700 nm by its sheet.</param>
/// <param name="Power">A lamp's own power, or what a tube or luminaire draws.</param>
/// <param name="Source">Where its sheet figures come from.</param>
public sealed record UsedProduct(string Id, string Name, bool Now, LuminousFlux? Flux, PhotonFlux? Photons, Power Power, Provenance Source)
{
    /// <summary>A lamp on a ballast, not a tube wired straight or a luminaire.</summary>
    public bool IsLamp => Now;

    /// <summary>Those of the lines of one area.</summary>
    public static IReadOnlyList<UsedProduct> In(Study study, string area)
    {
        var lines = study.Lines.Where(line => line.Area == area).ToList();
        return Of(study with
        {
            Lines = lines,
            Options = [.. study.Options.Select(option => option with { Measures = [.. option.Measures.Where(measure => lines.Any(line => line.Id == measure.Line))] })],
        });
    }

    /// <summary>Lamps of the survey first, then what any option would fit, each once.</summary>
    public static IReadOnlyList<UsedProduct> Of(Study study)
    {
        var lamps = study.Lines.Select(line => LampOf(study, line)).OfType<Lamp>().DistinctBy(lamp => lamp.Id).Select(Of);
        var fitted = study.Options.SelectMany(option => option.Measures).Select(measure => FittedBy(study, measure.Measure)).OfType<Replacement>().DistinctBy(product => product.Id).Select(Of);
        return [.. lamps, .. fitted];
    }

    public static UsedProduct Of(Lamp lamp) => new(lamp.Id, lamp.Name, true, lamp.InitialFlux, lamp.PhotonFlux, lamp.ArcPower ?? lamp.NominalPower, lamp.Source);

    public static UsedProduct Of(Replacement product) => new(product.Id, product.Name, false, product.Flux, product.PhotonFlux, product.LinePower, product.Source);

    public static Lamp? LampOf(Study study, SurveyLine line) =>
        study.Catalogue.SetUps.FirstOrDefault(setUp => setUp.Id == line.SetUp) is { } setUp ? study.Catalogue.Lamps.FirstOrDefault(lamp => lamp.Id == setUp.Lamp) : null;

    public static Replacement? FittedBy(Study study, Measure measure) => measure switch
    {
        DirectWire tube => study.Catalogue.Tubes.FirstOrDefault(entry => entry.Id == tube.Tube),
        ReplaceLuminaire luminaire => study.Catalogue.Luminaires.FirstOrDefault(entry => entry.Id == luminaire.Luminaire),
        _ => null,
    };
}
