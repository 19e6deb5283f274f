using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>Turns hours by month into dates and windows.</summary>
internal static class HourRuns
{
    private const int Months = 12;
    private const int Hours = 24;
    private const int AllDay = (1 << Hours) - 1;

    /// <summary>Hours of one month, a bit for each.</summary>
    internal readonly record struct Pattern(int Weekday, int Weekend)
    {
        public bool IsEmpty => Weekday == 0 && Weekend == 0;
    }

    /// <summary>When to say, run by run of months with equal hours; a run may cross New Year.</summary>
    public static IEnumerable<TariffHours> Of(Func<int, Pattern> hoursOf)
    {
        Pattern[] months = [.. Enumerable.Range(1, Months).Select(hoursOf)];
        if (months.All(month => month == months[0]))
            return months[0].IsEmpty ? [] : [new() { Windows = Windows(months[0]) }];
        return
            from first in Enumerable.Range(0, Months)
            where months[first] != months[(first + Months - 1) % Months] && !months[first].IsEmpty
            let length = Enumerable.Range(1, Months).First(step => months[(first + step) % Months] != months[first])
            select new TariffHours { Start = new(first + 1, 1), End = LastDay((first + length - 1) % Months + 1), Windows = Windows(months[first]) };
    }

    private static AnnualDate LastDay(int month) => new(month, DateTime.DaysInMonth(2028, month));

    /// <summary>None when the price holds all day on all days.</summary>
    private static IReadOnlyList<TariffWindow> Windows(Pattern hours) => hours switch
    {
        { Weekday: AllDay, Weekend: AllDay } => [],
        _ when hours.Weekday == hours.Weekend => [.. Spans(DayKind.All, hours.Weekday)],
        _ => [.. Spans(DayKind.Weekday, hours.Weekday), .. Spans(DayKind.Weekend, hours.Weekend)],
    };

    private static IEnumerable<TariffWindow> Spans(DayKind days, int hours)
    {
        for (var from = 0; from < Hours; from++)
        {
            if ((hours >> from & 1) == 0)
                continue;
            var to = from + 1;
            while (to < Hours && (hours >> to & 1) != 0)
                to++;
            yield return new(days, new LocalTime(from, 0), to == Hours ? LocalTime.Midnight : new LocalTime(to, 0));
            from = to;
        }
    }
}
