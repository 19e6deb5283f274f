using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Lamps hung lower: the height nearest to the present one that keeps the light.</summary>
internal static class FixHeights
{
    private const double Centimetre = 0.01;

    /// <summary>One way, or none where no height within reach of the readings does; where none keeps the light to the end, one that keeps it at first.</summary>
    /// <param name="change">The bench and the option.</param>
    /// <param name="trial">Tries a way.</param>
    /// <param name="draft">The way without its height.</param>
    public static IEnumerable<LightFix> Of(BenchChange change, FixTrial trial, LightFix draft)
    {
        if (change.Bench.Fit is not { } fit || change.Bench.BestFor(null) is not { } read)
            return [];
        var present = change.Lines.Where(line => line.OtherProduct).Max(line => line.HeightAfter(read).Metres);
        LightFix At(int centimetres) => draft with
        {
            Height = Length.FromMetres(centimetres * Centimetre),
            Text = $"Lamps {LightAsk.Plain(Length.FromMetres(centimetres * Centimetre))} over the crop instead of {LightAsk.Plain(Length.FromMetres(present))}",
        };
        var reach = ((int)Math.Ceiling(fit.Heights.Low.Metres / 2 / Centimetre - 1e-6), (int)Math.Floor(present / Centimetre));
        int? Highest(Func<LightVerdict, bool> wanted) => HighestIn(reach, centimetres => trial.Tried(At(centimetres)) is { } tried && wanted(tried.Light.Verdict));
        var found = Highest(verdict => verdict == LightVerdict.Keeps) ?? Highest(verdict => verdict is LightVerdict.Keeps or LightVerdict.KeepsAtFirst);
        return found is { } height ? [At(height)] : [];
    }

    /// <summary>By halving: the mean over a bench only grows as lamps come down.</summary>
    private static int? HighestIn((int Lowest, int Present) reach, Func<int, bool> isEnough)
    {
        var (enough, little) = reach;
        if (enough >= little || !isEnough(enough))
            return null;
        while (little - enough > 1)
            (enough, little) = isEnough((enough + little) / 2) ? ((enough + little) / 2, little) : (enough, (enough + little) / 2);
        return enough;
    }
}
