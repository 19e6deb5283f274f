using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Surveys;

/// <summary>Which column holds which fact.</summary>
/// <param name="Columns">Column of each matched field, from 0.</param>
/// <param name="HeightUnit">Unit of plain heights when the heading names one.</param>
public sealed record ColumnMatch(IReadOnlyDictionary<SurveyField, int> Columns, LengthUnit? HeightUnit = null)
{
    /// <summary>Matches columns whose headings are known words; each field and each column at most once, the best-known word first.</summary>
    public static ColumnMatch Guess(IReadOnlyList<string> headers)
    {
        var keys = headers.Select(h => NameIndex.Key(BeforeUnit(h))).ToList();
        var columns = new Dictionary<SurveyField, int>();
        var deepest = SurveyHeadings.Fields.Max(f => SurveyHeadings.Synonyms(f).Count);
        for (var rank = 0; rank < deepest; rank++)
            foreach (var field in SurveyHeadings.Fields.Where(f => !columns.ContainsKey(f) && rank < SurveyHeadings.Synonyms(f).Count))
            {
                var column = keys.IndexOf(NameIndex.Key(SurveyHeadings.Synonyms(field)[rank]));
                if (column >= 0 && !columns.ContainsValue(column)) columns[field] = column;
            }
        return new ColumnMatch(columns, UnitOfHeights(headers, columns));
    }

    /// <summary>The same with one field on another column, or on none. A column serves one field.</summary>
    public ColumnMatch With(SurveyField field, int? column)
    {
        var columns = Columns.Where(c => c.Key != field && c.Value != column).ToDictionary();
        if (column is { } chosen) columns[field] = chosen;
        return this with { Columns = columns };
    }

    /// <summary>Columns no field takes.</summary>
    public IEnumerable<int> Unused(int columns) => Enumerable.Range(0, columns).Except(Columns.Values);

    private static LengthUnit? UnitOfHeights(IReadOnlyList<string> headers, Dictionary<SurveyField, int> columns) =>
        columns.TryGetValue(SurveyField.MountingHeight, out var column) ? LengthText.UnitOf(UnitIn(headers[column])) : null;

    private static string BeforeUnit(string header) => header.IndexOfAny(['(', '[', ',']) is var at and > 0 ? header[..at] : header;

    private static string UnitIn(string header) => header[BeforeUnit(header).Length..].Trim('(', ')', '[', ']', ',', ' ');
}
