using NodaTime;
using RetrofitCalc.Engine.Checks;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>What the hours of light mean to a crop that answers to the length of the day (S-77).</summary>
public static class DayLengthWarnings
{
    /// <summary>Light at night that counts as day for a plant: long-day lighting needs 2–3 µmol m⁻² s⁻¹ (MSU Extension). [µmol m⁻² s⁻¹]</summary>
    public static PhotonFluxDensity CountsAsDay { get; } = PhotonFluxDensity.FromMicromolesPerSquareMetre(2);

    /// <summary>Hours from which a day counts as long where no limit is given. [h]; common practice, no source.</summary>
    private const double LongDay = 14;

    /// <summary>Hours up to which a day counts as short where no limit is given. [h]; common practice, no source.</summary>
    private const double ShortDay = 12;

    /// <summary>When lamps are lit to break a night (MSU Extension).</summary>
    private static readonly LitClock NightBreak = new(new(22, 0), new(2, 0));

    /// <summary>Warnings for one stage; none without a target.</summary>
    /// <param name="study">Gives the other areas and the year.</param>
    /// <param name="area">The area.</param>
    /// <param name="season">The season.</param>
    /// <param name="stage">The stage, with the hours to look at.</param>
    public static IReadOnlyList<string> Of(Study study, Area area, Season season, Stage stage)
    {
        if (stage.Target is not { } target) return [];
        var lit = new LitClock(stage.LightsOn, stage.LightsOff);
        return [.. Hours(target, lit.Hours), .. Sensitive(target, lit), .. StrayOnto(study, (area, season, stage), lit)];
    }

    private static IEnumerable<string> Hours(LightTarget target, double lit)
    {
        if (target.MostHours is { } most && lit > most.Hours)
            yield return target.DayLength == DayLengthResponse.ShortDay
                ? $"Lit {Text(lit)} h a day; it needs short days, {Text(most.Hours)} h at most."
                : $"Lit {Text(lit)} h a day; it bears {Text(most.Hours)} h.";
        if (target.FewestHours is { } fewest && lit < fewest.Hours)
            yield return $"Lit {Text(lit)} h a day; it wants {Text(fewest.Hours)} h or more.";
        if (target is { MostHours: null, DayLength: DayLengthResponse.ShortDay } && lit > ShortDay)
            yield return $"Lit {Text(lit)} h a day; it needs short days, and nobody has said how short.";
        if (target is { MostHours: null, DayLength: DayLengthResponse.LongDay } && lit >= LongDay)
            yield return $"Lit {Text(lit)} h a day; long days change its growth, such as bolting or flowering.";
    }

    private static IEnumerable<string> Sensitive(LightTarget target, LitClock lit)
    {
        if (target.DayLength == DayLengthResponse.ShortDay && lit.Meets(NightBreak))
            yield return "Lit between 22:00 and 02:00: where daylight reaches the plants as well, this breaks their night.";
        if (target is { LeastDaily: not null, DayLength: DayLengthResponse.ShortDay or DayLengthResponse.LongDay })
            yield return "Do not make up for lost light with more hours: it answers to the length of the day.";
    }

    private static IEnumerable<string> StrayOnto(Study study, (Area Area, Season Season, Stage Stage) here, LitClock lit)
    {
        if (here.Stage.Target!.DayLength != DayLengthResponse.ShortDay) yield break;
        foreach (var other in study.Areas.Where(area => area.Id != here.Area.Id))
        {
            var strays = other.Light?.Stray.Where(stray => stray.Onto == here.Area.Id && stray.Light >= CountsAsDay).ToList() ?? [];
            if (strays.Count == 0 || Worst(study, other, here, lit) is not { } reaching) continue;
            yield return $"Light from {other.Name} reaches it: {Text(strays.Max(stray => stray.Light.MicromolesPerSquareMetre))} µmol m⁻² s⁻¹, "
                + $"lit {CheckText.Time(reaching.On)} to {CheckText.Time(reaching.Off)}, {Text(reaching.MinutesOutside(lit) / 60.0)} h of that in its dark. Two to three are enough to spoil short days.";
        }
    }

    /// <summary>The other area's spell that reaches furthest into the dark, on the days of the stage; null when none does.</summary>
    private static LitClock? Worst(Study study, Area other, (Area Area, Season Season, Stage Stage) here, LitClock lit)
    {
        LitClock? worst = null;
        foreach (var spell in StageDays.Of(here, study.Assumptions.Start.Year).SelectMany(day => StageDays.Spells(other, day)).Distinct())
            if (spell.MinutesOutside(lit) > (worst?.MinutesOutside(lit) ?? 0)) worst = spell;
        return worst;
    }

    private static string Text(double number) => Problems.Text(Math.Round(number, 1));
}
