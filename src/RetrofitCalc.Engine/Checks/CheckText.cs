using NodaTime;

namespace RetrofitCalc.Engine.Checks;

/// <summary>Dates and times in messages, the same in every culture.</summary>
internal static class CheckText
{
    public static string Time(LocalTime time) => $"{time.Hour:00}:{time.Minute:00}";

    public static string Tick(long tickOfDay) => tickOfDay >= NodaConstants.TicksPerDay ? "24:00" : Time(LocalTime.FromTicksSinceMidnight(tickOfDay));

    public static string Day(LocalDate day) => $"{day.Day} {MonthName(day.Month)}";

    public static string Date(LocalDate day) => FormattableString.Invariant($"{Day(day)} {day.Year}");

    private static string MonthName(int month) => month switch
    {
        1 => "January", 2 => "February", 3 => "March", 4 => "April", 5 => "May", 6 => "June",
        7 => "July", 8 => "August", 9 => "September", 10 => "October", 11 => "November", _ => "December",
    };
}
