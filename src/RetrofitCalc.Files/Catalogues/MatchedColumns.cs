using RetrofitCalc.Files.Surveys;

namespace RetrofitCalc.Files.Catalogues;

/// <summary>The columns of a file, in its order. Unknown and repeated headings are refused: a misspelt one would lose values in silence.</summary>
internal sealed record MatchedColumns(IReadOnlyList<CatalogueColumn> InOrder, int IdColumn)
{
    public static Parsed<MatchedColumns> Of(IReadOnlyList<CatalogueColumn> known, IReadOnlyList<string> headers)
    {
        var byKey = known.ToDictionary(c => KeyOf(c.Heading));
        var columns = new List<CatalogueColumn>();
        var problems = new List<FileProblem>();
        for (var i = 0; i < headers.Count; i++)
        {
            var column = byKey.GetValueOrDefault(KeyOf(headers[i]));
            if (column is null) problems.Add(At(i, headers[i], $"There is no column {CellText.Quote(headers[i])}. Known are: {string.Join(", ", known.Select(c => c.Heading))}."));
            else if (columns.Contains(column)) problems.Add(At(i, headers[i], $"The column {CellText.Quote(headers[i])} is there twice."));
            else columns.Add(column);
        }
        var id = columns.FindIndex(c => c.Heading == "id");
        if (id < 0) problems.Add(At(0, "id", "There is no column \"id\". Is this the file of another table?"));
        return problems.Count > 0 ? new Parsed<MatchedColumns>(null, problems) : Parsed.Good(new MatchedColumns(columns, id));
    }

    private static FileProblem At(int column, string heading, string message) => new(1, column + 1, heading, message);

    private static string KeyOf(string heading) => NameIndex.Key(heading.Split('[')[0]);
}
