using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Options;

/// <summary>How an option lights a stage in another way, in words.</summary>
public static class StageChangeText
{
    /// <summary>Area, season and stage; the area by its id where the study has none of it.</summary>
    public static string Place(Study study, StageChange change) =>
        $"{study.Areas.FirstOrDefault(area => area.Id == change.Area)?.Name ?? change.Area}, {change.Season}, {change.Stage}";

    public static string What(StageChange change, QuantityText text)
    {
        string?[] parts =
        [
            change.LightsOn is { } on ? FormattableString.Invariant($"lights on at {on:HH:mm}") : null,
            change.LightsOff is { } off ? FormattableString.Invariant($"lights off at {off:HH:mm}") : null,
            change.LitStep switch { null => null, "" => "all lamps", var step => step },
            change.Dimming is { } level ? $"level {text.Percent(level)}" : null,
        ];
        var said = parts.OfType<string>().ToList();
        return said.Count == 0 ? "as now" : string.Join(", ", said);
    }
}
