namespace RetrofitCalc.Files.Surveys.Tables;

/// <summary>Takes the rows of a file one by one.</summary>
internal abstract class TableSink
{
    /// <summary>What a careful person wants to know of how the file was read.</summary>
    public List<string> Notes { get; } = [];

    /// <summary>Why no more can be taken; null while all is well.</summary>
    public string? Refusal { get; protected set; }

    /// <summary>Takes a row; false when no more are wanted.</summary>
    public abstract bool Add(int line, IReadOnlyList<string> row);
}

/// <summary>Takes rows one by one, the first that holds anything as headings, and stops at the limits.</summary>
internal sealed class TableBuilder : TableSink
{
    private readonly List<SurveyRow> _rows = [];
    private IReadOnlyList<string>? _headers;
    private long _characters;

    public override bool Add(int line, IReadOnlyList<string> row)
    {
        var cells = WithoutBlankEnd(row);
        if (cells.Count == 0) return true;
        _characters += cells.Sum(c => (long)c.Length);
        Refusal = cells.Count > TableLimits.Columns ? TableLimits.TooManyColumns
            : cells.Any(c => c.Length > TableLimits.CellCharacters) ? TableLimits.CellTooLong
            : _characters > TableLimits.Characters ? TableLimits.TooLarge
            : _rows.Count >= TableLimits.Rows ? TableLimits.TooManyRows
            : null;
        if (Refusal is not null) return false;
        if (_headers is null) _headers = cells.Select(c => c.Trim()).ToList();
        else _rows.Add(new SurveyRow(line, cells));
        return true;
    }

    /// <summary>Spreadsheets write cells that only have a format, often to the end of the sheet.</summary>
    private static IReadOnlyList<string> WithoutBlankEnd(IReadOnlyList<string> row)
    {
        var used = row.Count;
        while (used > 0 && string.IsNullOrWhiteSpace(row[used - 1])) used--;
        return used == row.Count ? row : [.. row.Take(used)];
    }

    public Parsed<SurveyTable> Finish()
    {
        if (Refusal is not null) return Parsed.Bad<SurveyTable>(Refusal);
        if (_headers is null) return Parsed.Bad<SurveyTable>("There is nothing in the table.");
        NoteCellsWithoutHeading(_headers.Count);
        if (_rows.Count == 0) return Parsed.Bad<SurveyTable>("The table has one row only. The first row must hold the column headings, the lines follow below.");
        return Parsed.Good(new SurveyTable(_headers, _rows, Notes));
    }

    private void NoteCellsWithoutHeading(int columns)
    {
        var longer = _rows.Where(r => r.Cells.Count > columns).ToList();
        if (longer.Count == 0) return;
        var text = CellText.Quote(longer[0].Cells.Skip(columns).First(c => !string.IsNullOrWhiteSpace(c)));
        Notes.Add($"Cells to the right of the last heading were not used: in {longer.Count} {(longer.Count == 1 ? "row" : "rows")}, first on line {longer[0].Line} ({text}). Give their column a heading; or is a separator inside a text without quotation marks?");
    }
}
