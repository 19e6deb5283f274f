using System.Text;
using Microsoft.Playwright;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Journeys;

/// <summary>A facility manager with a bill in hand.</summary>
[Collection(JourneyCollection.Name)]
public sealed class TariffJourneys(RunningApp app)
{
    /// <summary>The worked tariff of the example, as its file says: prices, hours, demand with ratchet, customer charge, four holidays.</summary>
    [Fact]
    public async Task the_worked_tariff_built_from_one_price_bills_what_the_example_bills()
    {
        var page = await OpenAsync();
        var title = page.GetByRole(AriaRole.Heading, new() { Level = 1 });
        var worked = await title.InnerTextAsync();
        var july = await Bill(page, "July").Locator("tfoot").InnerTextAsync();

        await page.GetByLabel("Kind of tariff").SelectOptionAsync("flat");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Demand, by the highest load of the month" })).ToHaveCountAsync(0);
        await Assertions.Expect(Bill(page, "July").Locator("tfoot")).Not.ToHaveTextAsync(july, new() { UseInnerText = true });
        await page.GetByLabel("Kind of tariff").SelectOptionAsync("seasons");
        foreach (var (period, price) in new[] { ("Summer on-peak", "0.214"), ("Summer off-peak", "0.118"), ("Winter on-peak", "0.142"), ("Winter off-peak", "0.098") })
            await TypeAsync(page.GetByLabel($"Price of {period}", new() { Exact = false }), price);

        // The page starts with peaks from 12 to 20 in both seasons; the sheet says 12 to 18 in summer and 7 to 13 in winter.
        await PaintAsync(page, "Summer off-peak", "6", "9", "18", "20");
        await PaintAsync(page, "Winter off-peak", "10", "5", "13", "20");
        await PaintAsync(page, "Winter on-peak", "10", "5", "7", "13");

        foreach (var (name, price, first, last) in new[] { ("Summer demand", "14.2", "Jun 1", "Sep 30"), ("Winter demand", "9.6", "Oct 1", "May 31") })
        {
            await page.GetByRole(AriaRole.Button, new() { Name = "Add a demand charge" }).ClickAsync();
            var added = page.Locator("section.demand-charge").Nth(name == "Summer demand" ? 0 : 1);
            await TypeAsync(added.GetByLabel("Name on the bill"), name);
            await TypeAsync(added.GetByLabel("Price,", new() { Exact = false }), price);
            await TypeAsync(added.GetByLabel("First day"), first);
            await TypeAsync(added.GetByLabel("Last day"), last);
            await TypeAsync(added.GetByLabel("Ratchet,", new() { Exact = false }), "60");
        }
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a fixed charge" }).ClickAsync();
        await TypeAsync(page.GetByLabel("Amount,", new() { Exact = false }), "45");
        await page.Locator("summary", new() { HasText = "Holidays, meter reading, rounding" }).ClickAsync();
        await TypeAsync(page.GetByLabel("Holidays billed as weekend"), "Jan 1, Jul 4, Nov 26, Dec 25");

        await Assertions.Expect(title).ToHaveTextAsync(worked);
        await Assertions.Expect(Bill(page, "July").Locator("tfoot")).ToHaveTextAsync(july, new() { UseInnerText = true });
        await page.SavedAsync();
        app.NoErrors();
    }

    [Fact]
    public async Task a_drag_of_the_mouse_paints_a_block_in_one_step_and_undo_takes_it_back()
    {
        var page = await OpenAsync();
        var grid = await GridAsync(page, "Monday to Friday");
        await page.GetByRole(AriaRole.Radio, new() { Name = "Winter on-peak" }).CheckAsync();
        await Cell(grid, 6, 12).ScrollIntoViewIfNeededAsync();
        await Cell(grid, 6, 12).HoverAsync();
        await page.Mouse.DownAsync();
        await Cell(grid, 8, 14).HoverAsync();
        await page.Mouse.UpAsync();
        await Assertions.Expect(Cell(grid, 7, 13)).ToHaveTextAsync("C");
        await Assertions.Expect(Cell(grid, 8, 14)).ToHaveTextAsync("C");
        await Assertions.Expect(Cell(grid, 8, 15)).ToHaveTextAsync("A");
        await Assertions.Expect(Cell(grid, 9, 14)).ToHaveTextAsync("A");
        await page.SavedAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(Cell(grid, 7, 13)).ToHaveTextAsync("A");
        await Assertions.Expect(Cell(grid, 6, 12)).ToHaveTextAsync("A");
        app.NoErrors();
    }

    [Fact]
    public async Task keys_move_extend_and_paint_and_the_focus_stays()
    {
        var page = await OpenAsync();
        var grid = await GridAsync(page, "Weekends and holidays");
        await Cell(grid, 1, 0).FocusAsync();
        foreach (var key in new[] { "ArrowDown", "ArrowRight", "ArrowRight", "Shift+ArrowRight", "Shift+ArrowDown" })
            await page.Keyboard.PressAsync(key);
        await Assertions.Expect(grid.Locator("[aria-selected=true]")).ToHaveCountAsync(4);
        await page.Keyboard.PressAsync("Space");
        await Assertions.Expect(Cell(grid, 2, 2)).ToHaveTextAsync("A");
        await Assertions.Expect(Cell(grid, 3, 3)).ToHaveTextAsync("A");
        await Assertions.Expect(Cell(grid, 3, 4)).Not.ToHaveTextAsync("A");
        await Assertions.Expect(Cell(grid, 3, 3)).ToBeFocusedAsync();
        await page.AccessibleAsync();
        app.NoErrors();
    }

    [Fact]
    public async Task a_finger_paints_on_a_phone_with_hours_down_and_months_across()
    {
        var page = await OpenAsync(RunningApp.Phone);
        var grid = await GridAsync(page, "Monday to Friday");
        var (morning, evening) = (await Cell(grid, 7, 8).BoundingBoxAsync(), await Cell(grid, 7, 9).BoundingBoxAsync());
        Assert.True(evening!.Y > morning!.Y && Math.Abs(evening.X - morning.X) < 1);
        Assert.True(morning.Width >= 24 && morning.Height >= 24, $"A cell is {morning.Width} × {morning.Height} px.");
        await Cell(grid, 7, 8).ClickAsync();
        await Assertions.Expect(Cell(grid, 7, 8)).ToHaveTextAsync("A");
        await page.GetByLabel("Weekends, holidays", new() { Exact = true }).CheckAsync();
        await Assertions.Expect(grid).ToBeHiddenAsync();
        await page.AccessibleAsync();
        app.NoErrors();
    }

    [Fact]
    public async Task a_rate_record_shows_what_is_used_before_it_is_taken()
    {
        var page = await OpenAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Take in a rate record" }).ClickAsync();
        await page.ChooseFileAsync("Rate record, JSON", File("""
            { "utility": "Invented Valley Power", "name": "Invented two-price rate", "startdate": 1767225600, "fixedchargefirstmeter": 25, "fixedchargeunits": "$/month",
              "energyratestructure": [[{ "rate": 0.10 }], [{ "rate": 0.25, "adj": 0.01 }]], "colour": "blue",
              "energyweekdayschedule": [MONTHS], "energyweekendschedule": [REST] }
            """));
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { NameRegex = new("fields are used") })).ToBeVisibleAsync();
        await page.Locator("summary", new() { HasText = "Not used" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Region, new() { Name = "Not used" })).ToContainTextAsync("colour");
        await page.AccessibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Use in this study" }).ClickAsync();
        await page.WaitForURLAsync("**/tariff");
        await Assertions.Expect(page.GetByLabel("Name on the bill").First).ToHaveValueAsync("Invented two-price rate");
        var grid = await GridAsync(page, "Monday to Friday");
        await Assertions.Expect(Cell(grid, 1, 7)).Not.ToHaveTextAsync(await Cell(grid, 1, 8).InnerTextAsync());
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Price of Summer on-peak")).ToHaveValueAsync("0.214");
        app.NoErrors();
    }

    [Fact]
    public async Task a_malformed_record_is_named_by_line_and_column_and_nothing_changes()
    {
        var page = await OpenAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Take in a rate record" }).ClickAsync();
        await page.ChooseFileAsync("Rate record, JSON", File("{ \"name\": \"Broken\",\n  \"energyratestructure\": [[{ \"rate\": }]] }"));
        await Assertions.Expect(page.GetByText("cannot be used", new() { Exact = false })).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("[role=alert] li").First).ToContainTextAsync("ine 2");
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Use in this study" })).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Link, new() { Name = "Back to the tariff of this study" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Price of Summer on-peak")).ToHaveValueAsync("0.214");
        app.NoErrors();
    }

    [Fact]
    public async Task a_library_tariff_is_found_looked_at_used_and_the_page_fits()
    {
        foreach (var size in new[] { RunningApp.Desktop, RunningApp.Phone })
        {
            var page = await OpenAsync(size);
            await page.GetByRole(AriaRole.Link, new() { Name = "Choose from the library" }).ClickAsync();
            await TypeAsync(page.GetByLabel("Find by name, source or currency"), "invented time of use");
            await Assertions.Expect(page.Locator("section[aria-labelledby=list] tbody tr")).ToHaveCountAsync(1);
            await page.GetByRole(AriaRole.Link, new() { Name = "General service, time of use (invented)" }).ClickAsync();
            await Assertions.Expect(page.GetByRole(AriaRole.Region, new() { Name = "Charges of General service, time of use (invented)" })).ToContainTextAsync("$14.20/kW");
            Assert.Contains("find=invented", page.Url, StringComparison.Ordinal);
            await page.AccessibleAsync();
            Assert.True(await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - document.documentElement.clientWidth") <= 0, "The library scrolls sideways.");
            await page.GetByRole(AriaRole.Button, new() { Name = "Use in this study" }).ClickAsync();
            await page.WaitForURLAsync("**/tariff");
            await Assertions.Expect(page.GetByLabel("Price of Summer on-peak")).ToHaveValueAsync("0.214");
        }
        app.NoErrors();
    }

    private async Task<IPage> OpenAsync(ViewportSize? size = null)
    {
        var page = await app.OpenAsync("/", size);
        var id = await app.CopyExampleAsync(page);
        await page.GotoAsync($"/studies/{id}/tariff");
        await page.ReadyAsync();
        return page;
    }

    private static ILocator Bill(IPage page, string month) => page.GetByRole(AriaRole.Region, new() { Name = $"Bill of {month}", Exact = true });

    private static async Task TypeAsync(ILocator field, string text)
    {
        await field.FillAsync(text);
        await field.PressAsync("Tab");
    }

    private static async Task PaintAsync(IPage page, string period, string firstMonth, string lastMonth, string from, string to)
    {
        var sentence = page.GetByRole(AriaRole.Group, new() { Name = "Paint by months and hours" });
        await page.GetByRole(AriaRole.Radio, new() { Name = period }).CheckAsync();
        foreach (var (field, value) in new[] { ("First month", firstMonth), ("Last month", lastMonth), ("From", from), ("To", to) })
            await sentence.GetByLabel(field, new() { Exact = true }).SelectOptionAsync(value);
        await sentence.GetByRole(AriaRole.Button, new() { Name = $"Paint {period}" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel($"Prices by month and hour, Monday to Friday").Locator($"[data-month='{firstMonth}'][data-hour='{from}']")).ToHaveAttributeAsync("aria-label", new System.Text.RegularExpressions.Regex(period));
    }

    /// <summary>The table to be painted, once its script listens.</summary>
    private static async Task<ILocator> GridAsync(IPage page, string days)
    {
        await page.Locator("table.hour-grid[data-ready=yes]").Nth(1).WaitForAsync(new() { State = WaitForSelectorState.Attached });
        return page.Locator($"table.hour-grid[aria-label$='{days}' i]");
    }

    private static ILocator Cell(ILocator grid, int month, int hour) => grid.Locator($"[data-month='{month}'][data-hour='{hour}']");

    /// <summary>An invented record: the second price from 8 to 20 on weekdays, the first at all other hours.</summary>
    private static FilePayload File(string record)
    {
        var day = string.Join(',', Enumerable.Range(0, 24).Select(h => h is >= 8 and < 20 ? 1 : 0));
        var months = string.Join(',', Enumerable.Repeat($"[{day}]", 12));
        var rest = string.Join(',', Enumerable.Repeat($"[{string.Join(',', Enumerable.Repeat(0, 24))}]", 12));
        var text = record.Replace("MONTHS", months, StringComparison.Ordinal).Replace("REST", rest, StringComparison.Ordinal);
        return new() { Name = "record.json", MimeType = "application/json", Buffer = Encoding.UTF8.GetBytes(text) };
    }
}
