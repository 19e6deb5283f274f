using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Shared.Fields;

namespace RetrofitCalc.Web.Features.Schedules;

/// <summary>Switching steps the set-ups of an area have.</summary>
public static class LitSteps
{
    /// <summary>Stands for the full step, which every set-up has.</summary>
    public const string AllLamps = "";

    public static IReadOnlyList<Choice<string>> In(Study study, string areaId, string? present)
    {
        var setUps = study.Lines.Where(l => l.Area == areaId).Select(l => l.SetUp).ToHashSet();
        var names = study.Catalogue.SetUps.Where(s => setUps.Contains(s.Id)).SelectMany(s => s.Steps).Select(s => s.Name).Distinct().ToList();
        List<Choice<string>> choices = [new(AllLamps, "all lamps"), .. names.Select(n => new Choice<string>(n, n))];
        if (present is not null && !names.Contains(present)) choices.Add(new(present, $"{present} (no set-up here has it)"));
        return choices;
    }
}
