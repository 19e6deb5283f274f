using NodaTime;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.Billing;

/// <summary>One day of a tariff, asked minute by minute.</summary>
internal sealed class SlowDay
{
    private readonly bool _weekend;
    private readonly bool[] _adjustments;

    public SlowDay(Tariff tariff, LocalDate date, BillingMonth month)
    {
        (Tariff, Date) = (tariff, date);
        _weekend = date.DayOfWeek is IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday || tariff.Holidays.Any(holiday => holiday.IsOn(date));
        var season = tariff.SeasonChange switch { SeasonChange.SeasonOfFirstDay => month.First, SeasonChange.SeasonOfLastDay => month.Last, _ => date };
        Energy = [.. tariff.Energy.Select(charge => Holds(charge.When, season))];
        Demand = [.. tariff.Demand.Select(charge => Holds(charge.When, season))];
        _adjustments = [.. tariff.Adjustments.Select(adjustment => Holds(adjustment.When, season))];
    }

    public Tariff Tariff { get; }

    public LocalDate Date { get; }

    public bool[] Energy { get; }

    public bool[] Demand { get; }

    /// <summary>The charge whose window holds the minute, else the one without windows.</summary>
    public int ChargeAt(int minute)
    {
        var rest = -1;
        for (var i = 0; i < Energy.Length; i++)
        {
            if (!Energy[i]) continue;
            if (Tariff.Energy[i].When.Windows.Count == 0) rest = i;
            else if (Within(Tariff.Energy[i].When, minute)) return i;
        }
        return rest;
    }

    public bool Adjusts(int adjustment, int minute) => _adjustments[adjustment] && AtAllHoursOrWithin(Tariff.Adjustments[adjustment].When, minute);

    public bool Counts(int demand, int minute) => Demand[demand] && AtAllHoursOrWithin(Tariff.Demand[demand].When, minute);

    private bool AtAllHoursOrWithin(TariffHours when, int minute) => when.Windows.Count == 0 || Within(when, minute);

    private bool Within(TariffHours when, int minute) => when.Windows.Any(window =>
        (window.Days == DayKind.All || window.Days == DayKind.Weekend == _weekend)
        && minute >= MinuteOf(window.From) && minute < (window.To == LocalTime.Midnight ? 1440 : MinuteOf(window.To)));

    private static int MinuteOf(LocalTime time) => time.Hour * 60 + time.Minute;

    private static bool Holds(TariffHours when, LocalDate day)
    {
        if (when.Start is not { } start || when.End is not { } end) return true;
        var (from, to, at) = (start.Month * 100 + start.Day, end.Month * 100 + end.Day, day.Month * 100 + day.Day);
        return from <= to ? at >= from && at <= to : at >= from || at <= to;
    }
}
