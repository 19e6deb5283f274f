using RetrofitCalc.Engine.Billing;

namespace RetrofitCalc.Web.Features.Tariffs.Periods;

/// <summary>One hour of one month as the painter shows it.</summary>
/// <param name="Mark">Letter of the period; a question mark for a gap, letters joined for an overlap.</param>
/// <param name="Ground">Class of its ground.</param>
/// <param name="Words">The same for a screen reader.</param>
public readonly record struct HourCell(string Mark, string Ground, string Words);

/// <summary>The cells of one kind of day, January and midnight first.</summary>
public static class PaintCells
{
    public static IReadOnlyList<HourCell> Of(HourTable table, PeriodMarks marks, bool weekend) =>
        [.. from month in Enumerable.Range(1, 12) from hour in Enumerable.Range(0, 24) select Of(table.At(weekend, month, hour), marks, $"{HoursText.Month(month)}, {hour} to {hour + 1}: ")];

    private static HourCell Of(IReadOnlyList<int> claims, PeriodMarks marks, string when) => claims switch
    {
        [] => new("?", "gap", when + "no price"),
        [var period] => new(PeriodMarks.Letter(period), marks.Shade(period), when + marks.Name(period)),
        _ => new(string.Concat(claims.Select(PeriodMarks.Letter)), "overlap", when + string.Join(" and ", claims.Select(marks.Name)) + ", an overlap"),
    };
}
