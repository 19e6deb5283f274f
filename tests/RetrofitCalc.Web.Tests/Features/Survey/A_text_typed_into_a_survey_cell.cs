using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Features.Survey.Edits;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Tests.Features.Survey;

/// <summary>Own rules of this program; the limits of a line are those of the engine's check.</summary>
public class A_text_typed_into_a_survey_cell
{
    private static readonly EditState Start = SurveySamples.State(SurveySamples.HallAndBarn());
    private static readonly SurveyContext Context = SurveySamples.Context(Start.Study);

    private static EditState Type(EditState state, string line, SurveyField field, string text) => LineEdits.Set(state, line, field, text, Context);

    [Fact]
    public void goes_into_its_line_when_it_can_be_read()
    {
        var after = Type(Start, "a", SurveyField.Count, "12");
        Assert.Equal(12, after.Line("a").Count);
        Assert.Empty(after.Drafts);
    }

    [Fact]
    public void is_kept_as_typed_when_it_cannot_and_the_fact_is_then_not_known()
    {
        var after = Type(Start, "a", SurveyField.Count, "1O");
        Assert.Null(after.Line("a").Count);
        var draft = Assert.Single(after.Drafts);
        Assert.Equal(("a", "Count", "1O"), (draft.Line, draft.Field, draft.Text));
        Assert.Contains("is not a number", draft.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void that_can_be_read_clears_the_one_that_could_not()
    {
        var after = Type(Type(Start, "a", SurveyField.Count, "1O"), "a", SurveyField.Count, "10");
        Assert.Equal(10, after.Line("a").Count);
        Assert.Empty(after.Drafts);
    }

    [Fact]
    public void changes_nothing_when_it_says_the_same() => Assert.Same(Start, Type(Start, "a", SurveyField.Count, "10"));

    // 10 luminaires × 2 lamps = 20 lamps.
    [Fact]
    public void may_not_say_more_lamps_out_than_there_are()
    {
        Assert.Equal(20, Type(Start, "a", SurveyField.LampsOut, "20").Line("a").LampsOut);
        var after = Type(Start, "a", SurveyField.LampsOut, "21");
        Assert.Null(after.Line("a").LampsOut);
        Assert.Equal("This line has only 20 lamps (10 luminaires × 2). Type 0 to 20.", Assert.Single(after.Drafts).Message);
    }

    [Fact]
    public void is_read_again_when_another_cell_makes_it_right()
    {
        var wrong = Type(Start, "a", SurveyField.LampsOut, "21");
        var right = Type(wrong, "a", SurveyField.Count, "11");
        Assert.Equal(21, right.Line("a").LampsOut);
        Assert.Empty(right.Drafts);
    }

    [Fact]
    public void moves_aside_when_another_cell_makes_it_impossible()
    {
        var twentyOut = Type(Start, "a", SurveyField.LampsOut, "20");
        var after = Type(twentyOut, "a", SurveyField.Count, "5");
        Assert.Equal(5, after.Line("a").Count);
        Assert.Null(after.Line("a").LampsOut);
        Assert.Equal(("LampsOut", "20"), (after.Drafts[0].Field, after.Drafts[0].Text));
    }

    [Theory]
    [InlineData(SurveyField.Count, "2000000")]
    [InlineData(SurveyField.BallastYear, "2150")]
    [InlineData(SurveyField.DeadBallasts, "11")]
    [InlineData(SurveyField.Reading, "50000 W on 2026-03-04")]
    public void is_kept_as_typed_when_the_engine_would_refuse_it(SurveyField field, string text)
    {
        var after = Type(Start, "a", field, text);
        Assert.Equal((field.ToString(), text), (Assert.Single(after.Drafts).Field, after.Drafts[0].Text));
        Assert.DoesNotContain(Engine.StudyEvaluation.Check(after.Study), p => p.Path.StartsWith("Lines", StringComparison.Ordinal));
    }
}
