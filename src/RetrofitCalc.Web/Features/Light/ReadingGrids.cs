using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Light;

/// <summary>How many readings lie along a bench and across it; for lines outwards how many on each line, and how many lines.</summary>
public readonly record struct GridCount(int Along, int Across);

/// <summary>Places of readings on a bench.</summary>
public static class ReadingGrids
{
    private const int LinesOutwards = 4;

    /// <summary>As many as the spacing rule asks for.</summary>
    public static GridCount Suggested(ReadingPattern pattern, Length length, Length width)
    {
        var cells = GridSpacing.For(length, width);
        return pattern switch
        {
            ReadingPattern.CellCentres => new(cells.AlongLength, cells.AlongWidth),
            ReadingPattern.Crossings => new(cells.AlongLength + 1, cells.AlongWidth + 1),
            ReadingPattern.Quadrant => new(HalfOf(cells.AlongLength), HalfOf(cells.AlongWidth)),
            _ => new(HalfOf(cells.AlongLength), LinesOutwards),
        };
    }

    /// <summary>Places along a row and of the rows, from the middle of the bench.</summary>
    public static (IReadOnlyList<double> Columns, IReadOnlyList<double> Rows) Lay(ReadingPattern pattern, Length length, Length width, GridCount count) => pattern switch
    {
        ReadingPattern.CellCentres => (Centres(length, count.Along), Centres(width, count.Across)),
        ReadingPattern.Crossings => (Between(-length.Metres / 2, length.Metres / 2, count.Along), Between(-width.Metres / 2, width.Metres / 2, count.Across)),
        ReadingPattern.Quadrant => (Between(0, length.Metres / 2, count.Along), Between(0, width.Metres / 2, count.Across)),
        _ => (Between(0, length.Metres / 2, count.Along), [.. Enumerable.Range(0, count.Across).Select(line => 360.0 * line / count.Across)]),
    };

    /// <summary>Fewest readings that make a pattern.</summary>
    public static GridCount Fewest(ReadingPattern pattern) => pattern switch
    {
        ReadingPattern.CellCentres => new(1, 1),
        ReadingPattern.Outwards => new(2, 1),
        _ => new(2, 2),
    };

    public static IReadOnlyList<IReadOnlyList<double?>> Blank(int columns, int rows) =>
        [.. Enumerable.Range(0, rows).Select(_ => (IReadOnlyList<double?>)new double?[columns])];

    public static int Taken(ReadingSet set) => set.Values.Sum(row => row.Count(value => value is not null));

    private static int HalfOf(int cells) => Math.Max(2, (cells + 1) / 2 + 1);

    private static double[] Centres(Length side, int count) => [.. Enumerable.Range(0, count).Select(i => Tidy(((i + 0.5) / count - 0.5) * side.Metres))];

    private static double[] Between(double from, double to, int count) => [.. Enumerable.Range(0, count).Select(i => Tidy(from + (to - from) * i / (count - 1)))];

    /// A hundredth of a millimetre: places read back as they were typed.
    private static double Tidy(double metres) => Math.Round(metres, 5) + 0.0;
}
