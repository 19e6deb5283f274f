using System.Globalization;
using NodaTime;

namespace RetrofitCalc.Files.Meters.Tables;

/// <summary>Guesses the layout of a table of readings from its first rows: what parses as a date, what as a number, and the words above them.</summary>
internal sealed class MeterGuess
{
    private const double Half = 0.5;
    private const int RowsShown = 12;
    private readonly List<(int Line, IReadOnlyList<string> Cells)> _data;
    private readonly IReadOnlyList<string> _headings;
    private readonly int _columns;
    private readonly DateOrder _dates;

    private MeterGuess(List<(int Line, IReadOnlyList<string> Cells)> rows, int firstData, CultureInfo culture)
    {
        _data = rows[firstData..];
        _columns = _data.Max(row => row.Cells.Count);
        var above = firstData > 0 ? rows[firstData - 1].Cells : [];
        _headings = [.. Enumerable.Range(0, _columns).Select(i => i < above.Count && above[i].Trim().Length > 0 ? above[i].Trim() : $"Column {i + 1}")];
        _dates = OrderOf(culture);
    }

    /// <summary>The first rows and a layout; null when no row has a date and a number.</summary>
    public static MeterSample? Of(List<(int Line, IReadOnlyList<string> Cells)> rows, CultureInfo culture)
    {
        var first = rows.FindIndex(row => row.Cells.Any(cell => IsDate(cell, DateOrder.DayFirst) || IsDate(cell, DateOrder.MonthFirst)) && row.Cells.Any(IsNumber));
        return first < 0 ? null : new MeterGuess(rows, first, culture).Sample();
    }

    private MeterSample? Sample()
    {
        var stamp = FirstColumn(cell => IsDate(cell, _dates));
        var numbers = Enumerable.Range(0, _columns).Where(i => i != stamp && Share(i, IsNumber) >= Half).ToList();
        if (stamp is not { } stamps || numbers.Count == 0) return null;
        var together = Share(stamps, cell => StampText.Parse(cell, _dates) is { Time: not null }) >= Half;
        var time = together ? null : TimeColumn(stamps);
        var wide = together || time is not null ? null : DayColumns(numbers);
        var values = wide ?? [numbers.Where(i => i != time).Append(numbers[0]).MaxBy(ScoreOf)];
        var layout = new MeterLayout
        {
            FirstLine = _data[0].Line, StampColumn = stamps, TimeColumn = time, ValueColumns = values, Dates = _dates, Unit = UnitOf(values),
            DecimalMark = MeterNumber.MarkOf(_data.SelectMany(row => values.Take(4).Select(i => Cell(row.Cells, i)))),
            Clock = MeterWords.IsUtc(_headings[stamps]) || (time is { } t && MeterWords.IsUtc(_headings[t])) ? StampClock.Utc : StampClock.Site,
        };
        return new(_headings, [.. _data.Take(RowsShown).Select(row => row.Cells)], layout with { Stamps = MeaningOf(layout) });
    }

    /// <summary>By the heading; without a word in it, a file whose first stamp is not midnight but one step after it marks ends.</summary>
    private StampMeaning MeaningOf(MeterLayout layout)
    {
        if (layout.IsDayPerRow) return StampMeaning.Start;
        var heading = $"{_headings[layout.StampColumn]} {(layout.TimeColumn is { } time ? _headings[time] : "")}";
        if (MeterWords.MeaningOf(heading) is { } said) return said;
        var stamps = _data.Take(2).Select(row => StampText.Parse(Cell(row.Cells, layout.TimeColumn ?? layout.StampColumn), layout.Dates)?.Time).OfType<LocalTime>().ToList();
        return stamps.Count == 2 && stamps[0] != LocalTime.Midnight && stamps[0].TickOfDay == stamps[1].TickOfDay - stamps[0].TickOfDay ? StampMeaning.End : StampMeaning.Start;
    }

    private int? TimeColumn(int stamps)
    {
        for (var i = 0; i < _columns; i++)
            if (i != stamps && (Share(i, cell => StampText.Parse(cell, _dates) is { Date: null, Time: not null }) >= Half
                || (MeterWords.IsTime(_headings[i]) && Share(i, cell => MeterNumber.Parse(cell, '.') is >= 0 and < 1) >= Half))) return i;
        return null;
    }

    /// <summary>As many number columns in a row as a day has hours, half-hours or quarter-hours.</summary>
    private static IReadOnlyList<int>? DayColumns(List<int> numbers)
    {
        foreach (var count in new[] { 288, 96, 48, 24 })
            for (var from = 0; from + count <= numbers.Count; from++)
                if (numbers[from + count - 1] - numbers[from] == count - 1) return numbers.GetRange(from, count);
        return null;
    }

    private MeterUnit UnitOf(IReadOnlyList<int> values) =>
        MeterWords.UnitOf(_headings[values[0]]) ?? _data[0].Cells.Select(MeterWords.UnitAlone).FirstOrDefault(unit => unit is not null) ?? MeterWords.UnitOf(string.Join(' ', _headings)) ?? MeterUnit.KilowattHours;

    private double ScoreOf(int column) => MeterWords.ScoreOf(_headings[column]) + (_data.Take(200).Select(row => Cell(row.Cells, column)).Distinct().Count() > 1 ? 1 : 0) - column * 1e-3;

    private DateOrder OrderOf(CultureInfo culture)
    {
        var own = culture.DateTimeFormat.ShortDatePattern.TrimStart()[0] is 'd' or 'D' ? DateOrder.DayFirst : DateOrder.MonthFirst;
        var other = own == DateOrder.DayFirst ? DateOrder.MonthFirst : DateOrder.DayFirst;
        return DatesRead(other) > DatesRead(own) ? other : own;
    }

    private int DatesRead(DateOrder order) => _data.Count(row => row.Cells.Any(cell => IsDate(cell, order)));

    private int? FirstColumn(Func<string, bool> holds) => Enumerable.Range(0, _columns).Cast<int?>().FirstOrDefault(i => Share(i!.Value, holds) >= Half);

    private double Share(int column, Func<string, bool> holds) => _data.Count(row => holds(Cell(row.Cells, column))) / (double)_data.Count;

    private static string Cell(IReadOnlyList<string> cells, int column) => column < cells.Count ? cells[column] : "";

    private static bool IsDate(string cell, DateOrder order) => StampText.Parse(cell, order) is { Date: not null } && !IsNumber(cell);

    private static bool IsNumber(string cell) => MeterNumber.Parse(cell, '.') is not null || MeterNumber.Parse(cell, ',') is not null;
}
