using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Ways to hang other lamps, more or lower, that may keep the light of a stage; not judged yet.</summary>
internal static class FixCandidates
{
    private const double MostTimesAsMany = 4;
    private const double SameLength = 0.05; // a body is a little longer than its lamps. [m]

    /// <summary>All ways; none where no line takes another product.</summary>
    /// <param name="change">The bench and the option.</param>
    /// <param name="trial">Tries a way.</param>
    /// <param name="lost">The verdict on the stage.</param>
    public static IEnumerable<LightFix> Of(BenchChange change, FixTrial trial, StageLight lost)
    {
        List<BenchLine> lines = [.. change.Lines.Where(line => line.OtherProduct)];
        var draft = Draft(lost) with { Lines = [.. change.WithAlike(lines).Select(line => line.Now.Line.Id)] };
        return lines.Count == 0 ? [] : [.. Products(change, lines, draft), .. More(lines, lost, draft), .. FixHeights.Of(change, trial, draft)];
    }

    /// <summary>A way that changes nothing yet.</summary>
    /// <param name="lost">The verdict on the stage.</param>
    public static LightFix Draft(StageLight lost) => new() { Text = "", Lines = [], Light = lost.After!, ExtraPower = Power.Zero, ExtraKilowattHours = 0 };

    private static IEnumerable<LightFix> Products(BenchChange change, List<BenchLine> lines, LightFix draft)
    {
        var catalogue = change.Bench.Context.Study.Catalogue;
        var used = lines.Select(line => line.NewProduct.Id).ToHashSet();
        var replaced = string.Join(", ", lines.Select(line => line.NewProduct.Name).Distinct());
        return catalogue.Tubes.Concat<Replacement>(catalogue.Luminaires).Where(product => !product.Retired && !used.Contains(product.Id))
            .Select(product => draft with
            {
                Product = product.Id,
                Text = $"{product.Name} instead of {replaced}",
                WatchOut = IsLonger(product, lines) ? "Longer than what hangs there now: see whether it fits." : "",
            });
    }

    private static bool IsLonger(Replacement product, List<BenchLine> lines) => product is ReadyWiredLuminaire
        && lines.Any(line => line.OldProduct is Lamp lamp && product.Length.Metres > lamp.Length.Metres + SameLength);

    /// <summary>More tubes in each luminaire, up to the lampholders there are, or more luminaires for each old one, by halves.</summary>
    private static IEnumerable<LightFix> More(List<BenchLine> lines, StageLight lost, LightFix draft)
    {
        if (lines.All(line => line.After.Fitting is TubeFitting))
        {
            var tubes = lines.Max(line => ((TubeFitting)line.After.Fitting).TubesPerLuminaire);
            var most = lines.Min(line => line.Now.Fitting is BallastedFitting old ? old.SetUp.LampCount : tubes);
            for (var count = tubes + 1; count <= most; count++)
                yield return draft with { PerLuminaire = count, Text = $"{count} tubes in each luminaire instead of {tubes}" };
        }
        if (lines.All(line => line.NewBody) && Short(lost) is { } times and <= MostTimesAsMany)
        {
            var now = lines.Max(line => line.After.Luminaires / line.Now.Luminaires);
            var more = Math.Ceiling(now * times * 2) / 2;
            yield return draft with { PerLuminaire = more, Text = FormattableString.Invariant($"{more:0.#} new luminaires for each old one instead of {now:0.##}") };
        }
    }

    /// <summary>
    /// How many times as much light would do, to the end of the interval; without a target, for as much as the present lamps give, both new and when
    /// due; null in the dark. [unitless]
    /// </summary>
    public static double? Short(StageLight lost)
    {
        var wanted = LightWanted.Least(lost.Target, lost.Photoperiod) is { } least
            ? least.MicromolesPerSquareMetre / lost.AtEnd!.Mean.MicromolesPerSquareMetre
            : Math.Max(1 / (1 + lost.Change!.Value), lost.NowAtEnd!.Daily.MolesPerSquareMetre / lost.AtEnd!.Daily.MolesPerSquareMetre);
        return double.IsFinite(wanted) ? wanted : null;
    }

    /// <summary>How many times as much light would do while what is fitted is new; null in the dark, or without a target. [unitless]</summary>
    public static double? ShortWhenNew(StageLight lost) =>
        LightWanted.Least(lost.Target, lost.Photoperiod) is { } least && lost.After!.Mean > PhotonFluxDensity.Zero ? least / lost.After.Mean : null;
}
