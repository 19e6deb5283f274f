namespace RetrofitCalc.Files.Surveys;

/// <summary>A table of text cells, wherever it came from, before anyone says what its columns mean.</summary>
/// <param name="Headers">Heading of each column.</param>
/// <param name="Rows">Rows that hold anything.</param>
/// <param name="Notes">What a careful person wants to know of how it was read.</param>
public sealed record SurveyTable(IReadOnlyList<string> Headers, IReadOnlyList<SurveyRow> Rows, IReadOnlyList<string> Notes);

/// <summary>One row.</summary>
/// <param name="Line">Its line in the file or its row in the sheet, from 1.</param>
/// <param name="Cells">Its cells as text; there may be fewer or more than headings.</param>
public sealed record SurveyRow(int Line, IReadOnlyList<string> Cells)
{
    public string Cell(int column) => column < Cells.Count ? Cells[column] : "";
}
