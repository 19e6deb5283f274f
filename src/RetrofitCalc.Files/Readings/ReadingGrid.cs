using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Readings;

/// <summary>A cell of a table of readings: what was typed, and the number when it is one.</summary>
public readonly record struct ReadingCell(string Typed, double? Value);

/// <summary>A table of readings from text: a row of the bench each, places rising where the text gives them.</summary>
/// <param name="Cells">A list for each row with a cell for each column; cells that could not be read keep what was typed.</param>
public sealed record ReadingGrid(IReadOnlyList<IReadOnlyList<ReadingCell>> Cells)
{
    /// <summary>Places along a row, in metres; null where the text has no heading row.</summary>
    public IReadOnlyList<double>? Columns { get; init; }

    /// <summary>Places of the rows, in metres, or their directions in degrees; null where the text has no heading column.</summary>
    public IReadOnlyList<double>? Rows { get; init; }

    /// <summary>True when the rows were given by direction, such as 90°: lines outwards from the middle.</summary>
    public bool RowsAreDirections { get; init; }

    /// <summary>Unit of the readings where the corner of the table names it.</summary>
    public LightUnit? Unit { get; init; }

    public int RowCount => Cells.Count;

    public int ColumnCount => Cells.Count == 0 ? 0 : Cells[0].Count;

    /// <summary>The numbers; null where nothing was read, or nothing that is a number.</summary>
    public IReadOnlyList<IReadOnlyList<double?>> Values => [.. Cells.Select(row => (IReadOnlyList<double?>)[.. row.Select(cell => cell.Value)])];
}
