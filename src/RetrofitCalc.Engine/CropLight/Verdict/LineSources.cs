using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>What the luminaires of a line hold as far as light goes: lamps new, clean and at the air of their rating.</summary>
/// <remarks>
/// As many tubes as there were lamps hang where the lamps hung, and steps light the same places. Other numbers of tubes light all of them by
/// the share of lamps the step lights. Whole numbers of new luminaires for each old one hang side by side in its place.
/// </remarks>
internal sealed class LineSources(StudyContext context)
{
    private readonly Dictionary<string, LuminousIntensityDistribution> _distributions = [];

    /// <summary>What is fitted; null when its photons are not known.</summary>
    /// <param name="line">The line.</param>
    /// <param name="present">The same line as it is today.</param>
    /// <param name="step">Name of the lit step; null for all lamps.</param>
    public FittedSource? Of(FittedLine line, FittedLine present, string? step)
    {
        if (Missing(line, context) is not null || FittedOutput.Of(line, null, context).PerLamp is not { } perLamp)
            return null;
        var old = OldBody(line);
        return line.Fitting switch
        {
            BallastedFitting lamps => Lamps(lamps.Lamp, lamps.SetUp, perLamp, TubeEmission.BareTube),
            TubeFitting tubes when tubes.TubesPerLuminaire == old?.LampCount => Lamps(tubes.Tube, old, perLamp, TubeEmission.DownFacingStrip),
            TubeFitting tubes => Plain(tubes.Tube, tubes.TubesPerLuminaire, perLamp) with { Share = LampShare(line, step) },
            LuminaireFitting luminaire => SideBySide(luminaire.Luminaire, line.Luminaires / present.Luminaires, perLamp),
            _ => throw new ArgumentOutOfRangeException(nameof(line), line.Fitting.GetType().Name, "Unknown kind of fitting."),
        };
    }

    /// <summary>What must be known before the light of a line is; null when it is.</summary>
    /// <param name="line">The line.</param>
    /// <param name="context">Gives conversions from lumens.</param>
    public static string? Missing(FittedLine line, StudyContext context) =>
        FittedOutput.Of(line, null, context).Missing
            ?? (LengthOf(BenchLine.ProductOf(line.Fitting)) > default(Length) ? null : $"the length of {BenchLine.ProductOf(line.Fitting).Name}");

    /// <summary>What the study says of a product's light.</summary>
    /// <param name="product">The lamp, tube or luminaire.</param>
    public ProductLight? LightOf(CatalogueEntry product) => context.Study.Products.FirstOrDefault(light => light.Product == product.Id);

    private FittedSource Lamps(CatalogueEntry product, SetUp body, PhotonFlux perLamp, TubeEmission usual) => Shaped(product,
        new(body.LampCount, LengthOf(product), perLamp, usual) { Steps = FittedSource.StepsOf(body) });

    private FittedSource Plain(CatalogueEntry product, int count, PhotonFlux perLamp) =>
        Shaped(product, new(count, LengthOf(product), perLamp, TubeEmission.DownFacingStrip));

    private FittedSource SideBySide(ReadyWiredLuminaire luminaire, double perOld, PhotonFlux each)
    {
        var whole = Math.Abs(perOld - Math.Round(perOld)) < 1e-9 && perOld >= 1 && DistributionOf(luminaire) is null;
        return whole ? Plain(luminaire, (int)Math.Round(perOld), each) : Plain(luminaire, 1, each) with { Share = perOld };
    }

    private FittedSource Shaped(CatalogueEntry product, FittedSource source) => source with
    {
        Emission = LightOf(product)?.Emission ?? source.Emission,
        Distribution = DistributionOf(product),
        Factor = LightOf(product)?.Conversion is { } conversion ? new LuxFactor(conversion.LuxPerMicromole) : null,
    };

    private LuminousIntensityDistribution? DistributionOf(CatalogueEntry product)
    {
        if (LightOf(product)?.Distribution is not { } id || context.Study.Distributions.FirstOrDefault(file => file.Id == id) is not { } file)
            return null;
        if (!_distributions.TryGetValue(id, out var found))
            _distributions[id] = found = new(file.Type, file.Vertical, file.Horizontal, file.Candelas) { Opening = file.Opening, InputPower = file.InputPower };
        return found;
    }

    private SetUp? OldBody(FittedLine line) => line.Line.SetUp is { } id && context.SetUps.TryGetValue(id, out var model) ? model.Fitting.SetUp : null;

    private double LampShare(FittedLine line, string? step) => line.Line.SetUp is { } id && context.SetUps.TryGetValue(id, out var model) ? model.LampShare(step) : 1;

    private static Length LengthOf(CatalogueEntry product) => product switch
    {
        Lamp lamp => lamp.Length,
        Replacement replacement => replacement.Length,
        _ => throw new ArgumentOutOfRangeException(nameof(product), product.GetType().Name, "Gives no light."),
    };
}
