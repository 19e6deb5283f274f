using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Features.Survey.Edits;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Tests.Features.Survey;

public class Lines_and_areas
{
    private static readonly EditState Start = SurveySamples.State(SurveySamples.HallAndBarn() with
    {
        Options =
        [
            new RetrofitOption { Id = "o", Name = "Option", Measures = [new LineMeasure("a", new RenewLikeForLike()) { PartsPerLuminaire = Money.FromUnits(7) }] },
        ],
        Safety = new SafetyRecord { Facts = [new SafetyFact("a", "earth", "true"), new SafetyFact(null, "today", "2027-01-01")] },
    }) with
    { Drafts = [new CellDraft("a", "Note", "x", "y"), new CellDraft("Areas[1]", "Name", "", "A name is needed here.")] };

    private static string Order(EditState state) => string.Join(" ", state.Study.Lines.Select(l => l.Id));

    [Fact]
    public void a_new_line_comes_last_in_its_area() =>
        Assert.Equal("a b new c", Order(LineEdits.Add(Start, new SurveyLine { Id = "new", Area = "hall" })));

    [Fact]
    public void a_duplicate_stands_below_and_is_treated_alike_by_every_option()
    {
        var after = LineEdits.Duplicate(Start, "a", "a2");
        Assert.Equal("a a2 b c", Order(after));
        Assert.Equal(after.Line("a") with { Id = "a2" }, after.Line("a2"));
        Assert.Equal([("a", 7), ("a2", 7)], after.Study.Options[0].Measures.Select(m => (m.Line, m.PartsPerLuminaire!.Value.Units)));
        Assert.Equal("x", after.Drafts.Single(d => d.Line == "a2").Text);
    }

    [Fact]
    public void a_deleted_line_leaves_nothing_behind()
    {
        var after = LineEdits.Delete(Start, "a");
        Assert.Equal("b c", Order(after));
        Assert.Empty(after.Study.Options[0].Measures);
        Assert.Equal("today", Assert.Single(after.Study.Safety.Facts).Field);
        Assert.Equal("Areas[1]", Assert.Single(after.Drafts).Line);
        Assert.Empty(Engine.StudyEvaluation.Check(after.Study));
    }

    [Fact]
    public void a_line_moves_within_its_area_only()
    {
        Assert.Equal("b a c", Order(LineEdits.Move(Start, "a", 1)));
        Assert.Same(Start, LineEdits.Move(Start, "b", 1));
        Assert.Equal(("a c b", "barn"), (Order(LineEdits.MoveTo(Start, "b", "barn")), LineEdits.MoveTo(Start, "b", "barn").Line("b").Area));
    }

    [Fact]
    public void an_area_moves_with_the_texts_typed_into_it()
    {
        var after = AreaEdits.Move(Start, "barn", -1);
        Assert.Equal(["barn", "hall"], after.Study.Areas.Select(a => a.Id));
        Assert.Contains(after.Drafts, d => d.Line == "Areas[0]");
    }

    [Fact]
    public void an_area_with_lines_cannot_be_removed()
    {
        Assert.Same(Start, AreaEdits.Remove(Start, "barn"));
        Assert.Equal(["hall"], AreaEdits.Remove(LineEdits.Delete(Start, "c"), "barn").Study.Areas.Select(a => a.Id));
    }
}
