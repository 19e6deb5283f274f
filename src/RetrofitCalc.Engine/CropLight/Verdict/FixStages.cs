using NodaTime;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Ways to light the stage itself in another way: more lamps, brighter, longer.</summary>
internal static class FixStages
{
    /// <summary>Hours of a day offered where nobody has said what the crop bears: common practice, no source. [h]</summary>
    private const double MostHours = 20;

    private const double QuarterHour = 0.25, DimmingStep = 0.05;

    /// <summary>The ways.</summary>
    /// <param name="change">The bench and the option.</param>
    /// <param name="season">Name of the season.</param>
    /// <param name="stage">The stage as it is, and as the option lights it.</param>
    /// <param name="lost">The verdict on it.</param>
    public static IEnumerable<LightFix> Of(BenchChange change, string season, (Stage Now, Stage After) stage, StageLight lost)
    {
        var draft = FixCandidates.Draft(lost) with { Stage = new(change.Bench.Area.Id, season, stage.Now.Name) };
        return [.. Steps(change, stage.After, draft), .. Brighter(change, stage.After, lost, draft), .. Longer(stage.After, lost, draft)];
    }

    private static IEnumerable<LightFix> Steps(BenchChange change, Stage stage, LightFix draft)
    {
        if (stage.LitStep is not { } lit)
            return [];
        var models = change.Lines.Where(line => !line.NewBody).Select(line => change.Bench.Context.SetUps[line.Now.Line.SetUp!]).Distinct().ToList();
        double Share(string? step) => models.Min(model => model.LampShare(step));
        return models.Count == 0 ? [] : models.SelectMany(model => model.Fitting.SetUp.Steps).Select(step => step.Name).Distinct().Append("")
            .Where(step => Share(step.Length == 0 ? null : step) > Share(lit))
            .Select(step => draft with
            {
                Stage = draft.Stage! with { LitStep = step },
                Text = step.Length == 0 ? $"All lamps lit instead of {lit}" : $"{step} lit instead of {lit}",
            });
    }

    private static IEnumerable<LightFix> Brighter(BenchChange change, Stage stage, StageLight lost, LightFix draft)
    {
        if (stage.Dimming >= 1 || FixCandidates.Short(lost) is not { } times || change.Lines.All(line => BenchLine.Level(change.Bench, line.After, stage.Dimming) == 1))
            return [];
        var level = Math.Min(1, Math.Ceiling(stage.Dimming * times / DimmingStep - 1e-9) * DimmingStep);
        return [draft with { Stage = draft.Stage! with { Dimming = level }, Text = $"Dimmed to {LightAsk.Percent(level)} instead of {LightAsk.Percent(stage.Dimming)}" }];
    }

    /// <summary>Never for a crop that answers to the length of the day. Enough to the end, or where the crop does not bear that, enough at first.</summary>
    private static IEnumerable<LightFix> Longer(Stage stage, StageLight lost, LightFix draft)
    {
        if (lost.Target?.DayLength is DayLengthResponse.ShortDay or DayLengthResponse.LongDay)
            return [];
        var most = lost.Target?.MostHours?.Hours ?? MostHours;
        double?[] wanted = [FixCandidates.Short(lost), FixCandidates.ShortWhenNew(lost)];
        return [.. wanted.OfType<double>().Select(times => Math.Ceiling(lost.Photoperiod.Hours * times / QuarterHour - 1e-9) * QuarterHour)
            .Where(hours => hours > lost.Photoperiod.Hours && hours <= most).Take(1).Select(hours => Lit(stage, hours, lost, draft))];
    }

    private static LightFix Lit(Stage stage, double hours, StageLight lost, LightFix draft)
    {
        var off = stage.LightsOn.PlusMinutes((long)Math.Round(hours * 60));
        return draft with
        {
            Stage = draft.Stage! with { LightsOff = off },
            Text = FormattableString.Invariant($"Lit {hours:0.##} h a day instead of {lost.Photoperiod.Hours:0.##} h: until {off.Hour:00}:{off.Minute:00}"),
            WatchOut = lost.Target is { DayLength: DayLengthResponse.Neutral, MostHours: not null } ? "" : "Ask the grower first: a longer day may change how the crop grows.",
        };
    }
}
