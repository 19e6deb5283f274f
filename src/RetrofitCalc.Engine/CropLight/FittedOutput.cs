using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>What one luminaire sends out, its lamps new and at the air temperature of their rating (E-65).</summary>
/// <remarks>Lamps on ballasts give their rated light times the ballast factor. Losses within the luminaire are not in it.</remarks>
/// <param name="Lamps">Lamps or tubes lit; 1 for a ready-wired luminaire. [count; a fraction where a step lights a share of the tubes]</param>
/// <param name="Lumens">Light for the eye; null when not known. [lm]</param>
/// <param name="Photons">Photons of 400–700 nm; null when not known. [µmol/s]</param>
public sealed record FittedOutput(double Lamps, LuminousFlux? Lumens, PhotonFlux? Photons)
{
    /// <summary>Photons of one lamp; null when not known, or when none is lit. [µmol/s]</summary>
    public PhotonFlux? PerLamp => Lamps > 0 ? Photons / Lamps : null;

    /// <summary>How far the photons may be off, either way, because they were converted from lumens. [unitless]; 0 when the catalogue gives photons.</summary>
    public double Uncertainty { get; init; }

    /// <summary>What has to be known before the photons are; null when they are.</summary>
    public string? Missing { get; init; }

    /// <summary>Output of one luminaire of a line.</summary>
    /// <param name="line">The line with what is fitted.</param>
    /// <param name="step">Name of the lit step; null for all lamps, and for a step this luminaire does not have.</param>
    /// <param name="context">Gives conversions from lumens, and the steps of the lamps that tubes replaced; without it tubes are all lit.</param>
    public static FittedOutput Of(FittedLine line, string? step = null, StudyContext? context = null) => line.Fitting switch
    {
        BallastedFitting lamps => OfLamps(lamps, step, Conversion(context, lamps.Lamp)),
        TubeFitting tubes => OfReplacement(tubes.Tube, tubes.TubesPerLuminaire * LampShare(context, line, step), Conversion(context, tubes.Tube)),
        LuminaireFitting luminaire => OfReplacement(luminaire.Luminaire, 1, Conversion(context, luminaire.Luminaire)),
        _ => throw new ArgumentOutOfRangeException(nameof(line), line.Fitting.GetType().Name, "Unknown kind of fitting."),
    };

    /// <summary>Output of like lamps on one ballast.</summary>
    /// <param name="lamps">Lamps lit. [count]</param>
    /// <param name="rated">Light of one lamp after 100 h. [lm]</param>
    /// <param name="ballastFactor">Light relative to the reference ballast. [unitless, 0–2]</param>
    /// <exception cref="ArgumentOutOfRangeException">A ballast factor outside.</exception>
    public static LuminousFlux OnBallast(double lamps, LuminousFlux rated, double ballastFactor) =>
        rated * (Require.NotNegative(lamps) * Require.InRange(ballastFactor, 0, 2));

    private static FittedOutput OfLamps(BallastedFitting fitting, string? step, LuxConversion? conversion)
    {
        var positions = fitting.SetUp.Ballasts;
        IReadOnlyList<int> lit = fitting.SetUp.Steps.FirstOrDefault(s => s.Name == step)?.BallastIndexes ?? [.. Enumerable.Range(0, positions.Count)];
        double lamps = lit.Sum(i => positions[i].LampsDriven);
        if (lit.Any(i => fitting.Ballasts[i]?.BallastFactor is null))
            return new(lamps, null, null) { Missing = $"the ballast factor of {fitting.SetUp.Name}" };
        var working = lit.Sum(i => positions[i].LampsDriven * fitting.Ballasts[i]!.BallastFactor!.Value);
        return Of(fitting.Lamp, (fitting.Lamp.InitialFlux, fitting.Lamp.PhotonFlux), (lamps, working), conversion);
    }

    private static FittedOutput OfReplacement(Replacement product, double count, LuxConversion? conversion) =>
        Of(product, (product.Flux, product.PhotonFlux), (count, count), conversion);

    /// <param name="product">The lamp, tube or luminaire.</param>
    /// <param name="each">Light of one, as the catalogue gives it.</param>
    /// <param name="lit">How many are lit, and to how many at their rated light they amount.</param>
    /// <param name="conversion">From lumens to photons and back.</param>
    private static FittedOutput Of(
        CatalogueEntry product, (LuminousFlux? Lumens, PhotonFlux? Photons) each, (double Lamps, double Rated) lit, LuxConversion? conversion)
    {
        var factor = conversion is { } known ? new Spectra.LuxFactor(known.LuxPerMicromole) : null;
        var converted = each.Photons is null && each.Lumens is not null && factor is not null;
        var photons = each.Photons ?? (each.Lumens is { } lumens ? factor?.ToPhotonFlux(lumens) : null);
        var light = each.Lumens ?? (each.Photons is { } micromoles && factor is not null ? LuminousFlux.FromLumens(micromoles.MicromolesPerSecond * factor.LuxPerMicromole) : null);
        return new(lit.Lamps, light * lit.Rated, photons * lit.Rated)
        {
            Uncertainty = converted ? conversion!.Uncertainty : 0,
            Missing = photons is not null ? null
                : each.Lumens is null ? $"the photons or lumens of {product.Name}" : $"how the lumens of {product.Name} become photons: its spectrum or kind of lamp",
        };
    }

    private static LuxConversion? Conversion(StudyContext? context, CatalogueEntry product) =>
        context?.Study.Products.FirstOrDefault(light => light.Product == product.Id)?.Conversion;

    private static double LampShare(StudyContext? context, FittedLine line, string? step) =>
        line.Line.SetUp is { } setUp && context?.SetUps.GetValueOrDefault(setUp) is { } model ? model.LampShare(step) : 1;
}
