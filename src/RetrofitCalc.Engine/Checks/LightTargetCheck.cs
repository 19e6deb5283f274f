using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>Whether the bounds of what a crop wants can be met at all: in range, and the least no more than the most.</summary>
internal static class LightTargetCheck
{
    /// <summary>Outdoors a day brings 65 mol m⁻² at most: three times as much is a slip of the keyboard.</summary>
    private const double MostMoles = 200;

    public static void Run(Stage stage, string path, Problems problems)
    {
        if (stage.Target is not { } target) return;
        var of = $"of stage \"{stage.Name}\"";
        var (leastDaily, mostDaily) = (target.LeastDaily?.MolesPerSquareMetre, target.MostDaily?.MolesPerSquareMetre);
        problems.InRange($"{path}.LeastDaily", $"Least light of a day {of} (mol m⁻² d⁻¹)", leastDaily, 0, MostMoles);
        problems.InRange($"{path}.MostDaily", $"Most light of a day {of} (mol m⁻² d⁻¹)", mostDaily, 0, MostMoles);
        InOrder($"{path}.MostDaily", $"light of a day {of}", (leastDaily, mostDaily, "mol m⁻² d⁻¹"), problems);
        var (least, most) = (target.LeastLight?.MicromolesPerSquareMetre, target.MostLight?.MicromolesPerSquareMetre);
        problems.InRange($"{path}.LeastLight", $"Least light {of} (µmol m⁻² s⁻¹)", least, 0, LightCheck.MostMicromoles);
        problems.InRange($"{path}.MostLight", $"Most light {of} (µmol m⁻² s⁻¹)", most, 0, LightCheck.MostMicromoles);
        InOrder($"{path}.MostLight", $"light {of}", (least, most, "µmol m⁻² s⁻¹"), problems);
        problems.InRange($"{path}.FewestHours", $"Fewest lit hours of a day {of}", target.FewestHours?.Hours, 0, 24);
        problems.InRange($"{path}.MostHours", $"Most lit hours of a day {of}", target.MostHours?.Hours, 0, 24);
        InOrder($"{path}.MostHours", $"lit hours of a day {of}", (target.FewestHours?.Hours, target.MostHours?.Hours, "h"), problems);
    }

    private static void InOrder(string path, string what, (double? Least, double? Most, string Unit) bounds, Problems problems)
    {
        if (bounds.Least > bounds.Most)
            problems.Add(path, $"At most {Problems.Text(bounds.Most.Value)} {bounds.Unit}, but at least {Problems.Text(bounds.Least.Value)} {bounds.Unit} are wanted as {what}; the first must be the higher.");
    }
}
