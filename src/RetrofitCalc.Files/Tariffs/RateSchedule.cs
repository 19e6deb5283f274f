using RetrofitCalc.Engine.Billing;

namespace RetrofitCalc.Files.Tariffs;

/// <summary>Which period holds when: weekday and weekend tables, or twelve months.</summary>
internal static class RateSchedule
{
    /// <summary>The two tables whose names begin alike; null when misshapen or missing, which is in the log.</summary>
    public static HourCells? Hours(RecordNode root, string kind, int periods)
    {
        var weekday = root.Find($"{kind}weekdayschedule");
        var weekend = root.Find($"{kind}weekendschedule");
        if (weekday is null && weekend is null && periods == 1)
            return Everywhere(0);
        if (weekday is not { } onWeekdays || weekend is not { } onWeekends)
        {
            root.Log.Wrong((weekday ?? weekend ?? root).Path, $"needs \"{kind}{(weekday is null ? "weekday" : "weekend")}schedule\" to say when each period holds");
            return null;
        }
        root.Log.Used(onWeekdays.Path, "Hours of the periods, Monday to Friday.");
        root.Log.Used(onWeekends.Path, "Hours of the periods, weekends and holidays.");
        return Rows(onWeekdays, periods) is { } one && Rows(onWeekends, periods) is { } other ? HourCells.FromRows(one, other) : null;
    }

    /// <summary>Periods by month; null when misshapen or missing, which is in the log.</summary>
    public static HourCells? Months(RecordNode root, string name, int periods)
    {
        if (root.Find(name) is not { } node)
        {
            if (periods == 1)
                return Everywhere(0);
            root.Log.Wrong("$", $"needs \"{name}\" to say when each period holds");
            return null;
        }
        root.Log.Used(node.Path, "Months of the periods.");
        return node.Just(12) is { } months && Places(months, periods) is { } places ? Rows([.. places.Select(Row)]) : null;
    }

    /// <summary>The same cells, but only in some months.</summary>
    public static HourCells Only(HourCells cells, Func<int, bool> month)
    {
        IReadOnlyList<IReadOnlyList<int>> Masked(bool weekend) =>
            [.. cells.Rows(weekend)!.Select((row, i) => month(i) ? row : Row(HourCells.Nothing))];
        return HourCells.FromRows(Masked(false), Masked(true));
    }

    private static HourCells Everywhere(int place) => Rows([.. Enumerable.Repeat(Row(place), 12)]);

    private static HourCells Rows(IReadOnlyList<IReadOnlyList<int>> rows) => HourCells.FromRows(rows, rows);

    private static IReadOnlyList<int> Row(int place) => [.. Enumerable.Repeat(place, 24)];

    private static IReadOnlyList<IReadOnlyList<int>>? Rows(RecordNode table, int periods)
    {
        if (table.Just(12) is not { } months)
            return null;
        var rows = months.Select(month => month.Just(24) is { } hours ? Places(hours, periods) : null).ToList();
        return rows.Contains(null) ? null : [.. rows.OfType<IReadOnlyList<int>>()];
    }

    private static IReadOnlyList<int>? Places(IReadOnlyList<RecordNode> nodes, int periods)
    {
        var places = nodes.Select(node => node.Whole(0, periods - 1)).ToList();
        return places.Contains(null) ? null : [.. places.Select(place => place!.Value)];
    }
}
