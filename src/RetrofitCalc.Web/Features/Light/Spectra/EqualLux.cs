using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Light.Spectra;

/// <summary>A change from one lamp to another, as a lux meter and a quantum meter see it.</summary>
/// <param name="Lines">Names of the lines that make it.</param>
/// <param name="Readings">Lux read of the present light there, the highest of all sets; null when read otherwise or not at all. [lx]</param>
public sealed record EqualLux(IReadOnlyList<string> Lines, UsedProduct Before, UsedProduct After, ProductFactor? FactorBefore, ProductFactor? FactorAfter, double? Readings)
{
    /// <summary>The changes of an option, alike ones together.</summary>
    public static IReadOnlyList<EqualLux> Of(Study study, RetrofitOption option) =>
    [
        .. from measure in option.Measures
           let line = study.Lines.FirstOrDefault(line => line.Id == measure.Line)
           where line is not null
           let before = UsedProduct.LampOf(study, line)
           let after = UsedProduct.FittedBy(study, measure.Measure)
           where before is not null && after is not null
           group line by (Before: UsedProduct.Of(before), After: UsedProduct.Of(after)) into change
           select Of(study, [.. change], change.Key.Before, change.Key.After),
    ];

    /// <summary>Photons after over now where a lux meter reads the same, less one; null when a factor is not known. [unitless]</summary>
    public double? Gain => FactorBefore is { } before && FactorAfter is { } after ? before.Factor.PhotonGainAtEqualLux(after.Factor) : null;

    public string Sentence(QuantityText text)
    {
        if (FactorBefore is not { } before) return $"{Where}: not known. Choose the spectrum of {Before.Name} above.";
        if (FactorAfter is not { } after) return $"{Where}: not known. Choose the spectrum of {After.Name} above.";
        var now = $"{Where}: one µmol of {Before.Name} reads {text.Number(before.Factor.LuxPerMicromole, 1)} lx, one of {After.Name} {text.Number(after.Factor.LuxPerMicromole, 1)} lx.";
        if (Math.Abs(Gain!.Value) < SmallestToTell) return $"{now} At the same lux the crop gets the same photons, within one percent.";
        var meter = text.Percent(Math.Abs(1 / (1 + Gain.Value) - 1));
        var (photons, reads) = Gain > 0 ? ("more", $"may read {meter} less") : ("fewer", $"has to read {meter} more");
        return $"{now} At the same lux the crop would get {text.Percent(Math.Abs(Gain.Value))} {photons} photons; for the same photons the lux meter {reads}.{OfReadings(text)}";
    }

    private const double SmallestToTell = 0.01;

    private string Where => string.Join(", ", Lines);

    private string OfReadings(QuantityText text) => Readings is { } lux
        ? $" The {text.Number(lux)} lx read there are {text.Number(lux / FactorBefore!.Factor.LuxPerMicromole)} µmol/m²·s now; the same {text.Number(lux)} lx afterwards would be {text.Number(lux / FactorAfter!.Factor.LuxPerMicromole)}."
        : "";

    private static EqualLux Of(Study study, IReadOnlyList<SurveyLine> lines, UsedProduct before, UsedProduct after) =>
        new([.. lines.Select(line => line.Name)], before, after, ProductFactor.Of(study, before), ProductFactor.Of(study, after), LuxRead(study, lines));

    private static double? LuxRead(Study study, IReadOnlyList<SurveyLine> lines)
    {
        var sets = study.Areas.Where(area => lines.Any(line => line.Area == area.Id)).SelectMany(area => area.Light?.Readings ?? []);
        var values = sets.Where(set => set.Unit == LightUnit.Lux).SelectMany(set => set.Values).SelectMany(row => row).OfType<double>().ToList();
        return values.Count > 0 ? values.Max() : null;
    }
}
