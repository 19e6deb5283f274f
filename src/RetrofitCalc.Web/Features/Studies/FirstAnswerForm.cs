using System.Globalization;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.FirstAnswer;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Web.Features.Studies;

/// <summary>The five facts as typed.</summary>
public sealed record FirstAnswerTexts(string? SetUp, string? Count, string? Hours, string? Price, string? Replace);

/// <summary>A fact that cannot be used, told beside its field.</summary>
/// <param name="Field">Name of the field in the address.</param>
public sealed record FieldProblem(string Field, string Label, string Message);

/// <summary>The five facts, read: a study, or what is wrong with each field.</summary>
public sealed record FirstAnswerForm(Study? Study, IReadOnlyList<FieldProblem> Problems)
{
    private static readonly CultureInfo Culture = CultureInfo.GetCultureInfo("en-US");

    private static readonly Dictionary<string, (string Field, string Label)> Fields = new()
    {
        [nameof(FirstFacts.SetUp)] = ("setup", "Set-up"),
        [nameof(FirstFacts.Luminaires)] = ("count", "How many luminaires"),
        [nameof(FirstFacts.HoursPerDay)] = ("hours", "Lit hours a day"),
        [nameof(FirstFacts.PricePerKilowattHour)] = ("price", "Price of electricity"),
        [nameof(FirstFacts.Replacement)] = ("replace", "Replace with"),
    };

    public static FirstAnswerForm Empty { get; } = new(null, []);

    public static FirstAnswerForm Read(FirstAnswerTexts texts, CatalogueExtract catalogue)
    {
        var count = NumberText.ParseCount(texts.Count, Culture);
        var hours = NumberText.Parse(texts.Hours, Culture);
        var price = NumberText.Parse(texts.Price, Culture);
        FieldProblem[] unread =
        [
            .. Unread(nameof(FirstFacts.Luminaires), count), .. Unread(nameof(FirstFacts.HoursPerDay), hours),
            .. Unread(nameof(FirstFacts.PricePerKilowattHour), price),
        ];
        var facts = new FirstFacts(count.Value ?? 0, texts.SetUp ?? "", hours.Value ?? -1, price.Value ?? 0, Chosen(texts.Replace));
        var outside = FirstAnswerStudy.Check(facts, catalogue).Select(p => Problem(p.Path, p.Message));
        FieldProblem[] problems = [.. unread.Concat(outside.Where(p => unread.All(u => u.Field != p.Field))).OrderBy(InFormOrder)];
        return new(problems.Length == 0 ? FirstAnswerStudy.From(facts, catalogue) : null, problems);
    }

    /// <summary>The same facts, with the engine's reason when what was chosen does not fit what hangs there.</summary>
    public FirstAnswerForm Refusing(StudyResult result) => this with
    {
        Problems = [.. Problems, .. result.Options.SelectMany(o => o.Refused).Select(r => Problem(nameof(FirstFacts.Replacement), r.Reason))],
    };

    private static int InFormOrder(FieldProblem problem) => Fields.Values.Select(f => f.Field).ToList().IndexOf(problem.Field);

    private static string? Chosen(string? id) => string.IsNullOrEmpty(id) ? null : id;

    private static IEnumerable<FieldProblem> Unread<T>(string fact, Parsed<T> parsed) =>
        parsed.Problems.Select(p => Problem(fact, p.Message));

    private static FieldProblem Problem(string fact, string message) => new(Fields[fact].Field, Fields[fact].Label, message);
}
