using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Cases;

/// <summary>How light on the crop was counted, where an option changes it.</summary>
internal static class LightRemarks
{
    /// <summary>The remarks of a study; none where no option changes the light of a growing area.</summary>
    /// <param name="context">The study's context.</param>
    public static IEnumerable<string> Of(StudyContext context)
    {
        var study = context.Study;
        var measures = study.Options.SelectMany(option => option.Measures).Where(measure => measure.Measure is DirectWire or ReplaceLuminaire).Select(measure => measure.Line).ToHashSet();
        var converted = study.Lines.Where(line => measures.Contains(line.Id)).Select(line => line.Area).ToHashSet();
        var growing = study.Areas.Where(area => area.GrowsCrop && converted.Contains(area.Id)).ToList();
        if (growing.Where(area => area.Light is not { Readings.Count: > 0 }).Select(area => area.Name).ToList() is { Count: > 0 } unread)
            yield return $"Nobody has read the light in {string.Join(", ", unread)}: whether crops keep it there is not known.";
        if (growing.All(area => area.Light is not { Readings.Count: > 0 }))
            yield break;
        yield return "Light after a change: tubes in the old bodies lose as much in them as the readings show; new luminaires give what they are rated for. Both count new and clean, against what was read.";
        yield return "Light at the end: lamps at their interval, tubes and luminaires at their rated life or the end of the study, dirt as just before a cleaning.";
    }
}
