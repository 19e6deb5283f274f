using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Features.Survey.Grid;

namespace RetrofitCalc.Web.Features.Survey;

/// <summary>One question the survey raises, asked once for all its lines.</summary>
/// <param name="Text">The question.</param>
/// <param name="Field">The cell that answers it; null when the grid has none.</param>
/// <param name="Lines">Lines it is about, with their numbers on the page.</param>
/// <param name="Stop">Nobody may order or start before it is answered.</param>
/// <param name="Place">Page that answers it when the grid does not.</param>
public sealed record SurveyQuestion(string Text, SurveyField? Field, IReadOnlyList<(string Id, int Number)> Lines, bool Stop, string? Place);

public static class SurveyQuestions
{
    /// <summary>Stops first, then cells to correct, then facts nobody has given, the most useful first.</summary>
    public static IReadOnlyList<SurveyQuestion> Of(StudyResult result, IReadOnlyList<CellDraft> drafts, IReadOnlyList<GridRow> rows)
    {
        var lines = rows.OfType<LineRow>().ToList();
        var numbers = lines.ToDictionary(r => r.Line.Id, r => r.Number);
        var names = lines.ToDictionary(r => r.Line.Id, r => r.Line.Name.Length > 0 ? r.Line.Name : $"line {r.Line.Id}");
        return
        [
            .. result.Notices.Where(n => n is { Severity: NoticeSeverity.Stop, Open: true })
                .Select(n => new SurveyQuestion(n.Question, null, Numbered(n.Lines, numbers), true, $"safety#{n.Rule}")),
            .. drafts.Where(d => numbers.ContainsKey(d.Line) && Enum.TryParse<SurveyField>(d.Field, out _)).GroupBy(d => (d.Field, d.Message))
                .Select(same => new SurveyQuestion(same.Key.Message, Enum.Parse<SurveyField>(same.Key.Field), Numbered(same.Select(d => d.Line), numbers), false, null)),
            .. result.Questions.GroupBy(q => (q.Field, Text: WithoutName(q, names)))
                .Select(same => Asked(same.Key.Field, same.Key.Text, Numbered(same.Select(q => q.Line).OfType<string>(), numbers))),
        ];
    }

    private static SurveyQuestion Asked(string field, string text, IReadOnlyList<(string, int)> lines) =>
        Enum.TryParse<SurveyField>(field, out var cell) && lines.Count > 0
            ? new(text, cell, lines, false, null)
            : new(text, null, lines, false, field switch
            {
                nameof(Site.Jurisdiction) => "survey#site",
                nameof(Area.Seasons) or nameof(Area.Weekly) => "schedules",
                nameof(AreaLight.Readings) or nameof(AreaLight.Layout) or nameof(Stage.Target) => "light",
                _ => null,
            });

    private static IReadOnlyList<(string, int)> Numbered(IEnumerable<string> lines, Dictionary<string, int> numbers) =>
        [.. lines.Where(numbers.ContainsKey).Select(l => (l, numbers[l])).OrderBy(l => l.Item2)];

    /// <summary>The question names its line at the end; asked for many lines at once it need not.</summary>
    private static string WithoutName(Question question, Dictionary<string, string> names) =>
        question.Line is { } line && names.TryGetValue(line, out var name) && question.Text.EndsWith($" ({name})", StringComparison.Ordinal)
            ? question.Text[..^(name.Length + 3)]
            : question.Text;
}
