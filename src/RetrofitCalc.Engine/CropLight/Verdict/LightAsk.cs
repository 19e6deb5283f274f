using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>What would settle the light of a stage, and what its figures rest on, in plain words.</summary>
internal static class LightAsk
{
    /// <summary>What is missing; null when nothing is.</summary>
    /// <param name="change">The bench and the option.</param>
    /// <param name="stage">Its light in the stage; null without readings.</param>
    public static string? Of(BenchChange change, BenchStage? stage)
    {
        var bench = change.Bench;
        if (stage is null)
            return bench.Light.Readings.Count > 0 && bench.Light.Readings.All(set => set.Unit != Studies.LightUnit.Micromoles && set.Conversion is null)
                ? $"Say how the lux read in {bench.Area.Name} become photons: choose the spectrum or the kind of lamp."
                : $"Read the light in {bench.Area.Name} on a grid at the height of the crop.";
        if (stage.IsKnown)
            return null;
        if (bench.Lines.Count == 0 || bench.Uncounted.Count > 0)
            return $"Say what hangs in {bench.Area.Name}: the lamps over its bench are not counted yet.";
        if (change.Lines.Select(line => LineSources.Missing(line.After, bench.Context)).Prepend(bench.Missing).FirstOrDefault(missing => missing is not null) is { } output)
            return $"Find out {output}.";
        return Height(change, stage.Unreached ?? PresentBench.HeightOf(change.Lines[0].Now, stage.Read));
    }

    /// <summary>What known figures rest on.</summary>
    /// <param name="bench">The bench.</param>
    /// <param name="stage">Its light in a stage.</param>
    public static string RestsOn(PresentBench bench, BenchStage stage)
    {
        var sets = bench.Fit is null ? [stage.Read] : bench.Sets;
        var readings = sets.Sum(set => set.Readings.Count);
        var heights = sets.Select(set => set.Set.Height).Distinct().OrderBy(height => height.Metres).Select(Plain).ToList();
        var text = $"{readings} {(readings == 1 ? "reading" : "readings")} at {string.Join(" and ", heights)}";
        return bench.Fit is { } fit
            ? $"{text}; the model of the lamps meets them within {Percent(fit.RootMeanSquare)}.{(fit.LeftOut.Count == 0 ? "" : $" {fit.LeftOutWords}.")}"
            : bench.HasLayout ? $"{text}."
            : $"{text}; nobody has laid out the luminaires, so light is taken to follow the photons they send out.";
    }

    /// <summary>A height in both units.</summary>
    /// <param name="height">The height.</param>
    public static string Plain(Length height) => FormattableString.Invariant($"{height.Metres * 100:0} cm ({height.Feet * 12:0} in)");

    /// <summary>A share in percent.</summary>
    /// <param name="share">The share. [unitless]</param>
    public static string Percent(double share) => FormattableString.Invariant($"{share * 100:0} %");

    private static string Height(BenchChange change, Length height) => change.Bench.Fit is null
        ? $"Lay out the luminaires over the bench in {change.Bench.Area.Name}: without that nobody can tell the light at another height."
        : $"Read the light in {change.Bench.Area.Name} with the lamps about {Plain(height)} over the sensor as well: the readings do not reach that height.";
}
