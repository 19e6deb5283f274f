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

    /// <summary>Line a hangs lowest over the hall's bench, b 0.2 m higher; the barn's light strays into the hall.</summary>
    private static readonly EditState Lit = Start with
    {
        Study = Start.Study with
        {
            Areas =
            [
                Start.Study.Areas[0] with { Light = new AreaLight { Layout = [new("a", default), new("b", default) { HigherBy = 0.2 }] } },
                Start.Study.Areas[1] with { Light = new AreaLight { Stray = [new("hall", default)] } },
            ],
            Options = [Start.Study.Options[0] with { Stages = [new("hall", "Spring", "growing on"), new("barn", "Spring", "growing on")] }],
        },
    };

    [Fact]
    public void a_line_that_goes_takes_its_luminaires_from_the_bench_and_the_next_is_the_lowest()
    {
        foreach (var after in new[] { LineEdits.Delete(Lit, "a"), LineEdits.MoveTo(Lit, "a", "barn") })
        {
            var left = Assert.Single(after.Study.Areas[0].Light!.Layout);
            Assert.Equal(("b", 0.0), (left.Line, left.HigherBy));
        }
        Assert.Equal(0.2, LineEdits.Delete(Lit, "c").Study.Areas[0].Light!.Layout[1].HigherBy);
    }

    [Fact]
    public void an_area_that_goes_takes_the_light_that_strays_onto_it_and_its_stages_in_options()
    {
        var empty = LineEdits.Delete(LineEdits.Delete(Lit, "a"), "b");
        var after = AreaEdits.Remove(empty, "hall").Study;
        Assert.Empty(Assert.Single(after.Areas).Light!.Stray);
        Assert.Equal("barn", Assert.Single(after.Options[0].Stages).Area);
    }
}
