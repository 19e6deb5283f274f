using System.Globalization;
using RetrofitCalc.Engine.Operation;

namespace RetrofitCalc.Web.Features.Schedules;

/// <summary>Where things stand on a year strip: 365 days across, 24 hours down. Lengths in the drawing's own units, a pixel at full size.</summary>
public sealed class YearStripDrawing(IReadOnlyList<CalendarDay> days, int width)
{
    public const int PlotTop = 24;
    public const int PlotHeight = 96;
    private const int Gutter = 34;
    private const int NarrowestName = 7;

    public int Width => width;

    public static int Height => PlotTop + PlotHeight + 20;

    public double PlotLeft => Gutter;

    public double PlotWidth => width - Gutter - 1;

    /// <summary>Lit rectangles; equal days in a row are one.</summary>
    public IEnumerable<Box> Lit =>
        from run in DayRun.Of(days, (a, b) => a.Spans.SequenceEqual(b.Spans))
        from span in run.Spans
        select new Box(X(run.Start), Y(span.StartMinute), run.Count * DayWidth, Y(span.EndMinute) - Y(span.StartMinute), "");

    /// <summary>Seasons, with their names where there is room.</summary>
    public IEnumerable<Box> Seasons => DayRun.Of(days, (a, b) => a.Season == b.Season).Where(r => r.Season is not null)
        .Select(r => new Box(X(r.Start), PlotTop - 4, r.Count * DayWidth, 0, Fitting(r.Season!, r.Count * DayWidth)));

    public IEnumerable<Box> Months => DayRun.Of(days, (a, b) => a.Date.Month == b.Date.Month)
        .Select(r => new Box(X(r.Start), PlotTop, r.Count * DayWidth, PlotHeight, MonthName(r.First.Month)));

    public static IEnumerable<(double Y, string Text)> HourMarks => new[] { 0, 6, 12, 18, 24 }.Select(h => (Y(h * 60), h.ToString(CultureInfo.InvariantCulture)));

    /// <summary>A length as markup needs it, whatever the machine's culture.</summary>
    public static string Px(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private double DayWidth => PlotWidth / days.Count;

    private double X(int day) => Gutter + (day * DayWidth);

    private static double Y(int minute) => PlotTop + (PlotHeight * minute / 1440.0);

    private string MonthName(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName(month)[..(width < 600 ? 1 : 3)];

    private static string Fitting(string name, double room)
    {
        var letters = (int)(room / NarrowestName);
        return letters >= name.Length ? name : letters > 4 ? name[..(letters - 1)] + "…" : "";
    }
}

/// <summary>A rectangle with a name.</summary>
public readonly record struct Box(double X, double Y, double Width, double Height, string Name);
