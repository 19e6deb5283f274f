using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Web.Features.Results;

/// <summary>A fact still missing, and the lines it is missing on.</summary>
public sealed record QuestionRow(string Text, string Lines)
{
    private const int MostNames = 4;

    /// <summary>The same question on many lines is asked once.</summary>
    public static IReadOnlyList<QuestionRow> Of(StudyResult result)
    {
        var names = result.Study.Lines.ToDictionary(l => l.Id, l => l.Name.Length > 0 ? l.Name : l.Id);
        return [.. from question in result.Questions
                   let line = question.Line is { } id ? names.GetValueOrDefault(id, id) : null
                   group line by WithoutName(question.Text, line) into same
                   select new QuestionRow(same.Key, Names([.. same.OfType<string>()]))];
    }

    /// <summary>The name stands beside the question, where it can be joined with others'.</summary>
    private static string WithoutName(string text, string? line) => line is null ? text : text.Replace($" ({line})", "", StringComparison.Ordinal);

    private static string Names(List<string> lines) => lines.Count switch
    {
        0 => "the whole site",
        <= MostNames => string.Join("; ", lines),
        _ => $"{string.Join("; ", lines.Take(MostNames))} and {lines.Count - MostNames} more",
    };
}
