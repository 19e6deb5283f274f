using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Tests.Samples;
using RetrofitCalc.Engine.Tracing;

namespace RetrofitCalc.Engine.Tests.Tracing;

public class Where_a_figure_comes_from
{
    private static readonly StudyResult Result = StudyEvaluation.Run(SampleStudy.Small, new());

    public static TheoryData<ExplainedFigure, string?, Func<LightingCase, double>> Figures => new()
    {
        { ExplainedFigure.InputPower, "racks", c => Line(c, "racks").PerLuminaire.Total.Watts },
        { ExplainedFigure.InputPower, "hall", c => Line(c, "hall").PerLuminaire.Total.Watts },
        { ExplainedFigure.Connected, "shelves", c => Line(c, "shelves").Connected.Watts },
        { ExplainedFigure.Heat, "racks", c => Line(c, "racks").Connected.BtuPerHour * 0.9 },
        { ExplainedFigure.YearlyEnergy, "shelves", c => Line(c, "shelves").Energy.KilowattHours },
        { ExplainedFigure.YearlyCost, "hall", c => Line(c, "hall").Cost.Units },
        { ExplainedFigure.Connected, null, c => c.Site.Connected.Watts },
        { ExplainedFigure.Heat, null, c => c.Site.Heat.BtuPerHour },
        { ExplainedFigure.YearlyEnergy, null, c => c.Site.Lighting.KilowattHours },
        { ExplainedFigure.YearlyCost, null, c => c.Site.Cost.Units },
    };

    [Theory, MemberData(nameof(Figures), DisableDiscoveryEnumeration = true)]
    public void ends_at_the_figure_the_result_shows(ExplainedFigure figure, string? line, Func<LightingCase, double> shown)
    {
        Assert.Equal(shown(Result.Now), StudyExplanation.Of(SampleStudy.Small, figure, line)[^1].Result.Value, 1e-6);
        var after = StudyExplanation.Of(SampleStudy.Small, figure, line, option: "tubes");
        Assert.Equal(shown(Result.Options[0].After), after[^1].Result.Value, 1e-6);
    }

    // 2 × 29 W × 0.88 = 51.04 W to the lamps, over 0.93: 54.88 W.
    [Fact]
    public void starts_at_catalogue_values_and_names_the_equation()
    {
        var steps = StudyExplanation.Of(SampleStudy.Small, ExplainedFigure.InputPower, "racks");
        Assert.Equal([new("n", 2, ""), new("P_arc", 29, "W"), new("BF", 0.88, "")], steps[0].Inputs);
        Assert.Equal([51.04, 54.88, 54.88], steps.Select(step => Math.Round(step.Result.Value, 2)));
        Assert.Contains("E-01", steps[0].Formula);
        Assert.Contains("Invented for tests", steps[^1].Source);
    }

    [Fact]
    public void adds_up_over_seasons_and_stages()
    {
        var steps = StudyExplanation.Of(SampleStudy.Small, ExplainedFigure.YearlyEnergy, "shelves");
        var parts = steps.Where(step => step.Name.StartsWith("Energy and cost: ", StringComparison.Ordinal)).ToList();
        Assert.Equal(3, parts.Count);
        Assert.Equal(steps[^1].Result.Value, parts.Sum(step => step.Result.Value), 1e-6);
    }

    [Fact]
    public void is_refused_for_a_line_that_is_not_counted() =>
        Assert.Throws<ArgumentException>(() => StudyExplanation.Of(SampleStudy.Small, ExplainedFigure.Connected, "attic"));

    private static LineFigures Line(LightingCase lighting, string id) => lighting.Lines.Single(line => line.Line == id);
}
