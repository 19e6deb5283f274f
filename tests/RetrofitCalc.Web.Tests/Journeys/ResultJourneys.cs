using Microsoft.Playwright;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Journeys;

/// <summary>From the results to what is handed out, and what must be answered on the way.</summary>
[Collection(JourneyCollection.Name)]
public sealed class ResultJourneys(RunningApp app)
{
    [Fact]
    public async Task results_show_their_charts_with_findings_and_tables()
    {
        var (page, id) = await StudyAsync();
        await page.GotoAsync($"/studies/{id}/results");
        await page.ReadyAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("the money is back in");
        await Assertions.Expect(page.Locator("figure .plot canvas")).ToHaveCountAsync(5);
        // A drawing that failed would leave the canvas at its 300 by 150 of birth.
        await page.WaitForFunctionAsync("() => [...document.querySelectorAll('.plot canvas')].every(c => c.style.height && c.clientWidth > 300)");
        await Assertions.Expect(page.Locator("figcaption h3").First).ToContainTextAsync("of the load and give no light");
        Assert.Equal(5, await page.Locator("figure details.twin table").CountAsync());
        app.NoErrors();
    }

    [Fact]
    public async Task a_changed_count_reaches_the_downloaded_pdf()
    {
        var (page, id) = await StudyAsync();
        var before = await TitleAsync(page, id);
        await page.GotoAsync($"/studies/{id}/survey");
        await page.ReadyAsync();
        var count = page.GetByRole(AriaRole.Textbox, new() { NameRegex = new("^Count") }).First;
        await count.FillAsync("50");
        await count.PressAsync("Enter");
        await EditedAsync(page);
        var after = await TitleAsync(page, id);
        Assert.NotEqual(before, after);
        var pdf = await PdfTextAsync(page, $"/studies/{id}/summary.pdf");
        Assert.Contains(after.Replace(" ", ""), pdf.Replace(" ", ""));
        Assert.DoesNotContain(before.Replace(" ", ""), pdf.Replace(" ", ""));
        app.NoErrors();
    }

    [Fact]
    public async Task the_measuring_sheet_of_an_area_can_be_printed()
    {
        var (page, id) = await StudyAsync();
        await page.GotoAsync($"/studies/{id}/light?area=leafy-greens");
        await page.ReadyAsync();
        var address = await page.GetByRole(AriaRole.Link, new() { Name = "Measuring sheet to print" }).GetAttributeAsync("href");
        var sheet = (await PdfTextAsync(page, address!)).Replace(" ", "");
        Assert.Contains("LightinLeafy-greensracks:measuringsheet", sheet);
        Assert.Contains("roomdark", sheet);
        Assert.Contains("thefineriskept", sheet);
        app.NoErrors();
    }

    [Fact]
    public async Task an_issued_revision_stays_as_it_was_issued()
    {
        var (page, id) = await StudyAsync();
        var issued = await TitleAsync(page, id);
        await page.GetByRole(AriaRole.Button, new() { Name = "Issue this revision" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Rowheader, new() { NameRegex = new("^Revision") })).ToHaveCountAsync(1);
        var address = await page.GetByRole(AriaRole.Link, new() { Name = "Summary, PDF" }).GetAttributeAsync("href");
        await page.GetByLabel("Option asked for").SelectOptionAsync(new SelectOptionValue { Index = 2 });
        await Assertions.Expect(page.Locator(".sheet .request")).Not.ToHaveTextAsync(issued);
        await page.SavedAsync();
        var text = await PdfTextAsync(page, address!);
        Assert.Contains(issued.Replace(" ", ""), text.Replace(" ", ""));
        Assert.Contains("Issued,revision", text.Replace(" ", ""));
        app.NoErrors();
    }

    [Fact]
    public async Task an_answered_stop_leaves_the_badge_and_comes_back_with_undo()
    {
        var (page, id) = await StudyAsync();
        await page.GotoAsync($"/studies/{id}/safety");
        await page.ReadyAsync();
        var badge = page.Locator(".places .count.stop");
        await Assertions.Expect(badge).ToHaveTextAsync("2 stops");
        var stop = page.Locator("article.notice.stop.open").First;
        await stop.GetByRole(AriaRole.Button, new() { Name = "Record the answer" }).ClickAsync();
        await Assertions.Expect(stop.Locator(".field-message").First).ToContainTextAsync("Type the answer");
        await stop.GetByLabel("Answer", new() { Exact = true }).FillAsync("Fed at both ends, says the sheet");
        await stop.GetByLabel("Answered by the").SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await stop.GetByLabel("Name").FillAsync("A. Sample");
        await stop.GetByRole(AriaRole.Button, new() { Name = "Record the answer" }).ClickAsync();
        await EditedAsync(page);
        await Assertions.Expect(badge).ToHaveTextAsync("1 stop");
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(badge).ToHaveTextAsync("2 stops");
        app.NoErrors();
    }

    [Fact]
    public async Task a_tick_needs_a_name_and_a_fact_clears_its_question()
    {
        var (page, id) = await StudyAsync();
        await page.GotoAsync($"/studies/{id}/safety");
        await page.ReadyAsync();
        var item = page.Locator(".check input[type=checkbox]").First;
        await item.CheckAsync(new() { Force = true });
        await Assertions.Expect(page.Locator("#signer-problem")).ToContainTextAsync("Type the name");
        await Assertions.Expect(item).Not.ToBeCheckedAsync();
        await page.GetByLabel("Name of the person who answers").FillAsync("A. Sample");
        await page.GetByLabel("Name of the person who answers").PressAsync("Tab");
        await page.Locator(".check input[type=checkbox]").First.CheckAsync();
        await Assertions.Expect(page.Locator("#checklist")).ToContainTextAsync("1 of");
        app.NoErrors();
    }

    [Fact]
    public async Task a_copied_entry_is_edited_keeps_its_history_and_is_retired()
    {
        var page = await app.OpenAsync("/catalogue?kind=tubes&q=18%20W%20low");
        await page.GetByRole(AriaRole.Link, new() { Name = "4 ft T8 direct-wire tube, 18 W, low output, fed at one end", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Copy as an own entry" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Edit" }).ClickAsync();
        await page.GetByLabel("line power [W]").FillAsync("1,5");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save" }).ClickAsync();
        await Assertions.Expect(page.Locator(".field-message").First).ToContainTextAsync("could mean two things");
        await page.GetByLabel("line power [W]").FillAsync("17.5");
        await page.GetByRole(AriaRole.Button, new() { Name = "Save" }).ClickAsync();
        await Assertions.Expect(page.Locator(".history")).ToContainTextAsync("line power [W]: 18 → 17.5");
        await page.GetByRole(AriaRole.Button, new() { Name = "Retire" }).ClickAsync();
        await Assertions.Expect(page.Locator(".history li").First).ToContainTextAsync("retired");
        await page.GetByRole(AriaRole.Button, new() { Name = "Bring back" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Delete" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Status)).ToContainTextAsync("is deleted");
        app.NoErrors();
    }

    [Fact]
    public async Task a_catalogue_file_with_a_mistake_imports_nothing_and_names_the_place()
    {
        var page = await app.OpenAsync("/catalogue?kind=tubes");
        await page.GetByText("Import direct-wire tubes from CSV").ClickAsync();
        var file = "id,name,base,length [m],line power [W]\nown-good,Good tube,G13,1.2192,17\nown-bad,Bad tube,G13,1.2192,1O\n"u8.ToArray();
        await page.ChooseFileAsync("CSV file", new FilePayload { Name = "tubes.csv", MimeType = "text/csv", Buffer = file });
        var alert = page.GetByRole(AriaRole.Alert);
        await Assertions.Expect(alert).ToContainTextAsync("Nothing was imported");
        await Assertions.Expect(alert).ToContainTextAsync("line 3, column 5");
        Assert.DoesNotContain("Good tube", await page.Locator(".entries").InnerTextAsync());
        app.NoErrors();
    }

    private async Task<(IPage Page, string Id)> StudyAsync()
    {
        var page = await app.OpenAsync("/");
        return (page, await app.CopyExampleAsync(page));
    }

    /// <summary>The first edit of a study is one that can be undone.</summary>
    private static async Task EditedAsync(IPage page)
    {
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo" })).ToBeEnabledAsync();
        await page.SavedAsync();
    }

    private static async Task<string> TitleAsync(IPage page, string id)
    {
        await page.GotoAsync($"/studies/{id}/summary");
        await page.ReadyAsync();
        return (await page.Locator(".sheet .request").InnerTextAsync()).Trim();
    }

    private static async Task<string> PdfTextAsync(IPage page, string address)
    {
        var answer = await page.APIRequest.GetAsync(address);
        Assert.Equal(200, answer.Status);
        Assert.Equal("application/pdf", answer.Headers["content-type"]);
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(await answer.BodyAsync());
        return string.Join(' ', pdf.GetPages().Select(p => string.Join(' ', p.GetWords().Select(w => w.Text))));
    }
}
