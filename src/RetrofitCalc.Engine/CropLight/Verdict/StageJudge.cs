using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>The verdict on one stage (E-80).</summary>
internal static class StageJudge
{
    /// <summary>A fall of light that no grower need notice, where no target is set: common practice, no source. [unitless]</summary>
    public const double LeastLoss = 0.05;

    /// <summary>Light this much below another counts as the same: what rounding leaves. [unitless]</summary>
    private const double Same = 1e-6;

    /// <summary>The stage, judged.</summary>
    /// <param name="change">The bench and the option.</param>
    /// <param name="season">Name of the season.</param>
    /// <param name="stage">The stage as it is, and as the option lights it.</param>
    /// <returns>The verdict, and how many luminaires for each one of the option would give the light of now; null when not known.</returns>
    public static (StageLight Light, double? EqualLight) Of(BenchChange change, string season, (Stage Now, Stage After) stage)
    {
        var bench = change.Bench;
        var read = bench.BestFor(stage.Now.LitStep);
        var light = read is null ? null : new BenchStage(change, stage.Now, stage.After, new(bench, read));
        var result = Known(change, season, stage, light);
        if (light is { IsKnown: true })
            result = Judged(result, change, light);
        return (
            result with { Warnings = StageWarnings.Of(change, season, stage.After, result, read) },
            light is { IsKnown: true } ? EqualLightFactors.Of(change, light, result) : null);
    }

    /// <summary>What can be said before any verdict.</summary>
    private static StageLight Known(BenchChange change, string season, (Stage Now, Stage After) stage, BenchStage? light)
    {
        var (ask, target, today) = (LightAsk.Of(change, light), stage.Now.Target, LightWanted.Photoperiod(stage.Now));
        return new()
        {
            Area = change.Bench.Area.Id, Season = season, Stage = stage.Now.Name,
            Verdict = change.IsUnchanged && (change.Option is not null || ask is null) ? LightVerdict.Unchanged : LightVerdict.NotKnown,
            RatedChange = RatedOutputs.Change(change, stage.Now, stage.After),
            Now = light?.Now is { } now ? light.Figures(now, today, LightWanted.Least(target, today)) : null,
            Target = target,
            Photoperiod = LightWanted.Photoperiod(stage.After),
            RestsOn = light is null ? "" : LightAsk.RestsOn(change.Bench, light),
            Ask = ask,
        };
    }

    private static StageLight Judged(StageLight stage, BenchChange change, BenchStage light)
    {
        var least = LightWanted.Least(stage.Target, stage.Photoperiod);
        var (after, end) = (light.At(0), light.At(change.EndYears));
        var figures = light.Figures(after, stage.Photoperiod, least);
        var ratio = stage.Now!.Daily.MolesPerSquareMetre > 0 ? figures.Daily.MolesPerSquareMetre / stage.Now.Daily.MolesPerSquareMetre : (double?)null;
        var doubts = ChangeDoubts.Of(change, light);
        var known = stage with
        {
            Change = change.IsUnchanged ? 0 : ratio - 1,
            ChangeUncertainty = change.IsUnchanged ? 0 : ratio * ChangeDoubts.Combined(doubts),
            UncertainBy = doubts,
            After = figures,
            AtEnd = light.Figures(end, stage.Photoperiod, least),
            NowAtEnd = light.Figures(light.NowAtEnd!, LightWanted.Photoperiod(light.NowStage), least),
            BelowTargetAfterYears = BelowAfter(change, light, least),
            Unreachable = stage.Target is { } target && TargetReach.Of(target, figures.Mean, stage.Photoperiod).Unreachable,
        };
        return change.IsUnchanged ? known : known with { Verdict = Verdict(known, least) };
    }

    private static LightVerdict Verdict(StageLight stage, PhotonFluxDensity? least)
    {
        if (least is not { } wanted)
            return -stage.Change > LeastLoss ? LightVerdict.Loses : FallsShort(stage) ? LightVerdict.KeepsAtFirst : LightVerdict.Keeps;
        if (IsBelow(stage.After!.Mean, wanted))
            return stage.Change < -Same ? LightVerdict.Loses : LightVerdict.Keeps;
        return IsBelow(stage.AtEnd!.Mean, wanted) ? LightVerdict.KeepsAtFirst : LightVerdict.Keeps;
    }

    /// <summary>Whether what is fitted gives noticeably less light a day when it is due than the present lamps when they are.</summary>
    private static bool FallsShort(StageLight stage) =>
        stage.AtEnd!.Daily.MolesPerSquareMetre < stage.NowAtEnd!.Daily.MolesPerSquareMetre * (1 - LeastLoss - Same);

    /// <summary>Whether a light falls short of another by more than rounding.</summary>
    public static bool IsBelow(PhotonFluxDensity light, PhotonFluxDensity wanted) =>
        light.MicromolesPerSquareMetre < wanted.MicromolesPerSquareMetre * (1 - Same);

    /// <summary>When the mean falls below the target, by halving: it only falls. [years]</summary>
    private static double? BelowAfter(BenchChange change, BenchStage light, PhotonFluxDensity? least)
    {
        bool Below(double years) => IsBelow(PhotonFluxDensity.FromMicromolesPerSquareMetre(light.Mean(light.At(years))), least!.Value);
        if (least is null || !Below(change.EndYears))
            return null;
        if (Below(0))
            return 0;
        var (enough, below) = (0.0, change.EndYears);
        for (var halving = 0; halving < 30; halving++)
            (enough, below) = Below((enough + below) / 2) ? (enough, (enough + below) / 2) : ((enough + below) / 2, below);
        return below;
    }
}
