using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>Stages that an option lights in another way.</summary>
internal static class StageChangeCheck
{
    public static void Run(Study study, RetrofitOption option, string path, Problems problems)
    {
        var named = new HashSet<(string, string, string)>();
        foreach (var (number, change) in option.Stages.Index())
        {
            var at = $"{path}[{number}]";
            problems.InRange($"{at}.Dimming", $"Dimming level of stage \"{change.Stage}\" under option \"{option.Name}\"", change.Dimming, 0.01, 1);
            if (Missing(study, option, change, at) is { } missing)
                problems.Add(missing.Path, missing.Message);
            else if (!named.Add((change.Area, change.Season, change.Stage)))
                problems.Add($"{at}.Stage", $"Option \"{option.Name}\" changes stage \"{change.Stage}\" of {change.Season} in area \"{change.Area}\" twice; name it once.");
        }
    }

    private static StudyProblem? Missing(Study study, RetrofitOption option, StageChange change, string path)
    {
        if (study.Areas.FirstOrDefault(area => area.Id == change.Area) is not { } area)
            return new($"{path}.Area", $"Option \"{option.Name}\" lights area \"{change.Area}\" in another way, but the study has no such area.");
        if (!area.GrowsCrop || area.Seasons.FirstOrDefault(season => season.Name == change.Season) is not { } season)
            return new($"{path}.Season", $"Option \"{option.Name}\" names season \"{change.Season}\", which {area.Name} does not have.");
        if (season.Stages.All(stage => stage.Name != change.Stage))
            return new($"{path}.Stage", $"Option \"{option.Name}\" names stage \"{change.Stage}\", which {change.Season} of {area.Name} does not have.");
        return change.LitStep is { Length: > 0 } step && !HasStep(study, area, step)
            ? new($"{path}.LitStep", $"Option \"{option.Name}\" names the step \"{step}\", which no luminaire of {area.Name} has.")
            : null;
    }

    private static bool HasStep(Study study, Area area, string step)
    {
        var setUps = study.Lines.Where(line => line.Area == area.Id).Select(line => line.SetUp).ToHashSet();
        return study.Catalogue.SetUps.Any(setUp => setUps.Contains(setUp.Id) && setUp.Steps.Any(known => known.Name == step));
    }
}
