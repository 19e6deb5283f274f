using RetrofitCalc.Files.Surveys.Tables;

namespace RetrofitCalc.Files.Meters.Tables;

/// <summary>Takes the first rows of a file and then no more.</summary>
internal sealed class FirstRows(int count) : TableSink
{
    public List<(int Line, IReadOnlyList<string> Cells)> Rows { get; } = [];

    public override bool Add(int line, IReadOnlyList<string> row)
    {
        if (row.Count > TableLimits.Columns) Refusal = TableLimits.TooManyColumns;
        else if (row.Any(cell => cell.Length > 0)) Rows.Add((line, row));
        return Refusal is null && Rows.Count < count;
    }
}
