using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Checks;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine;

/// <summary>The front door: a complete study in, its result out. Same study, same result, on every machine.</summary>
public static class StudyEvaluation
{
    /// <summary>What makes a study impossible to evaluate; empty when it can be evaluated.</summary>
    /// <param name="study">The study.</param>
    public static IReadOnlyList<StudyProblem> Check(Study study) => StudyCheck.Run(study);

    /// <summary>What is impossible about the values of one catalogue entry; paths begin with its property.</summary>
    /// <param name="entry">The entry.</param>
    public static IReadOnlyList<StudyProblem> Check(CatalogueEntry entry)
    {
        var problems = new Problems();
        CatalogueCheck.Values(entry, "", problems);
        return problems.Found;
    }

    /// <summary>What makes a tariff impossible to bill at a site whose power factor is known; paths begin with "Tariff".</summary>
    /// <param name="tariff">The tariff.</param>
    public static IReadOnlyList<StudyProblem> Check(Tariff tariff)
    {
        var problems = new Problems();
        TariffCheck.Run(new Study { Name = "", Site = new Site { Name = "", PowerFactor = 1 }, Tariff = tariff }, problems);
        return problems.Found;
    }

    /// <summary>Evaluates a study.</summary>
    /// <param name="study">A study without problems.</param>
    /// <param name="rules">Safety rules.</param>
    /// <exception cref="InvalidStudyException"><see cref="Check(Study)"/> finds problems.</exception>
    public static StudyResult Run(Study study, SafetyRuleBook rules)
    {
        if (Check(study) is { Count: > 0 } problems)
            throw new InvalidStudyException(problems);
        var context = new StudyContext(study);
        var present = new PresentCases(context);
        List<FittedLine> fitted = [.. context.Lines.Select(line => line.Fitted)];
        return new()
        {
            Study = study,
            Now = present.Likely(),
            Light = CropLightEvaluation.Of(context, fitted, fitted, null),
            Meter = context.Comparison,
            Options = [.. study.Options.Select(option => OptionEvaluation.Run(present, option))],
            Questions = StudyQuestions.Of(context),
            Notices = SafetyEvaluation.Run(study, rules),
            Remarks = StudyRemarks.Of(context),
        };
    }
}
