using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Photons that the lamps of an area send out, by their ratings: what can be said without a single reading (E-81).</summary>
internal static class RatedOutputs
{
    /// <summary>Photons of a day after over now, less one; null when an output is not known, or nothing is lit now. [unitless]</summary>
    /// <param name="change">The bench and the option.</param>
    /// <param name="now">The stage as it is.</param>
    /// <param name="after">The stage as the option lights it.</param>
    public static double? Change(BenchChange change, Stage now, Stage after)
    {
        if (change.IsUnchanged)
            return change.Lines.Count > 0 ? 0 : null;
        if (change.Bench.Missing is not null)
            return null;
        var (before, later) = ((double?)0, (double?)0);
        foreach (var line in change.Lines.Concat(change.Elsewhere))
        {
            before += change.Bench.Output(line.Now, now.LitStep) * BenchLine.Level(change.Bench, line.Now, now.Dimming);
            later += change.Bench.Output(line.After, after.LitStep) * BenchLine.Level(change.Bench, line.After, after.Dimming);
        }
        return before > 0 ? later * LightWanted.Photoperiod(after).Hours / (before * LightWanted.Photoperiod(now).Hours) - 1 : null;
    }
}
