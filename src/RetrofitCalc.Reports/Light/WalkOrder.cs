using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>The way along a grid on foot: one row from left to right, the next one back; lines outwards each from the middle.</summary>
public static class WalkOrder
{
    public static IReadOnlyList<(int Row, int Column)> Of(ReadingSet set) =>
    [
        .. from row in Enumerable.Range(0, set.Rows.Count)
           from step in Enumerable.Range(0, set.Columns.Count)
           select (row, row % 2 == 0 || set.Pattern == ReadingPattern.Outwards ? step : set.Columns.Count - 1 - step),
    ];

    /// <summary>The first place where nothing was read; the first of all where nothing is missing.</summary>
    public static int FirstBlank(ReadingSet set)
    {
        var order = Of(set);
        for (var step = 0; step < order.Count; step++)
            if (set.Values[order[step].Row][order[step].Column] is null) return step;
        return 0;
    }
}
