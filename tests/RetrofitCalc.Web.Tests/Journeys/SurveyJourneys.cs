using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using RetrofitCalc.Data;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Studies;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Journeys;

/// <summary>A walk round the site, then an afternoon with a spreadsheet.</summary>
[Collection(JourneyCollection.Name)]
public sealed class SurveyJourneys(RunningApp app)
{
    private const string SetUp = "2 × F32T8 (4 ft T8), instant start, normal ballast factor";

    /// <summary>An invented site of four lines in two areas: 96 + 96 + 18 + 4 = 214 luminaires.</summary>
    private async Task<IPage> OpenAsync(ViewportSize? size = null)
    {
        var study = await app.Services.GetRequiredService<CatalogueStore>().ResolveAsync(Site());
        var stored = await app.Services.GetRequiredService<StudyStore>().AddAsync(study);
        var page = await app.OpenAsync($"/studies/{stored.Id}/survey", size);
        await Cell(page, "Count, line 1").WaitForAsync();
        return page;
    }

    private static Study Site() => EmptyStudy.Named("Invented site") with
    {
        Areas = [new Area { Id = "shelves", Name = "Shelves" }, new Area { Id = "hall", Name = "Hall" }],
        Lines =
        [
            new SurveyLine { Id = "lower", Name = "Lower tiers", Area = "shelves", SetUp = "f32t8-2-is-nlo", Count = 96, Emergency = EmergencyRole.None },
            new SurveyLine { Id = "upper", Name = "Upper tiers", Area = "shelves", SetUp = "f32t8-2-is-nlo", Count = 96, Emergency = EmergencyRole.None },
            new SurveyLine { Id = "mist", Name = "Mist bench", Area = "shelves", SetUp = "f17t8-2-is-nlo", Count = 18, Emergency = EmergencyRole.None },
            new SurveyLine { Id = "exit", Name = "Exit route", Area = "hall", SetUp = "f96t12-2-es", Count = 4 },
        ],
    };

    private static ILocator Cell(IPage page, string label) => page.GetByLabel(label, new() { Exact = true });

    private static ILocator Foot(IPage page) => page.Locator("table.grid tfoot");

    /// <summary>Puts a text on the cell one stands on as the browser does for Ctrl+V.</summary>
    private static Task PasteAsync(IPage page, string text) => page.EvaluateAsync(
        """
        text => {
            const clipboardData = new DataTransfer();
            clipboardData.setData('text/plain', text);
            document.activeElement.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
        }
        """, text);

    [Fact]
    public async Task an_edited_count_changes_the_figures_and_keys_move_between_cells()
    {
        var page = await OpenAsync();
        // Line 1 has 96 luminaires of two F32T8 on an instant-start ballast, 59 W: 5,664 W. One more is 5,723 W.
        var row = page.Locator("tr[data-line]").First;
        await Assertions.Expect(row).ToContainTextAsync("5,664");
        await Cell(page, "Count, line 1").FillAsync("97");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(row).ToContainTextAsync("5,723");
        await Assertions.Expect(page.Locator(".lead")).ToContainTextAsync("215 luminaires");
        await Assertions.Expect(Cell(page, "Count, line 2")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(Cell(page, "Lamps out, line 2")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("ArrowUp");
        await Assertions.Expect(Cell(page, "Lamps out, line 1")).ToBeFocusedAsync();
        await page.SavedAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).First.ClickAsync();
        await Assertions.Expect(Cell(page, "Count, line 1")).ToHaveValueAsync("96");
        app.NoErrors();
    }

    [Fact]
    public async Task a_text_that_cannot_be_read_outlives_a_reload_and_is_mended_in_place()
    {
        var page = await OpenAsync();
        await Cell(page, "Lamps out, line 3").FillAsync("41");
        await page.Keyboard.PressAsync("Tab");
        // Line 3 has 18 luminaires of two lamps.
        await Assertions.Expect(page.Locator("tr.message").GetByText("This line has only 36 lamps (18 luminaires × 2). Type 0 to 36.")).ToBeVisibleAsync();
        await page.SavedAsync();
        await page.ReloadAsync();
        await page.ReadyAsync();
        await Assertions.Expect(Cell(page, "Lamps out, line 3")).ToHaveValueAsync("41");
        await page.AccessibleAsync();
        await Cell(page, "Lamps out, line 3").FillAsync("4");
        await page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(page.Locator("tr.message").GetByText("This line has only 36 lamps")).ToHaveCountAsync(0);
        app.NoErrors();
    }

    [Fact]
    public async Task two_hundred_lines_are_pasted_and_taken_back_in_one_step()
    {
        var page = await OpenAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a line", Exact = true }).ClickAsync();
        await Assertions.Expect(Cell(page, "Name, line 5")).ToBeFocusedAsync();
        await PasteAsync(page, string.Concat(Enumerable.Range(1, 200).Select(i => $"Row {i}\t{SetUp}\t3\t0\t9 ft\t277\tinstant\t2015\tdry\tnone\n")));
        await Assertions.Expect(Foot(page)).ToContainTextAsync("204 lines");
        // 214 luminaires and 200 × 3.
        await Assertions.Expect(Foot(page)).ToContainTextAsync("814");
        Assert.True(await page.Locator("tr[data-line]").CountAsync() < 120, "Only rows in sight are rendered.");
        await page.AccessibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).First.ClickAsync();
        await Assertions.Expect(Foot(page)).ToContainTextAsync("5 lines");
        await page.SavedAsync();
        app.NoErrors();
    }

    [Fact]
    public async Task a_file_with_errors_shows_them_by_row_and_column_and_loses_nothing()
    {
        var page = await OpenAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Import CSV or XLSX" }).ClickAsync();
        await page.ChooseFileAsync("A CSV file", Csv("survey.csv",
            "Room;Fixture;Qty;Volts;Colour", $"North hall;{SetUp};12;277;red", $"North hall;{SetUp};1O;277;", $"North hall;{SetUp};5;high;"));
        await Assertions.Expect(page.GetByText("1 of 3 rows can be taken, 2 have a cell to mend")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByText("A new area is made: North hall.")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByText("Row 3, Count: \"1O\" is not a number.")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByText("Not used: Colour.")).ToBeVisibleAsync();
        await page.AccessibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Take all, keep 2 rows" }).ClickAsync();
        await Assertions.Expect(Foot(page)).ToContainTextAsync("7 lines, 3 areas");
        await Assertions.Expect(Cell(page, "Count, line 6")).ToHaveValueAsync("1O");
        await Assertions.Expect(Cell(page, "Volts, line 7")).ToHaveValueAsync("high");
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).First.ClickAsync();
        await Assertions.Expect(Foot(page)).ToContainTextAsync("4 lines, 2 areas");
        app.NoErrors();
    }

    [Fact]
    public async Task a_file_of_a_million_rows_is_refused_in_a_sentence()
    {
        var page = await OpenAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Import CSV or XLSX" }).ClickAsync();
        var rows = new byte[8 + (3 * 1_000_000)];
        "Area,Qty"u8.CopyTo(rows);
        for (var i = 8; i < rows.Length; i += 3) "\n1,"u8.CopyTo(rows.AsSpan(i));
        await page.ChooseFileAsync("A CSV file", new FilePayload { Name = "large.csv", MimeType = "text/csv", Buffer = rows });
        await Assertions.Expect(page.GetByText("more than 20,000 rows")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Cancel" }).ClickAsync();
        await Assertions.Expect(Foot(page)).ToContainTextAsync("4 lines");
        app.NoErrors();
    }

    [Fact]
    public async Task a_card_is_edited_by_thumb_on_a_phone()
    {
        var page = await OpenAsync(RunningApp.Phone);
        await Cell(page, "Count, line 2").FillAsync("97");
        await Cell(page, "Emergency role, line 4").SelectOptionAsync("none");
        await page.GetByRole(AriaRole.Button, new() { Name = "More of line 2" }).ClickAsync();
        await Cell(page, "Note, line 2").FillAsync("one more by the door");
        await page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(page.Locator(".lead")).ToContainTextAsync("215 luminaires");
        await page.SavedAsync();
        var small = await page.Locator("table.grid :is(input, select, button)").EvaluateAllAsync<string[]>(
            "all => all.filter(e => e.offsetParent && e.getBoundingClientRect().height < 24).map(e => e.outerHTML)");
        Assert.Empty(small);
        var overflow = await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
        Assert.True(overflow <= 0, $"The page scrolls sideways by {overflow} px.");
        await page.AccessibleAsync();
        await page.ReloadAsync();
        await page.ReadyAsync();
        await Assertions.Expect(Cell(page, "Count, line 2")).ToHaveValueAsync("97");
        app.NoErrors();
    }

    [Fact]
    public async Task a_question_leads_to_its_cell()
    {
        var page = await OpenAsync();
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("Go to line 4: Does any") }).ClickAsync();
        await Assertions.Expect(Cell(page, "Emergency role, line 4")).ToBeFocusedAsync();
        app.NoErrors();
    }

    private static FilePayload Csv(string name, params string[] lines) =>
        new() { Name = name, MimeType = "text/csv", Buffer = System.Text.Encoding.UTF8.GetBytes(string.Join('\n', lines)) };
}
