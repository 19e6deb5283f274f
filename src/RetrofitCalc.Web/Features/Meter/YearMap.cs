using System.Globalization;
using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Charts;

namespace RetrofitCalc.Web.Features.Meter;

/// <summary>The load of every hour of the year: days one way, hours the other, darker where it is higher.</summary>
public static class YearMap
{
    private const char Unknown = '.';
    private const char Export = '-';
    private static readonly Ink[] Shades = [Ink.Shade1, Ink.Shade2, Ink.Shade3, Ink.Shade4, Ink.Shade5, Ink.Shade6, Ink.Shade7];

    public static ChartFigure Of(MeterHours hours, QuantityText text)
    {
        var steps = ShadeSteps.Of(hours);
        var (finding, spoken) = Words(hours, text);
        return new ChartFigure(finding,
            "Load of the whole meter in each hour of the local clock, days along, hours of the day across: the stronger the shade, the higher the load. Filled hours are struck through, unknown ones dotted.",
            spoken, Spec(hours, steps), Twin(hours, text))
        {
            Legend = [.. Shades.Take(steps.Count).Select((shade, i) => new ChartKey(shade, steps.Name(i, text)))],
        };
    }

    private static (string Finding, string Spoken) Words(MeterHours hours, QuantityText text)
    {
        if (hours.Highest() is not { } top) return ("Nothing is known of this year", "No reading is known.");
        var known = hours.Places().Select(p => hours.Cells[p.Day, p.Hour].Watts).OfType<double>().Order().ToList();
        var median = Power.FromWatts(known[known.Count / 2]);
        var finding = $"The highest hour is {text.Kilowatts(Power.FromWatts(top.Watts))}, on {text.Date(top.At.Date)} at {Clock(top.At.Hour)}; half of all hours stay below {text.Kilowatts(median)}";
        var months = hours.ByMonth().Select(month => (month.Month, Mean: month.Watts.Average() ?? 0)).ToList();
        var (high, low) = (months.MaxBy(m => m.Mean), months.MinBy(m => m.Mean));
        return (finding, $"{finding}. {text.Month(high.Month.OnDayOfMonth(1))} is the month of the highest load, {text.Kilowatts(Power.FromWatts(high.Mean))} on average, {text.Month(low.Month.OnDayOfMonth(1))} that of the lowest, {text.Kilowatts(Power.FromWatts(low.Mean))}.");
    }

    private static ChartSpec Spec(MeterHours hours, ShadeSteps steps) => new(ChartKind.YearMap, [])
    {
        Cells = string.Concat(hours.Places().Select(place => Sign(hours.Cells[place.Day, place.Hour], steps))),
        Across = new ChartAxis(0, hours.Days, [.. MonthStarts(hours)]),
        Up = new ChartAxis(0, MeterHours.HoursOfDay, [.. new[] { 0, 6, 12, 18, 24 }.Select(hour => new ChartTick(hour, [Clock(hour)]))]),
    };

    /// <summary>A digit is a shade; a letter the same shade of a filled hour.</summary>
    private static char Sign(MeterHours.Cell cell, ShadeSteps steps) => cell.Watts switch
    {
        null => Unknown,
        < 0 => Export,
        { } watts => (char)((cell.Filled ? 'a' : '0') + steps.IndexOf(watts)),
    };

    private static IEnumerable<ChartTick> MonthStarts(MeterHours hours) =>
        from day in Enumerable.Range(0, hours.Days)
        let date = hours.First.PlusDays(day)
        where date.Day == 1
        select new ChartTick(day, [CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName(date.Month)]);

    private static ChartTable Twin(MeterHours hours, QuantityText text)
    {
        var months = hours.ByMonth();
        string Kilowatts(double? watts) => watts is { } known ? text.Number(known / 1000, 1) : QuantityText.NotKnown;
        return new ChartTable(["Hour, average kW", .. months.Select(m => text.Month(m.Month.OnDayOfMonth(1)))],
            [.. Enumerable.Range(0, MeterHours.HoursOfDay).Select(hour => (IReadOnlyList<string>)[$"{Clock(hour)}–{Clock(hour + 1)}", .. months.Select(m => Kilowatts(m.Watts[hour]))])]);
    }

    private static string Clock(int hour) => hour.ToString("00", CultureInfo.InvariantCulture) + ":00";
}
