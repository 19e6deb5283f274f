using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Carbon;

/// <summary>Lamps that an option takes out, and the mercury in them (E-29).</summary>
/// <param name="Lamps">Lamps taken out. [count]</param>
/// <param name="MercuryGrams">Mercury in those whose content is known. [g]</param>
/// <param name="Unknown">Lamps whose content is not known. [count]</param>
public sealed record RetiredLamps(double Lamps, double MercuryGrams, double Unknown)
{
    /// <summary>Lamps an option takes out once, at the change. Lamps replaced later, with or without it, are not among them.</summary>
    /// <param name="study">The study.</param>
    /// <param name="option">The option; a line whose measure is refused keeps its lamps.</param>
    public static RetiredLamps Of(Study study, OptionResult option)
    {
        var (lamps, grams, unknown) = (0.0, 0.0, 0.0);
        var refused = option.Refused.Select(refusal => refusal.Line).ToHashSet();
        var counted = option.After.Lines.Select(line => line.Line).ToHashSet();
        foreach (var (line, measure) in option.Option.Measures.Select(change => (Line: study.Lines.FirstOrDefault(line => line.Id == change.Line), change.Measure)))
        {
            if (line is not { Count: { } luminaires } || measure is KeepAsIs || refused.Contains(line.Id) || !counted.Contains(line.Id))
                continue;
            var setUp = study.Catalogue.SetUps.First(entry => entry.Id == line.SetUp);
            var retired = (double)luminaires * setUp.LampCount;
            lamps += retired;
            if (study.Catalogue.Lamps.First(lamp => lamp.Id == setUp.Lamp).MercuryMilligrams is { } milligrams)
                grams += MercuryIn(retired, milligrams);
            else
                unknown += retired;
        }
        return new(lamps, grams, unknown);
    }

    /// <summary>Mercury in lamps of one kind. [g]</summary>
    /// <param name="lamps">Lamps. [count]</param>
    /// <param name="milligramsEach">Mercury in each. [mg]</param>
    public static double MercuryIn(double lamps, double milligramsEach) => lamps * milligramsEach / 1000;
}
