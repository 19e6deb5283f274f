using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Lamps hung lower: the height nearest to the present one that keeps the light.</summary>
internal static class FixHeights
{
    private const double Centimetre = 0.01;

    /// <summary>One way, or none where no height within reach of the readings does.</summary>
    /// <param name="change">The bench and the option.</param>
    /// <param name="trial">Tries a way.</param>
    /// <param name="draft">The way without its height.</param>
    /// <remarks>By halving between the present height and the lowest within reach: the mean over a bench only grows as lamps come down.</remarks>
    public static IEnumerable<LightFix> Of(BenchChange change, FixTrial trial, LightFix draft)
    {
        if (change.Bench.Fit is not { } fit || change.Bench.BestFor(null) is not { } read)
            yield break;
        var present = change.Lines.Where(line => line.OtherProduct).Max(line => line.HeightAfter(read).Metres);
        LightFix At(double metres) => draft with { Height = Length.FromMetres(metres), Text = $"Lamps {LightAsk.Plain(Length.FromMetres(metres))} over the crop instead of {LightAsk.Plain(Length.FromMetres(present))}" };
        bool Keeps(double metres) => trial.Tried(At(metres)) is { Light.Verdict: LightVerdict.Keeps };
        var (enough, little) = ((int)Math.Ceiling(fit.Heights.Low.Metres / 2 / Centimetre - 1e-6), (int)Math.Floor(present / Centimetre));
        if (enough >= little || !Keeps(enough * Centimetre))
            yield break;
        while (little - enough > 1)
            (enough, little) = Keeps((enough + little) / 2 * Centimetre) ? ((enough + little) / 2, little) : (enough, (enough + little) / 2);
        yield return At(enough * Centimetre);
    }
}
