using NodaTime;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Heat;

/// <summary>What the plant of one area does through the year, hour by hour (E-27).</summary>
public sealed class PlantHours
{
    private readonly List<(long Start, PlantMode Mode)> _runs = [];

    /// <summary>Looks at each hour of a year.</summary>
    /// <param name="plant">Plant of the area.</param>
    /// <param name="weather">The study's weather year; needed by the hour only.</param>
    /// <param name="year">The year at the site's clock.</param>
    /// <exception cref="ArgumentException">The method needs a weather year.</exception>
    public PlantHours(PlantInteraction plant, WeatherYear? weather, SiteYear year)
    {
        Plant = plant;
        if (plant.Method != PlantMethod.Hourly)
        {
            _runs.Add((year.Start, PlantMode.AllHours));
            return;
        }
        var air = new OutdoorAir(weather ?? throw new ArgumentException("The hourly method needs a weather year.", nameof(weather)));
        for (var hour = air.HourStart(year.Start); hour < year.End; hour += NodaConstants.SecondsPerHour)
        {
            var mode = ModeAt(plant, air.At(hour));
            if (_runs.Count == 0 || _runs[^1].Mode != mode)
                _runs.Add((hour, mode));
        }
    }

    /// <summary>The plant.</summary>
    public PlantInteraction Plant { get; }

    /// <summary>What the plant does at an outdoor temperature.</summary>
    /// <param name="plant">The plant.</param>
    /// <param name="outdoor">Dry-bulb temperature. [°C]</param>
    /// <remarks>From the cooling balance on outdoor air no longer carries the lights' heat away by itself; an economiser does so up to its limit.</remarks>
    public static PlantMode ModeAt(PlantInteraction plant, double outdoor) =>
        outdoor < plant.HeatingBalance ? PlantMode.Heating
        : outdoor >= plant.CoolingBalance && !(outdoor <= plant.EconomiserLimit) ? PlantMode.Cooling
        : PlantMode.Neither;

    /// <summary>Cuts lit spells where the plant changes what it does, each piece with what it does.</summary>
    /// <param name="spells">Spells in order, within the year.</param>
    public IReadOnlyList<LitSpell> Cut(IReadOnlyList<LitSpell> spells)
    {
        if (_runs.Count == 1 && _runs[0].Mode == PlantMode.AllHours)
            return spells;
        var cut = new List<LitSpell>();
        var run = 0;
        foreach (var spell in spells)
        {
            while (EndOf(run) <= spell.Start)
                run++;
            for (var at = run; at < _runs.Count && _runs[at].Start < spell.End; at++)
                cut.Add(new(Math.Max(spell.Start, _runs[at].Start), Math.Min(spell.End, EndOf(at)), spell.Mode with { Plant = _runs[at].Mode }));
        }
        return cut;
    }

    private long EndOf(int run) => run + 1 < _runs.Count ? _runs[run + 1].Start : long.MaxValue;
}
