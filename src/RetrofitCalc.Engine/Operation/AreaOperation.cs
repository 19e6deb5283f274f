using NodaTime;
using RetrofitCalc.Engine.Heat;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Operation;

/// <summary>An area's year of light.</summary>
public sealed class AreaOperation
{
    private readonly double _yearHours;
    private double[]? _modeHours;

    /// <summary>Works out when the area is lit.</summary>
    /// <param name="area">The area.</param>
    /// <param name="year">The year at the site's clock.</param>
    /// <param name="plant">What the area's plant does through the year; null where light alone is asked about.</param>
    public AreaOperation(Area area, SiteYear year, PlantHours? plant = null)
    {
        Area = area;
        Plant = plant?.Plant ?? new();
        var spells = LitSpells.Of(area, year);
        Spells = plant?.Cut(spells) ?? spells;
        Modes = [.. Spells.Select(spell => spell.Mode).Distinct()];
        Hours = OperatingTime.FromHours(Spells.Sum(spell => spell.Hours));
        Starts = CountStarts(Spells, year);
        _yearHours = (year.End - year.Start) / (double)NodaConstants.SecondsPerHour;
    }

    /// <summary>The area.</summary>
    public Area Area { get; }

    /// <summary>Its cooling and heating; none where light alone was asked about.</summary>
    public PlantInteraction Plant { get; }

    /// <summary>Lit spells in order, cut where the plant changes what it does.</summary>
    public IReadOnlyList<LitSpell> Spells { get; }

    /// <summary>Ways in which it is lit, in order of first use.</summary>
    public IReadOnlyList<LitMode> Modes { get; }

    /// <summary>Hours of the year in each of <see cref="Modes"/>, in order. [h]</summary>
    public IReadOnlyList<double> ModeHours => _modeHours ??= ByMode();

    /// <summary>Hours lit in the year.</summary>
    public OperatingTime Hours { get; }

    /// <summary>Times the lights come on in the year; a light burning over New Year or on into the next spell is not switched on. [count]</summary>
    public int Starts { get; }

    /// <summary>How a line here is used.</summary>
    /// <param name="hoursFactor">Factor on hours. [unitless, above 0]</param>
    public LineOperation LineOperation(double hoursFactor)
    {
        var hours = Hours * PossibleFactor(hoursFactor);
        return new(hours, Starts, Starts > 0 ? hours.Hours / Starts : hours.Hours);
    }

    /// <summary>A factor on hours, cut where the lights would burn all year: no light burns longer.</summary>
    /// <param name="hoursFactor">Factor on hours. [unitless, above 0]</param>
    public double PossibleFactor(double hoursFactor) =>
        Hours.Hours * hoursFactor > _yearHours ? Math.Max(1, _yearHours / Hours.Hours) : hoursFactor;

    private double[] ByMode()
    {
        var hours = Modes.ToDictionary(mode => mode, _ => 0.0);
        foreach (var spell in Spells)
            hours[spell.Mode] += spell.Hours;
        return [.. Modes.Select(mode => hours[mode])];
    }

    private static int CountStarts(IReadOnlyList<LitSpell> spells, SiteYear year)
    {
        var starts = 0;
        // The year wraps: lights burning at its end were burning at its start.
        var litUntil = spells.Count > 0 && spells[^1].End == year.End ? year.Start : year.Start - 1;
        foreach (var spell in spells)
        {
            if (spell.Start > litUntil)
                starts++;
            litUntil = spell.End;
        }
        return starts;
    }
}
