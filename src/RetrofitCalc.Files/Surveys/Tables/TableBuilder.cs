namespace RetrofitCalc.Files.Surveys.Tables;

/// <summary>Takes rows one by one, the first that holds anything as headings, and stops at the limits.</summary>
internal sealed class TableBuilder
{
    private readonly List<SurveyRow> _rows = [];
    private IReadOnlyList<string>? _headers;
    private long _characters;

    public List<string> Notes { get; } = [];

    /// <summary>Why no more can be taken; null while all is well.</summary>
    public string? Refusal { get; private set; }

    public bool Add(int line, IReadOnlyList<string> cells)
    {
        if (cells.All(string.IsNullOrWhiteSpace)) return true;
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

    public Parsed<SurveyTable> Finish()
    {
        if (Refusal is not null) return Parsed.Bad<SurveyTable>(Refusal);
        if (_headers is null) return Parsed.Bad<SurveyTable>("There is nothing in the table.");
        if (_rows.Count == 0) return Parsed.Bad<SurveyTable>("The table has one row only. The first row must hold the column headings, the lines follow below.");
        return Parsed.Good(new SurveyTable(_headers, _rows, Notes));
    }
}
