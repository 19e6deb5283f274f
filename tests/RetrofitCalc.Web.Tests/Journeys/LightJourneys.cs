using Microsoft.Playwright;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Journeys;

/// <summary>A grower and a manager with a light meter.</summary>
[Collection(JourneyCollection.Name)]
public sealed class LightJourneys(RunningApp app)
{
    /// <summary>One quarter of a bench of 36 by 14 in, from its middle to two edges, 12 in and 16 in under the lamps; invented.</summary>
    private static readonly string[] Near = ["160", "145", "97", "118", "108", "83"], Far = ["122", "112", "78", "101", "93", "69"];

    [Fact]
    public async Task readings_of_a_quarter_at_two_heights_give_a_map_and_a_fix_changes_the_verdict()
    {
        var page = await app.OpenAsync("/");
        var id = await app.CopyExampleAsync(page);
        await page.GotoAsync($"/studies/{id}/light?area=leafy-greens");
        await page.ReadyAsync();
        await RemoveReadingsAsync(page);
        await Assertions.Expect(page.GetByText("Nothing has been read here yet")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("svg.light-map")).ToHaveCountAsync(0);

        await LayOutQuarterAsync(page, "12 in");
        await FillAsync(page, Near);
        await page.GetByLabel("Height of the copy").FillAsync("16");
        await page.GetByRole(AriaRole.Button, new() { Name = "Copy the grid" }).ClickAsync();
        await Assertions.Expect(page.Locator("article.set h3")).ToContainTextAsync("0 of 6 readings, 16 in under the lamps");
        await FillAsync(page, Far);

        await Assertions.Expect(page.Locator("svg.light-map.wide-only[role=img]").First).ToHaveAttributeAsync("aria-label", new System.Text.RegularExpressions.Regex("Contour map of a bench 36 in by 14 in"));
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("Leafy-greens racks would lose");
        await Assertions.Expect(page.Locator(".strip")).ToContainTextAsync("Leafy-greens racks −");
        await page.AccessibleAsync();
        await page.GotoAsync($"/studies/{id}/summary");
        await page.ReadyAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Crop loses light");

        // Of the ways that keep this stage's light, one that leaves no other stage with too little.
        await page.GotoAsync($"/studies/{id}/light?area=leafy-greens&season=Summer&stage=finishing");
        await page.ReadyAsync();
        await page.Locator("table.fixes tbody tr").Filter(new() { HasText = "Every stage here then" }).GetByRole(AriaRole.Button).First.ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).Not.ToContainTextAsync("Leafy-greens racks would lose");
        await Assertions.Expect(page.Locator(".strip")).Not.ToContainTextAsync("Leafy-greens racks −");
        await page.SavedAsync();
        await page.GotoAsync($"/studies/{id}/summary");
        await page.ReadyAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Crop light");
        await Assertions.Expect(page.Locator("main")).Not.ToContainTextAsync("Crop loses light");
        app.NoErrors();
    }

    [Fact]
    public async Task readings_are_taken_on_the_spot_with_a_phone()
    {
        var desk = await app.OpenAsync("/");
        var id = await app.CopyExampleAsync(desk);
        var page = await app.OpenAsync($"/studies/{id}/light?area=leafy-greens", RunningApp.Phone);
        await RemoveReadingsAsync(page);
        await LayOutQuarterAsync(page, "12");
        var walk = page.Locator(".walk");
        await Assertions.Expect(walk).ToContainTextAsync("Reading 1 of 6");
        await Assertions.Expect(walk).ToContainTextAsync("0 in from the middle, 0 in from the middle");
        foreach (var (i, reading) in Near.Take(3).Index())
        {
            await Assertions.Expect(walk).ToContainTextAsync($"Reading {i + 1} of 6");
            await walk.Locator("input").FillAsync(reading);
            await walk.Locator("input").PressAsync("Enter");
        }
        // The way goes back along the second row, so the fourth place is its far end.
        await Assertions.Expect(walk).ToContainTextAsync("Reading 4 of 6");
        await Assertions.Expect(walk).ToContainTextAsync("18 in from the middle, 7 in from the middle");
        await Assertions.Expect(walk.Locator("input")).ToBeFocusedAsync();
        await Assertions.Expect(walk.Locator("circle.dot")).ToHaveCountAsync(3);
        await walk.Locator("input").FillAsync("7o");
        await walk.GetByRole(AriaRole.Button, new() { Name = "Previous" }).ClickAsync();
        await Assertions.Expect(walk.Locator("input")).ToHaveValueAsync("97");
        await walk.GetByRole(AriaRole.Button, new() { Name = "Next" }).ClickAsync();
        await Assertions.Expect(walk.Locator("input")).ToHaveValueAsync("7o");
        await Assertions.Expect(walk.Locator(".field-message")).ToContainTextAsync("7o");
        await page.AccessibleAsync();
        await page.SavedAsync();
        await page.ReloadAsync();
        await page.ReadyAsync();
        await Assertions.Expect(walk).ToContainTextAsync("3 of 6 places still without a reading");
        Assert.Equal(0, await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - document.documentElement.clientWidth"));
        app.NoErrors();
    }

    [Fact]
    public async Task a_block_of_readings_is_pasted_with_one_bad_cell_and_taken_back()
    {
        var page = await app.OpenAsync("/");
        var id = await app.CopyExampleAsync(page);
        await page.GotoAsync($"/studies/{id}/light?area=leafy-greens");
        await page.ReadyAsync();
        await RemoveReadingsAsync(page);
        await LayOutQuarterAsync(page, "12 in");
        await page.Locator(".reading-grid input").First.FocusAsync();
        await page.Locator(".reading-grid input").First.EvaluateAsync("""
            cell => { const data = new DataTransfer(); data.setData("text/plain", "137\t128\t82\n112\tdim\t76\n");
                      cell.dispatchEvent(new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true })); }
            """);
        await Assertions.Expect(page.GetByText("5 cells filled. 1 could not be read and is kept as typed and marked.")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".reading-grid [aria-invalid=true]")).ToHaveValueAsync("dim");
        await page.Locator(".reading-grid input").First.PressAsync("ArrowDown");
        await Assertions.Expect(page.Locator(".reading-grid tbody tr[data-line='1'] input").First).ToBeFocusedAsync();
        await page.AccessibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(page.Locator("article.set h3")).ToContainTextAsync("0 of 6 readings");
        app.NoErrors();
    }

    /// <summary>The example's own readings go, so that the journey's are the only ones.</summary>
    private static async Task RemoveReadingsAsync(IPage page)
    {
        await page.Locator(".readings-panel").WaitForAsync();
        while (await page.Locator("article.set").CountAsync() > 0)
        {
            var title = await page.Locator("article.set h3").TextContentAsync();
            await page.GetByRole(AriaRole.Button, new() { Name = "Remove these readings" }).ClickAsync();
            await Assertions.Expect(page.Locator("article.set h3").Filter(new() { HasText = title })).ToHaveCountAsync(0);
            await page.SavedAsync();
        }
    }

    /// <summary>Three by two readings of one quarter of a bench of 36 by 14 in.</summary>
    private static async Task LayOutQuarterAsync(IPage page, string height)
    {
        foreach (var (side, size) in new[] { ("Length of the bench", "36 in"), ("Width", "14 in") })
        {
            var field = page.Locator(".readings-panel").GetByLabel(side, new() { Exact = false }).First;
            await field.FillAsync(size);
            await field.PressAsync("Tab");
            await Assertions.Expect(field).ToHaveValueAsync(size);
        }
        await page.SavedAsync();
        await page.GetByText("One quarter, from the middle outwards").ClickAsync();
        await page.GetByLabel("Lamps over the sensor").FillAsync(height);
        await page.GetByLabel("Readings along the length").FillAsync("3");
        await page.GetByLabel("Rows across the width").FillAsync("2");
        await page.GetByRole(AriaRole.Button, new() { Name = "Lay out the grid" }).ClickAsync();
        await Assertions.Expect(page.Locator("article.set h3")).ToContainTextAsync("0 of 6 readings, 12 in under the lamps");
    }

    private static async Task FillAsync(IPage page, string[] readings)
    {
        var cells = page.Locator(".reading-grid input");
        await Assertions.Expect(cells).ToHaveCountAsync(readings.Length);
        foreach (var (i, reading) in readings.Index()) await cells.Nth(i).FillAsync(reading);
        await cells.Last.PressAsync("Tab");
        await Assertions.Expect(page.Locator("article.set h3")).ToContainTextAsync($"{readings.Length} readings");
        await page.SavedAsync();
    }
}
