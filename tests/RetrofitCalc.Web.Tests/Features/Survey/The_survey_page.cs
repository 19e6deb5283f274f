using Bunit;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Features.Survey;
using RetrofitCalc.Web.Features.Survey.Grid;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Survey;

public class The_survey_page
{
    private static async Task<IRenderedComponent<SurveyPage>> PageAsync(OpenStudy open)
    {
        var page = open.Page<SurveyPage>();
        await page.WaitForElementAsync("table.grid");
        return page;
    }

    // 10 × 59 W + 4 × 31 W + 6 × 59 W = 590 + 124 + 354 = 1,068 W.
    [Fact]
    public async Task says_what_the_lines_draw_together_as_printed_line_by_line()
    {
        await using var open = await OpenStudy.Of(SurveySamples.HallAndBarn());
        var page = await PageAsync(open);
        Assert.StartsWith("20 luminaires draw 1,068\u00A0W", page.Find(".lead").TextContent, StringComparison.Ordinal);
        Assert.Equal(["590", "124", "354", "1,068"], page.FindAll("td[data-label='Total watts']").Select(td => td.TextContent));
        Assert.Equal("3 lines, 2 areas", page.Find("tfoot td.text").TextContent);
    }

    [Fact]
    public async Task keeps_a_text_in_its_cell_and_ties_the_message_to_it()
    {
        await using var open = await OpenStudy.Of(SurveySamples.HallAndBarn());
        var page = await PageAsync(open);
        await page.Find("[aria-label='Lamps out, line 1']").ChangeAsync(new() { Value = "41" });
        var cell = page.WaitForElement("[aria-label='Lamps out, line 1'][aria-invalid=true]");
        Assert.Equal("41", cell.GetAttribute("value"));
        var message = page.Find("#" + cell.GetAttribute("aria-describedby"));
        Assert.Equal("Lamps out: 41", message.QuerySelector("b")!.TextContent);
        Assert.StartsWith("This line has only 20 lamps (10 luminaires × 2). Type 0 to 20. What you typed is kept", message.QuerySelector("span")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task gives_a_deleted_line_back_on_one_undo()
    {
        await using var open = await OpenStudy.Of(SurveySamples.HallAndBarn());
        var page = await PageAsync(open);
        await page.Find("[aria-label='More of line 2']").ClickAsync(new());
        await page.FindAll("button").Single(b => b.TextContent == "Delete line 2").ClickAsync(new());
        Assert.Equal(["a", "c"], open.Study.Lines.Select(l => l.Id));
        Assert.Equal("deletion of Line b", open.Session.CanUndo);
        await open.Session.UndoAsync();
        Assert.Equal(["a", "b", "c"], open.Study.Lines.Select(l => l.Id));
        Assert.Equal(4, open.Study.Lines[1].Count);
    }

    [Fact]
    public async Task takes_a_pasted_range_back_on_one_undo()
    {
        await using var open = await OpenStudy.Of(SurveySamples.HallAndBarn());
        var before = open.Session.State;
        var editor = new SurveyEditor(open.Session, SurveySamples.Catalogue);
        await editor.PasteAsync("b", SurveyField.Count, "3\t1\t9 ft\t277\n5\t2\tx\t277\n7\t0\t11 ft\t120\n");
        Assert.Equal(4, open.Study.Lines.Count);
        Assert.Equal("3 rows pasted: 2 lines filled, 1 added. 1 cell that could not be read is marked. One undo takes it all back.", editor.Said);
        await open.Session.UndoAsync();
        Assert.Equal(before.Study.Lines, open.Study.Lines);
        Assert.Empty(open.Session.State.Drafts);
        Assert.Null(open.Session.CanUndo);
    }

    [Fact]
    public async Task draws_what_nobody_has_said_as_not_known()
    {
        await using var open = await OpenStudy.Of(SurveySamples.HallAndBarn());
        var page = await PageAsync(open);
        Assert.Contains("unknown-value", page.Find("[aria-label='Volts, line 1']").ClassName, StringComparison.Ordinal);
        Assert.Contains("unknown-value", page.Find("[aria-label='Emergency role, line 1']").ClassName, StringComparison.Ordinal);
        Assert.DoesNotContain("unknown-value", page.Find("[aria-label='Count, line 1']").ClassName ?? "", StringComparison.Ordinal);
    }

    [Fact]
    public async Task asks_one_question_for_all_lines_it_is_open_on()
    {
        await using var open = await OpenStudy.Of(SurveySamples.HallAndBarn());
        var rows = GridRows.Of(open.Session.State, open.Session.Result, open.Session.Rules, new HashSet<string>());
        var volts = Assert.Single(SurveyQuestions.Of(open.Session.Result!, [], rows), q => q.Field == SurveyField.SupplyVolts);
        Assert.Equal("What is the supply voltage at the luminaires?", volts.Text);
        Assert.Equal([1, 2, 3], volts.Lines.Select(l => l.Number));
    }

    [Fact]
    public async Task counts_dark_lamps_when_told_to()
    {
        await using var open = await OpenStudy.Of(SurveySamples.HallAndBarn());
        var page = await PageAsync(open);
        await page.Find("[aria-label='Lamps out, line 1']").ChangeAsync(new() { Value = "10" });
        Assert.Contains("1,068", page.Find(".lead").TextContent, StringComparison.Ordinal);
        await page.FindAll("input[name=baseline]")[1].ChangeAsync(new() { Value = "on" });
        // Half the lamps of line a are dark; joined side by side each draws its share: 1,068 − 590 / 2 = 773 W.
        Assert.Contains("773", page.WaitForElement(".lead").TextContent, StringComparison.Ordinal);
    }
}
