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
        return [.. result.Questions.GroupBy(q => q.Text)
            .Select(same => new QuestionRow(same.Key, Names([.. same.Select(q => q.Line).OfType<string>().Select(id => names.GetValueOrDefault(id, id))])))];
    }

    private static string Names(List<string> lines) => lines.Count switch
    {
        0 => "the whole site",
        <= MostNames => string.Join(", ", lines),
        _ => $"{string.Join(", ", lines.Take(MostNames))} and {lines.Count - MostNames} more",
    };
}
