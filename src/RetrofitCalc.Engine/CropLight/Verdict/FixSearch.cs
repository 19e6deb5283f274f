using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Finds what would keep the light of a stage (E-82): every way is judged as the option itself is.</summary>
internal static class FixSearch
{
    private const int MostOffered = 4;

    /// <summary>Places times lamps beyond which ways are not tried at every change of the study: some ten seconds would pass.</summary>
    public const long MostWork = 1_000_000;

    private const string AtFirst = "Enough when new, too little before lamps or tubes are due.";

    /// <summary>
    /// The best ways, least watts first; those that keep the light to the end before those that keep it at first. Ways that give more light than the crop
    /// is said to want are offered only where there is no other.
    /// </summary>
    /// <param name="change">The bench and the option.</param>
    /// <param name="season">Name of the season.</param>
    /// <param name="stage">The stage as it is, and as the option lights it.</param>
    /// <param name="lost">The verdict on it.</param>
    public static IReadOnlyList<LightFix> Of(BenchChange change, string season, (Stage Now, Stage After) stage, StageLight lost)
    {
        if (change.Option is null || lost is not { Verdict: LightVerdict.Loses or LightVerdict.KeepsAtFirst, After: not null } || change.Bench.Work > MostWork)
            return [];
        var trial = new FixTrial(change, season, lost);
        var like = new LikeStage(stage.Now.LitStep, stage.Now.Dimming, lost.Now!.Daily, stage.After.LitStep, stage.After.Dimming, lost.Photoperiod, lost.Target);
        if (!change.Tried.TryGetValue(like, out var hung))
            change.Tried[like] = hung = [.. FixCandidates.Of(change, trial, lost).Select(trial.Judged).OfType<JudgedFix>()];
        return Best([.. hung, .. FixStages.Of(change, season, stage, lost).Select(trial.Judged).OfType<JudgedFix>()], lost);
    }

    private static IReadOnlyList<LightFix> Best(IReadOnlyList<JudgedFix> tried, StageLight lost)
    {
        var helping = tried.Where(each => each.Verdict == LightVerdict.Keeps || (each.Verdict == LightVerdict.KeepsAtFirst && lost.Verdict == LightVerdict.Loses)).ToList();
        var moderate = helping.Where(each => !each.TooMuch).ToList();
        return [.. (moderate.Count > 0 ? moderate : helping)
            .OrderBy(each => each.Verdict == LightVerdict.Keeps ? 0 : 1).ThenBy(each => each.Fix.ExtraPower.Watts).ThenBy(each => each.Fix.ExtraKilowattHours)
            .Take(MostOffered).Select(each => each.Verdict == LightVerdict.Keeps ? each.Fix : each.Fix with { WatchOut = Joined(AtFirst, each.Fix.WatchOut) })];
    }

    /// <summary>Sentences beside each other.</summary>
    /// <param name="parts">The sentences; empty ones are left out.</param>
    public static string Joined(params string[] parts) => string.Join(' ', parts.Where(part => part.Length > 0));
}

/// <summary>What a stage must share with another for the same lamps to keep its light.</summary>
internal sealed record LikeStage(
    string? NowStep, double NowDimming, DailyLight NowDaily, string? Step, double Dimming, Quantities.OperatingTime Photoperiod, LightTarget? Target);

/// <summary>A change, and what comes of it.</summary>
/// <param name="Fix">The change with its figures.</param>
/// <param name="Verdict">The verdict with it.</param>
/// <param name="TooMuch">Whether it gives more light than the crop is said to want.</param>
internal sealed record JudgedFix(LightFix Fix, LightVerdict Verdict, bool TooMuch);

/// <summary>Tries a change to an option on one bench.</summary>
/// <param name="change">The bench and the option as it is.</param>
/// <param name="season">Name of the season.</param>
/// <param name="lost">The verdict on the stage that wants light.</param>
internal sealed class FixTrial(BenchChange change, string season, StageLight lost)
{
    private const double LeastEven = 0.7, NoticedLess = 0.02;

    private readonly (double Watts, double KilowattHours) _without = (BenchPower.Connected(change).Watts, BenchPower.KilowattHours(change));

    /// <summary>The stage with a change in place; null where the change does not fit its lines.</summary>
    /// <param name="fix">The change.</param>
    public (BenchChange Change, StageLight Light)? Tried(LightFix fix)
    {
        var context = change.Bench.Context;
        var option = LightFixes.Applied(context.Study.Catalogue, change.Option!, fix);
        var after = FittedLines.Of(context, option.Measures.ToDictionary(measure => measure.Line, measure => measure.Measure), out var refused);
        if (refused.Any(each => fix.Lines.Contains(each.Line)))
            return null;
        var tried = new BenchChange(change.Bench, after, option);
        var at = change.Bench.Area.Seasons.Index().First(each => each.Item.Name == season);
        var number = at.Item.Stages.Index().First(each => each.Item.Name == lost.Stage).Index;
        return (tried, StageJudge.Of(tried, season, (at.Item.Stages[number], tried.AreaAfter.Seasons[at.Index].Stages[number])).Light);
    }

    /// <summary>The change with its figures, and the verdict with it; null where it does not fit or its light is not known.</summary>
    /// <param name="fix">The change.</param>
    public JudgedFix? Judged(LightFix fix)
    {
        if (Tried(fix) is not { Light.After: { } light } tried)
            return null;
        var tooMuch = LightWanted.Most(tried.Light.Target, tried.Light.Photoperiod) is { } most && light.Mean > most;
        var filled = fix with
        {
            Light = light,
            ExtraPower = Quantities.Power.FromWatts(BenchPower.Connected(tried.Change).Watts - _without.Watts),
            ExtraKilowattHours = BenchPower.KilowattHours(tried.Change) - _without.KilowattHours,
            WatchOut = FixSearch.Joined(fix.WatchOut, Evenness(light), tooMuch ? $"More light than {lost.Target!.Crop} is said to want." : ""),
        };
        return new(filled, tried.Light.Verdict, tooMuch);
    }

    private string Evenness(LightFigures light) =>
        light.MinimumToMean is { } with && lost.After!.MinimumToMean is { } without && with < LeastEven && without - with > NoticedLess
            ? FormattableString.Invariant($"Less even: the lowest light is {with:0.00} of the mean, {without:0.00} without it.")
            : "";
}
