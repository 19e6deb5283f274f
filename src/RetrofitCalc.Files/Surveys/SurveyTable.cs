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

/// <summary>What was typed in a survey cell and could not be understood: kept until it is mended.</summary>
/// <param name="Line">Id of the survey line.</param>
/// <param name="Field">Name of the <see cref="SurveyField"/>.</param>
/// <param name="Text">What was typed.</param>
/// <param name="Message">What is wrong and what to type.</param>
public sealed record CellDraft(string Line, string Field, string Text, string Message);
