using System.Globalization;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Readings;

/// <summary>
/// A grid of readings as pasted from a spreadsheet. A heading row with the places along a row and a heading column with the places of the
/// rows are found by their units, or by a corner that is no reading. Cells that are no reading are named, and the others kept.
/// </summary>
public static class ReadingsText
{
    private static readonly string[] Blanks = ["", "-", "–", "—"];

    /// <summary>The readings; with problems where a cell could not be read, which then is blank and keeps what was typed.</summary>
    /// <param name="text">Rows of cells, parted by tabs, semicolons, bars, commas (where they are no decimal mark) or spaces.</param>
    /// <param name="culture">How numbers are typed.</param>
    /// <param name="own">Unit of places that carry none and stand under a corner without one.</param>
    public static Parsed<ReadingGrid> Parse(string text, CultureInfo culture, LengthUnit own)
    {
        var cells = ReadingCells.Of(text, culture);
        if (cells.Value is not { } rows) return new(null, cells.Problems);
        var heading = ReadingHeading.Find(rows, culture, own);
        var (top, left) = (heading.HasRow ? 1 : 0, heading.HasColumn ? 1 : 0);
        if (rows.Count <= top || rows[0].Cells.Length <= left) return Parsed.Bad<ReadingGrid>("There are places in this text, but no readings.");
        var problems = new List<FileProblem>(heading.Problems);
        var read = rows.Skip(top).Select(row => (IReadOnlyList<ReadingCell>)[.. row.Cells.Skip(left).Select((cell, i) => Read(cell, (row.Line, i + left + 1), culture, problems))]).ToList();
        return new(Ordered(read, heading), [.. problems.OrderBy(problem => (problem.Line, problem.Column))]);
    }

    private static ReadingCell Read(string typed, (int Line, int Column) place, CultureInfo culture, List<FileProblem> problems)
    {
        if (Blanks.Contains(typed)) return new(typed, null);
        var number = PastedNumber.Parse(typed, culture);
        if (number.Value is { } value and >= 0) return new(typed, value);
        var why = number.Value is null ? number.Problems[0].Message : $"{CellText.Quote(typed)} is negative; a reading is zero or more.";
        problems.Add(new(place.Line, place.Column, "", why));
        return new(typed, null);
    }

    /// <summary>Places rise in a study; a table drawn from far to near, or from right to left, is turned round.</summary>
    private static ReadingGrid Ordered(List<IReadOnlyList<ReadingCell>> cells, ReadingHeading heading)
    {
        int[] columns = Order(heading.Columns, cells[0].Count), rows = Order(heading.Rows, cells.Count);
        return new([.. rows.Select(row => (IReadOnlyList<ReadingCell>)[.. columns.Select(column => cells[row][column])])])
        {
            Columns = heading.Columns is { } x ? [.. columns.Select(i => x[i])] : null,
            Rows = heading.Rows is { } y ? [.. rows.Select(i => y[i])] : null,
            RowsAreDirections = heading.RowsAreDirections,
            Unit = heading.Unit,
        };
    }

    private static int[] Order(IReadOnlyList<double>? places, int count) =>
        [.. places is null ? Enumerable.Range(0, count) : Enumerable.Range(0, count).OrderBy(i => places[i])];
}
