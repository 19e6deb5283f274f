using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>All stages of one area, judged.</summary>
internal sealed class BenchVerdict
{
    /// <summary>Judges the stages.</summary>
    /// <param name="change">The bench and the option.</param>
    public BenchVerdict(BenchChange change)
    {
        var judged = (from season in change.Bench.Area.Seasons.Zip(change.AreaAfter.Seasons)
                      from stage in season.First.Stages.Zip(season.Second.Stages)
                      let verdict = StageJudge.Of(change, season.First.Name, stage)
                      let whole = UnjudgedLines.Weighed(change, verdict.Light)
                      select (Light: whole with { Fixes = FixSearch.Of(change, season.First.Name, stage, whole) }, verdict.EqualLight)).ToList();
        Stages = [.. judged.Select(stage => stage.Light)];
        IsLeftOut = !change.IsUnchanged && (change.Unjudged.Count > 0 || judged.Count == 0 || judged.Any(stage => stage.EqualLight is null));
        // The stage that loses most decides, so that no stage has less light than now; while one is not known, none can be said to.
        var factor = IsLeftOut ? null : judged.Max(stage => stage.EqualLight);
        EqualLight = factor is { } known ? [.. change.WithAlike([.. change.Lines.Where(line => line.OtherProduct)]).Select(line => (line.Now.Line.Id, known))] : [];
    }

    /// <summary>Whether the option changes the area but nobody knows how many luminaires would give the light of now.</summary>
    public bool IsLeftOut { get; }

    /// <summary>A verdict for each stage, in the area's order.</summary>
    public IReadOnlyList<StageLight> Stages { get; }

    /// <summary>Luminaires for each one of the option that would give the light of now, by id of the line.</summary>
    public IReadOnlyList<(string Line, double Factor)> EqualLight { get; }
}
