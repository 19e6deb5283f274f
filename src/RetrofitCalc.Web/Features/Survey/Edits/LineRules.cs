using System.Text.RegularExpressions;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;

namespace RetrofitCalc.Web.Features.Survey.Edits;

/// <summary>What the engine would refuse in survey lines, cell by cell, so that one impossible cell does not stop the whole study.</summary>
public static partial class LineRules
{
    /// <summary>A cell the engine refuses.</summary>
    public sealed record Refusal(int Index, SurveyField Field, string Message);

    public static IReadOnlyList<Refusal> Of(IReadOnlyList<SurveyLine> lines, SurveyContext context)
    {
        var used = lines.Select(l => l.SetUp).ToHashSet();
        var alone = new Study
        {
            Name = "",
            Site = new Site { Name = "" },
            Areas = [.. context.Areas.Select(a => new Area { Id = a.Id, Name = a.Name })],
            Lines = lines,
            Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.1)),
            Catalogue = new CatalogueExtract { SetUps = [.. context.Catalogue.SetUps.Where(s => used.Contains(s.Id))] },
        };
        return [.. StudyEvaluation.Check(alone).Select(p => Refused(p, lines, context)).OfType<Refusal>()];
    }

    private static Refusal? Refused(StudyProblem problem, IReadOnlyList<SurveyLine> lines, SurveyContext context)
    {
        var place = Place().Match(problem.Path);
        if (!place.Success || !Enum.TryParse<SurveyField>(place.Groups["field"].Value, out var field)) return null;
        var index = int.Parse(place.Groups["index"].Value, System.Globalization.CultureInfo.InvariantCulture);
        return new Refusal(index, field, field == SurveyField.LampsOut ? TooManyOut(lines[index], context) ?? problem.Message : problem.Message);
    }

    private static string? TooManyOut(SurveyLine line, SurveyContext context) =>
        line.Count is { } count && context.Catalogue.SetUps.FirstOrDefault(s => s.Id == line.SetUp) is { } setUp
            ? FormattableString.Invariant($"This line has only {count * (long)setUp.LampCount} lamps ({count} luminaires × {setUp.LampCount}). Type 0 to {count * (long)setUp.LampCount}.")
            : null;

    [GeneratedRegex(@"^Lines\[(?<index>\d+)\]\.(?<field>\w+)")]
    private static partial Regex Place();
}
