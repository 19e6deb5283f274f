using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Every product, height and step of one stage.</summary>
/// <param name="change">The bench and the option as it is.</param>
/// <param name="season">Name of the season.</param>
/// <param name="lit">The verdict on the stage.</param>
internal sealed class SearchSpace(BenchChange change, string season, StageLight lit)
{
    private const double Same = 1e-6;

    /// <summary>All ways whose products fit.</summary>
    /// <param name="stop">Asked before each.</param>
    public IEnumerable<LightTry> Ways(CancellationToken stop)
    {
        LightTry? Try(Replacement product, double metres, string? step)
        {
            stop.ThrowIfCancellationRequested();
            return Tried(product, Length.FromMetres(metres), step);
        }

        return from product in Products()
               from metres in LightSearch.HeightsWithin(change.Bench.Fit!.Heights)
               from step in Steps()
               let way = Try(product, metres, step)
               where way is not null
               select way;
    }

    /// <summary>The two changes to an option that a way consists of: what hangs and how high, and the step.</summary>
    /// <param name="way">The way.</param>
    /// <param name="stage">The stage, unchanged.</param>
    public static (LightFix Product, LightFix Step) Fixes(LightTry way, StageChange stage)
    {
        var draft = new LightFix { Text = way.Name, Lines = way.Lines, Light = way.Light, ExtraPower = Power.Zero, ExtraKilowattHours = 0 };
        return (draft with { Product = way.Product, Height = way.Height }, draft with { Lines = [], Stage = stage with { LitStep = way.Step ?? "" } });
    }

    private IReadOnlyList<string> Lines { get; } = [.. change.WithAlike(change.Lines.Any(line => line.OtherProduct) ? [.. change.Lines.Where(line => line.OtherProduct)] : change.Lines).Select(line => line.Now.Line.Id)];

    private IEnumerable<Replacement> Products() =>
        change.Bench.Context.Study.Catalogue is var catalogue ? catalogue.Tubes.Concat<Replacement>(catalogue.Luminaires).Where(product => !product.Retired) : [];

    private IEnumerable<string?> Steps() => change.Lines
        .SelectMany(line => line.Now.Fitting is BallastedFitting old ? old.SetUp.Steps : []).Select(step => (string?)step.Name).Distinct().Prepend(null);

    private LightTry? Tried(Replacement product, Length height, string? step)
    {
        var trial = Option(product, height, step);
        var after = FittedLines.Of(change.Bench.Context, trial.Measures.ToDictionary(measure => measure.Line, measure => measure.Measure), out var refused);
        // A new luminaire has no steps: each would be the same way again.
        if (refused.Any(each => Lines.Contains(each.Line)) || (product is ReadyWiredLuminaire && step is not null))
            return null;
        var tried = new BenchChange(change.Bench, after, trial);
        var (now, later) = (StageOf(change.Bench.Area), StageOf(tried.AreaAfter));
        if (StageJudge.Of(tried, season, (now, later)).Light is not { After: { } light, AtEnd: { } end })
            return null;
        return new()
        {
            Name = product.Name, Product = product.Id, Height = height, Step = step, Light = light, MeanAtEnd = end.Mean, Lines = Lines,
            Power = BenchPower.In(tried, new LitMode(season, later.Name, later.LitStep, later.Dimming)),
            Meets = Meets(light, end),
            TooMuch = LightWanted.IsTooMuch(lit.Target, light, LightWanted.Photoperiod(later)),
        };
    }

    private RetrofitOption Option(Replacement product, Length height, string? step)
    {
        var draft = new LightFix { Text = "", Lines = Lines, Light = lit.After!, ExtraPower = Power.Zero, ExtraKilowattHours = 0 };
        var catalogue = change.Bench.Context.Study.Catalogue;
        var hung = LightFixes.Applied(catalogue, change.Option!, draft with { Product = product.Id, Height = height });
        return LightFixes.Applied(catalogue, hung, draft with { Lines = [], Stage = new(change.Bench.Area.Id, season, lit.Stage) { LitStep = step ?? "" } });
    }

    private bool Meets(LightFigures light, LightFigures end) => LightWanted.Least(lit.Target, lit.Photoperiod) is { } least
        ? !StageJudge.IsBelow(light.Mean, least) && !StageJudge.IsBelow(end.Mean, least)
        : lit.Now is { } now && light.Daily.MolesPerSquareMetre >= now.Daily.MolesPerSquareMetre * (1 - Same);

    private Stage StageOf(Area area) => area.Seasons.First(each => each.Name == season).Stages.First(each => each.Name == lit.Stage);
}
