using RetrofitCalc.Engine.Heat;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Cases;

/// <summary>How cooling and heating were counted, in plain sentences: one for each kind of plant.</summary>
internal static class PlantRemarks
{
    /// <summary>The remarks of a study.</summary>
    /// <param name="context">The study's context.</param>
    public static IEnumerable<string> Of(StudyContext context)
    {
        var kinds = context.LitAreas.Where(area => area.Area.HeatInSpace > 0).GroupBy(area => area.Plant).ToList();
        foreach (var kind in kinds)
        {
            var where = kinds.Count == 1 ? "" : $" of {string.Join(", ", kind.Select(area => area.Area.Name))}";
            yield return Of(kind.Key, where, [.. kind], context.Study.Weather);
        }
        if (kinds.Count == 0)
            yield return Uncooled("");
        if (kinds.Any(kind => kind.Key.LatentShare > 0))
            yield return "Plants turn part of the lights' heat into moisture. The total is unchanged, and taking it out counts as cooling; the share is the user's own, as published figures lie far apart.";
    }

    private static string Of(PlantInteraction plant, string where, IReadOnlyList<AreaOperation> areas, WeatherYear? weather) => plant.Method switch
    {
        PlantMethod.Shares when plant is { CooledShare: 0, HeatedShare: 0 } => Uncooled(where),
        PlantMethod.Shares => $"Cooling and heating{where} follow the lights' heat by shares of the lit hours, billed in the same hours; this is an average, not an hourly simulation.",
        PlantMethod.InteractionFactors => FormattableString.Invariant(
            $"Cooling and heating{where} follow interaction factors ({plant.InteractionBuilding ?? "no source given"}): of each lighting kWh saved {plant.InteractionFactor:0.##} kWh of electricity is kept. They are averages of a year, spread evenly over the lit hours."),
        PlantMethod.Hourly => Hourly(where, areas, weather!),
        _ => $"The heat of the lights{where} is cooled away whenever they burn, as in a sealed room; it saves no heating.",
    };

    private static string Hourly(string where, IReadOnlyList<AreaOperation> areas, WeatherYear weather)
    {
        double Hours(PlantMode mode) => areas.Sum(area => area.Spells.Where(spell => spell.Mode.Plant == mode).Sum(spell => spell.Hours));
        var lit = areas.Sum(area => area.Hours.Hours);
        return FormattableString.Invariant(
            $"Cooling and heating{where} follow the outdoor air of {weather.Name} hour by hour: of {lit:#,##0} lit hours, {Hours(PlantMode.Cooling):#,##0} are cooled and {Hours(PlantMode.Heating):#,##0} heated. One year of weather stands for every year.");
    }

    private static string Uncooled(string where) => where.Length == 0
        ? "The site counts as neither cooled nor heated: no plant electricity or fuel follows the lights."
        : $"The lights{where} count as neither cooled nor heated: no plant electricity or fuel follows them.";
}
