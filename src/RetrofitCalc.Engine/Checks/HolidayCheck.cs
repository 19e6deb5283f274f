using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>Rules of holidays, of tariffs and weekly schedules alike.</summary>
internal static class HolidayCheck
{
    public static void Run(IReadOnlyList<Holiday> holidays, string path, Problems problems)
    {
        foreach (var (index, holiday) in holidays.Index())
            switch (holiday)
            {
                case WeekdayHoliday weekday:
                    CheckWeekday(weekday, $"{path}[{index}]", problems);
                    break;
                case EasterHoliday(var days):
                    problems.InRange($"{path}[{index}].DaysAfter", "Days after Easter Sunday", days, -60, 60);
                    break;
            }
    }

    private static void CheckWeekday(WeekdayHoliday holiday, string path, Problems problems)
    {
        if (holiday.Nth is not (-1 or (>= 1 and <= 4)))
            problems.Add($"{path}.Nth", $"A holiday falls on weekday number {holiday.Nth} of its month; it must be 1 to 4, or −1 for the last.");
        if (holiday.Weekday is < IsoDayOfWeek.Monday or > IsoDayOfWeek.Sunday)
            problems.Add($"{path}.Weekday", "A holiday has no day of the week.");
        problems.InRange($"{path}.Month", "Month of a holiday", holiday.Month, 1, 12);
        problems.InRange($"{path}.DaysAfter", "Days after the weekday of a holiday", holiday.DaysAfter, -7, 7);
    }
}
