using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>Dates and windows in which a charge applies.</summary>
internal static class TariffHoursCheck
{
    public static void Run(TariffHours when, (string Name, string Path) charge, int stepMinutes, Problems problems)
    {
        if (when.Start is null != when.End is null)
            problems.Add($"{charge.Path}.When", $"\"{charge.Name}\" has only one of first and last day; give both, or neither for all year.");
        foreach (var (number, window) in when.Windows.Index())
        {
            var (place, hours) = ($"{charge.Path}.When.Windows[{number}]", $"A window of \"{charge.Name}\" runs from {CheckText.Time(window.From)} to {CheckText.Time(window.To)}");
            if (window.To != LocalTime.Midnight && window.To <= window.From)
                problems.Add(place, $"{hours}; it must end later than it begins. Split one that runs past midnight in two.");
            if (!IsWhole(window.From, stepMinutes) || !IsWhole(window.To, stepMinutes))
                problems.Add(place, $"{hours}; it must begin and end on whole {(stepMinutes == 1 ? "minutes" : $"averaging windows of {stepMinutes} minutes")}.");
        }
    }

    private static bool IsWhole(LocalTime time, int minutes) => time.TickOfDay % (minutes * NodaConstants.TicksPerMinute) == 0;
}
