using System.Globalization;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Readings;

/// <summary>The heading row and heading column of a table of readings.</summary>
/// <remarks>
/// Under a corner with words, such as "cm", both stand. Under a blank corner they do when one of them has a unit or a minus, or when both
/// begin with zero; otherwise the blank corner is a blank reading. Without a corner, a row or column with units of length is one.
/// </remarks>
internal sealed record ReadingHeading
{
    public bool HasRow { get; private init; }

    public bool HasColumn { get; private init; }

    /// <summary>Places along a row [m]; null without a heading row, or where it could not be read.</summary>
    public IReadOnlyList<double>? Columns { get; private set; }

    /// <summary>Places of the rows [m], or directions [degrees]; null without a heading column, or where it could not be read.</summary>
    public IReadOnlyList<double>? Rows { get; private set; }

    public bool RowsAreDirections { get; private set; }

    public LightUnit? Unit { get; private init; }

    public List<FileProblem> Problems { get; } = [];

    public static ReadingHeading Find(IReadOnlyList<(int Line, string[] Cells)> rows, CultureInfo culture, LengthUnit own)
    {
        var corner = rows[0].Cells[0];
        var (across, down) = (rows[0].Cells.Skip(1).ToList(), rows.Skip(1).Select(row => row.Cells[0]).ToList());
        var both = PlaceText.IsCorner(corner) || (corner.Length == 0 && (across.Concat(down).Any(IsPlaceOnly) || (StartsAtZero(across, culture) && StartsAtZero(down, culture))));
        var (hasRow, hasColumn) = (both || across.Any(PlaceText.HasUnit), both || down.Any(PlaceText.HasUnit));
        var heading = new ReadingHeading { HasRow = hasRow, HasColumn = hasColumn, Unit = PlaceText.LightUnitIn(corner) };
        var unit = PlaceText.LengthUnitIn(corner) ?? own;
        var (top, left) = (hasRow ? 1 : 0, hasColumn ? 1 : 0);
        if (hasRow) heading.Columns = heading.Read(rows[0].Cells.Select((cell, i) => (cell, rows[0].Line, i + 1)).Skip(left), cell => PlaceText.Metres(cell, culture, unit));
        if (hasColumn) heading.ReadRows(rows.Skip(top).Select(row => (row.Cells[0], row.Line, 1)).ToList(), culture, unit);
        return heading;
    }

    /// <summary>A text that can be a place but no reading: it has a unit of length, or a minus.</summary>
    private static bool IsPlaceOnly(string cell) => PlaceText.HasUnit(cell) || (cell.Length > 1 && cell[0] is '-' or '−');

    /// <summary>Below lit lamps nothing reads zero: a table that begins with it on both sides begins with places from the middle.</summary>
    private static bool StartsAtZero(List<string> cells, CultureInfo culture) => cells.Count > 0 && NumberText.Parse(cells[0], culture).Value == 0;

    private void ReadRows(List<(string Cell, int Line, int Column)> cells, CultureInfo culture, LengthUnit unit)
    {
        RowsAreDirections = cells.All(cell => PlaceText.Degrees(cell.Cell, culture) is not null);
        Rows = Read(cells, cell => RowsAreDirections ? PlaceText.Degrees(cell, culture) : PlaceText.Metres(cell, culture, unit));
    }

    private double[]? Read(IEnumerable<(string Cell, int Line, int Column)> cells, Func<string, double?> read)
    {
        var places = new List<double>();
        foreach (var (cell, line, column) in cells)
            if (read(cell) is not { } place)
                Problems.Add(new(line, column, "", $"{CellText.Quote(cell)} is not a place. Give how far from the middle of the bench, such as -30 cm, 1 ft 2 in or 0.35 m, or leave places out."));
            else if (places.Contains(place))
                Problems.Add(new(line, column, "", $"Place {CellText.Quote(cell)} is given twice."));
            else
                places.Add(place);
        return Problems.Count == 0 ? [.. places] : null;
    }
}
