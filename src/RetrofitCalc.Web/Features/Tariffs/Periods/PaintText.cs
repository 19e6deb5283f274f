using RetrofitCalc.Engine.Billing;

namespace RetrofitCalc.Web.Features.Tariffs.Periods;

/// <summary>Words about painting.</summary>
public static class PaintText
{
    public static string Finding(HourTable table)
    {
        var claims = (from weekend in new[] { false, true } from month in Enumerable.Range(1, 12) from hour in Enumerable.Range(0, 24) select table.At(weekend, month, hour).Count).ToList();
        return (claims.Contains(0), claims.Any(c => c > 1)) switch
        {
            (false, false) => "Each hour of the year has one price",
            (true, false) => "Some hours have no price",
            (false, true) => "Some hours have more than one price",
            _ => "Some hours have no price, and some more than one",
        };
    }

    /// <summary>The painting as the undo button names it: "Summer on-peak, Jun to Sep, 12 to 18".</summary>
    public static string Of(Painting painting, string period) =>
        $"{period}, {HoursText.Days(painting.Days)}, {HoursText.ShortMonth(painting.Months.First)} to {HoursText.ShortMonth(painting.Months.Last)}, {painting.Hours.First} to {painting.Hours.Last + 1}";

    /// <summary>What a painting took the last hour from.</summary>
    public static string Gone(PeriodMarks before, PeriodMarks after)
    {
        var gone = before.Periods.Select(p => p.Price.Name).Except(after.Periods.Select(p => p.Price.Name)).ToList();
        return gone.Count == 0 ? "" : $"{string.Join(" and ", gone)} {(gone.Count == 1 ? "has" : "have")} no hours left and {(gone.Count == 1 ? "leaves" : "leave")} the tariff. Undo brings {(gone.Count == 1 ? "it" : "them")} back.";
    }

    /// <summary>Place of a period by name; of the newest without one.</summary>
    public static int Find(PeriodMarks marks, string? name) =>
        name is null ? marks.Periods.Count - 1 : marks.Periods.ToList().FindIndex(p => p.Price.Name == name);
}
