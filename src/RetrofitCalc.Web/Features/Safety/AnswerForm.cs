using System.Globalization;
using NodaTime;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Web.Features.Safety;

/// <summary>An answer as it is being typed.</summary>
public sealed class AnswerForm
{
    public string Line { get; set; } = "";

    public string Text { get; set; } = "";

    public string Role { get; set; } = "";

    public string Person { get; set; } = "";

    public string Date { get; set; } = "";

    /// <summary>The answer, or what is missing, by the name of the field.</summary>
    public Parsed<NoticeAnswer> Read(string rule, CultureInfo culture)
    {
        var date = DateText.Parse(Date, culture);
        List<FileProblem> problems =
        [
            .. Missing(nameof(Text), Text, "Type the answer in the words of the person who gave it."),
            .. Missing(nameof(Role), Role, "Choose who answered."),
            .. Missing(nameof(Person), Person, "Type the name of the person who answered."),
            .. date.Problems.Select(p => p with { Path = nameof(Date) }),
            .. date is { Ok: true, Value: null } ? Missing(nameof(Date), "", "Type the day of the answer.") : [],
        ];
        return problems.Count > 0
            ? Parsed.Bad<NoticeAnswer>([.. problems])
            : Parsed.Good(new NoticeAnswer(rule, Line.Length == 0 ? null : Line, Text.Trim(), Role, Person.Trim(), date.Value!.Value));
    }

    private static IEnumerable<FileProblem> Missing(string field, string typed, string message) =>
        string.IsNullOrWhiteSpace(typed) ? [new FileProblem(null, null, field, message)] : [];
}
