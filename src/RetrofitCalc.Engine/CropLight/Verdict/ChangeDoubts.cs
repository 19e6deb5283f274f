using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>How far a change of light may be off, part by part, 19 times in 20 (E-79).</summary>
/// <remarks>
/// The parts are combined as the root of the sum of their squares. Shares that no source gives are common practice and named so in
/// docs/sources.md. What reads both lights alike, the meter above all, cancels out of a change where tubes hang in the old bodies; it does not
/// where a new luminaire is reckoned by its rating.
/// </remarks>
internal static class ChangeDoubts
{
    private const double Rated = 0.10, Measured = 0.05, FromLumens = 0.07, NoLayout = 0.15, Distribution = 0.10, Air = 0.05, Shape = 0.10;

    /// <summary>The parts; none where nothing is done.</summary>
    /// <param name="change">The bench and the option.</param>
    /// <param name="stage">Its light in one stage, known.</param>
    public static IReadOnlyList<UncertaintyPart> Of(BenchChange change, BenchStage stage)
    {
        var whole = stage.MeanOf(_ => true);
        if (change.IsUnchanged || whole <= 0)
            return [];
        double ShareOf(Func<BenchLine, bool> which) => stage.MeanOf(which) / whole;
        List<UncertaintyPart> parts = [.. OfModel(change, stage), .. OfProducts(change, ShareOf), .. OfBodies(change, stage, ShareOf)];
        return [.. parts.Where(part => part.Share > 0).OrderByDescending(part => part.Share)];
    }

    /// <summary>All parts together. [unitless]</summary>
    public static double Combined(IEnumerable<UncertaintyPart> parts) => Math.Sqrt(parts.Sum(part => part.Share * part.Share));

    private static IEnumerable<UncertaintyPart> OfModel(BenchChange change, BenchStage stage)
    {
        var otherStep = stage.AfterStage.LitStep != stage.NowStage.LitStep || stage.AfterStage.LitStep != stage.Read.Set.LitStep;
        if (change.Bench.Fit is not { } fit)
        {
            if (change.Lines.Any(line => line.OtherProduct) || stage.AfterStage.LitStep != stage.NowStage.LitStep)
                yield return new("no layout: light taken to follow the photons sent out", NoLayout);
        }
        else if (change.Lines.Any(line => line.OtherProduct || line.Moved) || otherStep)
            yield return new("how well the model meets the readings", fit.RootMeanSquare);
        if (change.Bench.Fit is { OneHeight: true } && change.Lines.Any(line => line.HeightAfter(stage.Read) != PresentBench.HeightOf(line.Now, stage.Read)))
            yield return new("light at another height, read at one height only", Shape);
    }

    private static IEnumerable<UncertaintyPart> OfProducts(BenchChange change, Func<Func<BenchLine, bool>, double> shareOf)
    {
        foreach (var product in change.Lines.Where(line => line.OtherProduct).Select(line => line.NewProduct).DistinctBy(product => product.Id))
        {
            var share = shareOf(line => line.OtherProduct && line.NewProduct.Id == product.Id);
            yield return new($"light of {product.Name}", OutputDoubt(product) * share);
            var conversion = ConversionDoubt(change, change.Lines.First(line => line.NewProduct.Id == product.Id).After, product);
            yield return new($"photons of {product.Name} worked out from its lumens", conversion * share);
        }
        foreach (var lamp in change.Lines.Where(line => line is { OtherProduct: true, NewBody: false }).Select(line => line.OldProduct).DistinctBy(lamp => lamp.Id))
        {
            var share = shareOf(line => line is { OtherProduct: true, NewBody: false } && line.OldProduct.Id == lamp.Id);
            yield return new($"rated light of {lamp.Name}", OutputDoubt(lamp) * share);
            var conversion = ConversionDoubt(change, change.Lines.First(line => line.OldProduct.Id == lamp.Id).Now, lamp);
            yield return new($"photons of {lamp.Name} worked out from its lumens", conversion * share);
        }
    }

    private static IEnumerable<UncertaintyPart> OfBodies(BenchChange change, BenchStage stage, Func<Func<BenchLine, bool>, double> shareOf)
    {
        var bench = change.Bench;
        var (inOldBodies, inNewBodies) = (shareOf(line => line is { Changed: true, NewBody: false }), shareOf(line => line.NewBody));
        var changed = change.Lines.Where(line => line is { Changed: true, NewBody: false }).ToList();
        yield return new("age of the present lamps", changed.Select(line => bench.Ageing[line.Now.Line.Id].AgeDoubt).DefaultIfEmpty().Max() * inOldBodies);
        yield return new("fading of the present lamps, taken from their sheet", changed.Select(line => bench.Ageing[line.Now.Line.Id].FadingDoubt).DefaultIfEmpty().Max() * inOldBodies);
        yield return new("dirt while the readings were taken", (1 - Math.Sqrt(1 - bench.Light.DirtLoss)) * inOldBodies);
        if (bench.Light.AirAtLamps is null)
            yield return new("air at the present lamps, not measured", Air * shareOf(line => line is { OtherProduct: true, NewBody: false }));
        yield return new("how the new products spread their light", Distribution * shareOf(line => line.OtherProduct && !HasReport(bench, line.NewProduct)));
        if (inNewBodies > 0)
        {
            yield return new("meter, and conversion of its unit", stage.Read.Uncertainty * inNewBodies);
            if (bench.Fit is { } fit)
                yield return new("new luminaires counted as rated, unlike what the readings show of the old ones", Math.Abs(1 - fit.Installation) * inNewBodies);
        }
    }

    /// <summary>Whether a photometric file tells how a product spreads its light, and the file was tested or measured.</summary>
    private static bool HasReport(PresentBench bench, CatalogueEntry product) => bench.Sources.LightOf(product)?.Distribution is { } id
        && bench.Context.Study.Distributions.FirstOrDefault(file => file.Id == id) is { Source: { FromMemory: false, Kind: EvidenceKind.Measured or EvidenceKind.Tested } };

    private static double OutputDoubt(CatalogueEntry product) =>
        SourceOfOutput(product) is { FromMemory: false, Kind: EvidenceKind.Measured or EvidenceKind.Tested } ? Measured : Rated;

    private static double ConversionDoubt(BenchChange change, FittedLine line, CatalogueEntry product) =>
        FittedOutput.Of(line, null, change.Bench.Context) is { Uncertainty: > 0 and var doubt } ? doubt
        : product.SourceOf(nameof(Lamp.PhotonFlux)).Kind == EvidenceKind.Computed ? FromLumens
        : 0;

    private static Provenance SourceOfOutput(CatalogueEntry product) => product switch
    {
        Lamp { PhotonFlux: null } => product.SourceOf(nameof(Lamp.InitialFlux)),
        Replacement { PhotonFlux: null } => product.SourceOf(nameof(Replacement.Flux)),
        _ => product.SourceOf(nameof(Lamp.PhotonFlux)),
    };
}
