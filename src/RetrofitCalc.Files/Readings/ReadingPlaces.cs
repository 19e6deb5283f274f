using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Readings;

/// <summary>Puts a table of readings on a bench.</summary>
public static class ReadingPlaces
{
    /// <summary>The set with the readings of the table. Places the table does not give are those the set has, else evenly over the bench.</summary>
    public static Parsed<ReadingSet> Into(ReadingSet set, ReadingGrid grid, AreaLight? bench)
    {
        var pattern = grid.RowsAreDirections ? ReadingPattern.Outwards : set.Pattern;
        var columns = grid.Columns ?? Kept(set.Columns, grid.ColumnCount) ?? Even(pattern, bench?.BenchLength, grid.ColumnCount);
        var rows = grid.Rows ?? Kept(set.Rows, grid.RowCount) ?? Even(pattern, bench?.BenchWidth, grid.RowCount);
        return columns is null || rows is null
            ? Parsed.Bad<ReadingSet>($"The table has {grid.RowCount} rows of {grid.ColumnCount} readings, and nothing says where they lie. Give places in a heading row and column, or the size of the bench.")
            : Parsed.Good(set with { Pattern = pattern, Unit = grid.Unit ?? set.Unit, Columns = columns, Rows = rows, Values = grid.Values, Confirmed = [] });
    }

    private static IReadOnlyList<double>? Kept(IReadOnlyList<double> places, int count) => places.Count == count ? places : null;

    /// <summary>Places on one side of a bench, to a millimetre; null where its size is not known, and for lines outwards, which may end anywhere.</summary>
    public static IReadOnlyList<double>? Even(ReadingPattern pattern, Length? side, int count)
    {
        if (side is not { } length || pattern == ReadingPattern.Outwards || (count < 2 && pattern != ReadingPattern.CellCentres)) return null;
        return [.. Enumerable.Range(0, count).Select(i => Math.Round(length.Metres * pattern switch
        {
            ReadingPattern.CellCentres => (i + 0.5) / count - 0.5,
            ReadingPattern.Crossings => i / (count - 1.0) - 0.5,
            _ => i / (count - 1.0) / 2,
        }, 3))];
    }
}
