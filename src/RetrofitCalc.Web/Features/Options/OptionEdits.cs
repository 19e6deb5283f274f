using System.Globalization;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Shared.Fields;

namespace RetrofitCalc.Web.Features.Options;

/// <summary>Changes of options: pure functions of the study.</summary>
public static class OptionEdits
{
    public static Study Option(Study study, int index, Func<RetrofitOption, RetrofitOption> change) => study with { Options = study.Options.At(index, change) };

    public static Study Costs(Study study, int index, Func<OptionCosts, OptionCosts> change) => Option(study, index, o => o with { Costs = change(o.Costs) });

    public static Study Assume(Study study, Func<Assumptions, Assumptions> change) => study with { Assumptions = change(study.Assumptions) };

    public static Study Add(Study study, RetrofitOption option) => study with { Options = [.. study.Options, option] };

    public static Study Copy(Study study, int index) => Add(study, study.Options[index] with
    {
        Id = FreeId(study),
        Name = FreeName(study, $"{study.Options[index].Name}, copy"),
    });

    public static EditState Remove(EditState state, int index)
    {
        var gone = state.Study.Options[index].Id;
        return new EditState(
            state.Study with
            {
                Options = state.Study.Options.WithoutAt(index),
                ChosenOption = state.Study.ChosenOption == gone ? null : state.Study.ChosenOption,
            },
            state.Drafts.AfterDeleting("Options", index));
    }

    /// <summary>The stage is lit as now again.</summary>
    public static Study RemoveStage(Study study, int index, StageChange gone) => Option(study, index, o => o with { Stages = [.. o.Stages.Where(change => change != gone)] });

    /// <summary>Changes what is done on one line; a line the option does not name yet joins at the end, so that places stay.</summary>
    public static Study Line(Study study, int index, string line, Func<LineMeasure, LineMeasure> change) => Option(study, index, o => o with
    {
        Measures = o.Measures.Any(m => m.Line == line)
            ? [.. o.Measures.Select(m => m.Line == line ? change(m) : m)]
            : [.. o.Measures, change(new LineMeasure(line, new KeepAsIs()))],
    });

    /// <summary>One measure on every line of an area; prices typed for another measure are dropped.</summary>
    public static Study Area(Study study, int index, string area, Func<SurveyLine, Measure> measure) =>
        study.Lines.Where(l => l.Area == area).Aggregate(study, (s, line) => Line(s, index, line.Id, m => Changed(m, measure(line))));

    /// <summary>Another measure: prices and minutes typed for the old one do not carry over.</summary>
    public static LineMeasure Changed(LineMeasure old, Measure measure) =>
        MeasureKinds.Of(old.Measure) == MeasureKinds.Of(measure) && MeasureKinds.Product(old.Measure) == MeasureKinds.Product(measure)
            ? old with { Measure = measure }
            : new LineMeasure(old.Line, measure);

    public static string FreeId(Study study) =>
        Enumerable.Range(study.Options.Count + 1, 1000).Select(n => string.Create(CultureInfo.InvariantCulture, $"option-{n}")).First(id => study.Options.All(o => o.Id != id));

    public static string FreeName(Study study, string wanted) =>
        study.Options.All(o => o.Name != wanted) ? wanted : Enumerable.Range(2, 1000).Select(n => $"{wanted} {n}").First(name => study.Options.All(o => o.Name != name));
}
