using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Surveys;

/// <summary>One row of a table on its way into the survey.</summary>
/// <param name="Source">Its line in the file or row in the sheet.</param>
/// <param name="Line">The survey line, with every cell that could be read; null while its area is not known.</param>
/// <param name="Texts">Matched cells as they were typed.</param>
/// <param name="Drafts">Cells that could not be read.</param>
/// <param name="Problems">The same with row and column, for a list beside the preview.</param>
public sealed record ImportRow(
    int Source, SurveyLine? Line, IReadOnlyDictionary<SurveyField, string> Texts,
    IReadOnlyList<CellDraft> Drafts, IReadOnlyList<FileProblem> Problems)
{
    public bool Good => Line is not null && Problems.Count == 0;
}

/// <summary>What an import would do.</summary>
/// <param name="Table">The table.</param>
/// <param name="Match">How its columns were understood.</param>
/// <param name="Rows">Its rows.</param>
/// <param name="NewAreas">Areas the study does not have yet; accepting makes them.</param>
public sealed record ImportPreview(SurveyTable Table, ColumnMatch Match, IReadOnlyList<ImportRow> Rows, IReadOnlyList<Area> NewAreas)
{
    public IEnumerable<FileProblem> Problems => Rows.SelectMany(r => r.Problems);

    /// <summary>The study with the good rows, and the areas those rows need.</summary>
    public Study AcceptGoodRows(Study study) => Accept(study, Rows.Where(r => r.Good));

    /// <summary>The study with every row that has an area. Cells that could not be read are unknown there; keep <see cref="ImportRow.Drafts"/> beside them.</summary>
    public Study AcceptAllRows(Study study) => Accept(study, Rows);

    private Study Accept(Study study, IEnumerable<ImportRow> rows)
    {
        var lines = rows.Select(r => r.Line).OfType<SurveyLine>().ToList();
        var needed = lines.Select(l => l.Area).ToHashSet();
        return study with
        {
            Areas = [.. study.Areas, .. NewAreas.Where(a => needed.Contains(a.Id))],
            Lines = [.. study.Lines, .. lines],
        };
    }
}
