using Microsoft.Playwright;
using RetrofitCalc.Files.Tests.Weather;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Journeys;

/// <summary>Someone who knows the place's cooling and heating, and has a weather file.</summary>
[Collection(JourneyCollection.Name)]
public sealed class PlantJourneys(RunningApp app)
{
    [Fact]
    public async Task a_weather_file_told_by_line_then_mended_lets_the_plant_follow_the_hours()
    {
        var page = await app.OpenAsync("/");
        var id = await app.CopyExampleAsync(page);
        await page.Locator("#site > summary").ClickAsync();
        var site = page.Locator("#site");

        var broken = EpwText.Lines(_ => 21);
        broken[500] = broken[500].Replace(",21.0,", ",warm,", StringComparison.Ordinal);
        await page.ChooseFileAsync("Weather file (EPW)", Epw("broken.epw", broken));
        await Assertions.Expect(site.GetByRole(AriaRole.Alert)).ToContainTextAsync("broken.epw was not read");
        await Assertions.Expect(site.GetByRole(AriaRole.Alert)).ToContainTextAsync("line 501, column");
        await Assertions.Expect(site.GetByRole(AriaRole.Alert)).ToContainTextAsync("found \"warm\"");
        await page.AccessibleAsync();

        await page.ChooseFileAsync("Weather file (EPW)", Epw("place.epw", EpwText.Lines(hour => hour == 3000 ? 99.9 : 21)));
        await Assertions.Expect(site).ToContainTextAsync("1 missing hour without a temperature (hour 1 of 6 May)");
        await site.GetByRole(AriaRole.Button, new() { Name = "Fill 1 missing hour and use it" }).ClickAsync();
        await Assertions.Expect(site).ToContainTextAsync("The weather of Quillmere, OH, USA is in use.");

        await site.GetByLabel("Worked out by").SelectOptionAsync(new SelectOptionValue { Label = "each hour's outdoor temperature" });
        await Assertions.Expect(site.GetByLabel("Cooled when it is outdoors at least")).ToHaveValueAsync("12");
        await Assertions.Expect(site.GetByLabel("Lit hours in which the place is cooled")).ToHaveCountAsync(0);
        await site.GetByLabel("Cooling is rated as").SelectOptionAsync(new SelectOptionValue { Label = "EER" });
        await site.GetByLabel("Cooling, EER").FillAsync("12");
        await site.GetByLabel("Cooling, EER").PressAsync("Tab");
        await page.SavedAsync();
        await Assertions.Expect(site.GetByLabel("Cooling, EER")).ToHaveValueAsync("12");
        await page.AccessibleAsync();

        // 21 °C all year: every lit hour of what follows the site's plant is cooled, none heated.
        await page.GotoAsync($"/studies/{id}/results");
        await page.ReadyAsync();
        await Assertions.Expect(page.GetByText("Leafy-greens racks, Corridors follow the outdoor air of Quillmere, OH, USA hour by hour")).ToContainTextAsync("and 0 heated");
        await Assertions.Expect(page.GetByRole(AriaRole.Rowheader, new() { Name = "Carbon saved in a year by the change" })).ToBeVisibleAsync();
        app.NoErrors();
    }

    [Fact]
    public async Task an_area_takes_published_factors_of_its_own()
    {
        var page = await app.OpenAsync("/");
        var id = await app.CopyExampleAsync(page);
        await page.GotoAsync($"/studies/{id}/schedules");
        await page.ReadyAsync();
        var corridors = page.Locator(".area-schedule", new() { Has = page.GetByRole(AriaRole.Heading, new() { Name = "Corridors", Exact = true }) });
        await corridors.Locator(".area-plant > summary").ClickAsync();
        await corridors.GetByLabel("Cooling and heating", new() { Exact = true }).SelectOptionAsync(new SelectOptionValue { Label = "its own" });
        await corridors.GetByLabel("Worked out by").SelectOptionAsync(new SelectOptionValue { Label = "published factors for a kind of building" });
        await corridors.GetByLabel("Kind of building").SelectOptionAsync(new SelectOptionValue { Label = "Warehouse or industry" });
        await Assertions.Expect(corridors.GetByLabel("Electricity kept of each lighting kWh saved")).ToHaveValueAsync("0.96");
        await Assertions.Expect(corridors).ToContainTextAsync("Bonneville Power Administration");
        await page.SavedAsync();
        await page.AccessibleAsync();
        await page.ReloadAsync();
        await page.ReadyAsync();
        await corridors.Locator(".area-plant > summary").ClickAsync();
        await Assertions.Expect(corridors.GetByLabel("Fuel for each lighting kWh saved")).ToHaveValueAsync("-0.01774");
        app.NoErrors();
    }

    [Fact]
    public async Task circuit_loads_stand_on_the_safety_page_with_who_decides()
    {
        var page = await app.OpenAsync("/");
        var id = await app.CopyExampleAsync(page);
        await page.GotoAsync($"/studies/{id}/safety");
        await page.ReadyAsync();
        var circuits = page.GetByRole(AriaRole.Region, new() { Name = "Circuit loads, for the electrician", Exact = true });
        await Assertions.Expect(circuits).ToContainTextAsync("a licensed electrician decide");
        await Assertions.Expect(circuits).ToContainTextAsync("at least");
        await page.AccessibleAsync();
        app.NoErrors();
    }

    private static FilePayload Epw(string name, IEnumerable<string> lines)
    {
        using var text = new MemoryStream();
        EpwText.Stream(lines).CopyTo(text);
        return new FilePayload { Name = name, MimeType = "application/octet-stream", Buffer = text.ToArray() };
    }
}
