using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Files.Surveys.Tables;
using RetrofitCalc.Web.Features.Survey.Edits;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Tests.Features.Survey;

/// <summary>Own rules of this program: right and down in the order of the page, lines added below the last.</summary>
public class A_range_pasted_into_the_survey
{
    private static readonly EditState Start = SurveySamples.State(SurveySamples.HallAndBarn());
    private static readonly SurveyContext Context = SurveySamples.Context(Start.Study);

    private static RangePaste.Outcome Paste(EditState state, string line, SurveyField field, string text) =>
        RangePaste.Apply(state, line, field, PastedTable.Cells(text).Value!, Context);

    // Three rows of four cells from the count of line b: b and c are filled, one line is added in the barn, where c stands.
    [Fact]
    public void fills_three_rows_of_four_cells_and_adds_the_line_that_is_missing()
    {
        var done = Paste(Start, "b", SurveyField.Count, "3\t1\t9 ft\t277\n5\t2\t10 ft\t277\n7\t0\t11 ft\t120\n");
        Assert.Equal((2, 1, 0), (done.Filled, done.Added, done.Unread));
        Assert.Equal([10, 3, 5, 7], done.State.Study.Lines.Select(l => l.Count));
        Assert.Equal([null, 1, 2, 0], done.State.Study.Lines.Select(l => l.LampsOut));
        Assert.Equal([277, 277, 120], done.State.Study.Lines.Skip(1).Select(l => l.SupplyVolts));
        Assert.Equal("barn", done.State.Study.Lines[3].Area);
    }

    [Fact]
    public void keeps_the_cells_that_cannot_be_read_and_takes_the_rest_of_their_row()
    {
        var done = Paste(Start, "a", SurveyField.SetUp, "no such thing\t8\n" + SurveySamples.OneLamp + "\t9\n");
        Assert.Equal(1, done.Unread);
        Assert.Equal([8, 9, 6], done.State.Study.Lines.Select(l => l.Count));
        Assert.Equal(("a", "SetUp", "no such thing"), (done.State.Drafts[0].Line, done.State.Drafts[0].Field, done.State.Drafts[0].Text));
        Assert.Equal("one", done.State.Line("b").SetUp);
    }

    [Fact]
    public void goes_on_from_the_last_column_in_sight_into_those_that_open_below()
    {
        var done = Paste(Start, "a", SurveyField.Location, "damp\texit route\t2\t2024-02-01\n");
        var line = done.State.Line("a");
        Assert.Equal((LocationClass.Damp, Engine.Studies.EmergencyRole.ExitRoute, 2), (line.Location, line.Emergency, line.DeadBallasts));
        Assert.Equal(new NodaTime.LocalDate(2024, 2, 1), line.LampsInstalled);
    }

    [Fact]
    public void leaves_lines_alone_that_lie_beside_it()
    {
        var done = Paste(Start, "b", SurveyField.Count, "4\n");
        Assert.Same(Start, done.State);
    }

    [Fact]
    public void of_two_thousand_rows_gives_every_new_line_an_id_of_its_own()
    {
        var text = string.Concat(Enumerable.Range(1, 2000).Select(i => $"Row {i}\t{SurveySamples.TwoLamps}\t{i}\n"));
        var lines = Paste(Start, "c", SurveyField.Name, text).State.Study.Lines;
        Assert.Equal(2002, lines.Count);
        Assert.Equal(2002, lines.Select(l => l.Id).Distinct().Count());
        Assert.Equal((14 + (2000 * 2001 / 2)), lines.Sum(l => l.Count));
    }
}
