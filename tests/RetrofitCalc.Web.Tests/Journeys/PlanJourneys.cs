using Microsoft.Playwright;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Journeys;

/// <summary>Someone who plans: hours, the bill, and what could be done.</summary>
[Collection(JourneyCollection.Name)]
public sealed class PlanJourneys(RunningApp app)
{
    [Fact]
    public async Task an_overlapping_season_is_named_beside_it_and_nothing_typed_is_lost()
    {
        var page = await OpenAsync("schedules");
        var summer = page.GetByRole(AriaRole.Region, new() { Name = "Summer in Tissue culture", Exact = true });
        await summer.GetByLabel("First day").FillAsync("May 20");
        await summer.GetByLabel("First day").PressAsync("Tab");
        await Assertions.Expect(summer).ToContainTextAsync("overlap on 20 May");
        await page.SavedAsync();
        await page.ReloadAsync();
        await page.ReadyAsync();
        await Assertions.Expect(summer.GetByLabel("First day")).ToHaveValueAsync("May 20");
        await Assertions.Expect(summer).ToContainTextAsync("overlap on 20 May");
        await page.AccessibleAsync();

        await summer.GetByLabel("First day").FillAsync("6/1");
        await summer.GetByLabel("First day").PressAsync("Tab");
        await Assertions.Expect(summer.GetByLabel("First day")).ToHaveValueAsync("Jun 1");
        await Assertions.Expect(summer).Not.ToContainTextAsync("overlap");
        app.NoErrors();
    }

    [Fact]
    public async Task a_decimal_comma_is_refused_with_a_sentence_kept_over_a_reload_and_undone()
    {
        var page = await OpenAsync("tariff");
        var price = page.GetByLabel("Price of Summer on-peak");
        await price.FillAsync("0,25");
        await price.PressAsync("Tab");
        await Assertions.Expect(page.Locator("tr.message")).ToContainTextAsync("could mean two things");
        await page.SavedAsync();
        await page.ReloadAsync();
        await page.ReadyAsync();
        await Assertions.Expect(price).ToHaveValueAsync("0,25");
        await Assertions.Expect(page.GetByRole(AriaRole.Link, new() { Name = "Tariff 1 to mend" })).ToBeVisibleAsync();
        await page.AccessibleAsync();

        await price.FillAsync("0.25");
        await price.PressAsync("Tab");
        await Assertions.Expect(page.Locator("tr.message")).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(price).ToHaveValueAsync("0,25");
        app.NoErrors();
    }

    [Fact]
    public async Task lights_at_other_times_are_worked_out_entered_and_undone()
    {
        var page = await app.OpenAsync("/");
        var id = await app.CopyExampleAsync(page);
        await page.WithoutMeterAsync(id);
        await page.GotoAsync($"/studies/{id}/schedules");
        await page.ReadyAsync();
        var panel = page.GetByRole(AriaRole.Region, new() { Name = "What if lights come on at other times?" });
        await panel.GetByRole(AriaRole.Button, new() { Name = "Work it out" }).ClickAsync();
        await Assertions.Expect(panel.GetByRole(AriaRole.Button, new() { Name = "Work it out again" })).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await Assertions.Expect(panel).ToContainTextAsync("Ask the grower first");
        await Assertions.Expect(panel.GetByRole(AriaRole.Listitem).First).ToContainTextAsync("a year");
        await page.AccessibleAsync();
        await panel.GetByRole(AriaRole.Button, new() { NameRegex = new("^Enter it in the schedule") }).First.ClickAsync();
        await Assertions.Expect(panel).ToContainTextAsync("The study has changed since");
        await page.SavedAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await page.SavedAsync();
        app.NoErrors();
    }

    [Fact]
    public async Task one_price_changed_to_hours_of_use_shows_when_each_applies_and_the_bill()
    {
        var page = await OpenAsync("tariff");
        await page.GetByLabel("Kind of tariff").SelectOptionAsync("flat");
        await Assertions.Expect(page.GetByLabel("Price, $/kWh")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Each hour of the year has one price" })).ToHaveCountAsync(0);
        await page.GetByLabel("Kind of tariff").SelectOptionAsync("seasons");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Each hour of the year has one price" })).ToBeVisibleAsync();

        var bill = page.GetByRole(AriaRole.Region, new() { Name = "Bill of July", Exact = true });
        var before = await bill.Locator("tfoot").InnerTextAsync();
        await page.GetByLabel("Price of Summer on-peak").FillAsync("0.40");
        await page.GetByLabel("Price of Summer on-peak").PressAsync("Tab");
        await Assertions.Expect(bill).ToContainTextAsync("$0.4000/kWh");
        Assert.NotEqual(before, await bill.Locator("tfoot").InnerTextAsync());
        await page.GetByLabel("Month", new() { Exact = true }).SelectOptionAsync("1");
        await Assertions.Expect(page.GetByRole(AriaRole.Region, new() { Name = "Bill of January", Exact = true })).ToContainTextAsync("Winter on-peak");
        Assert.EndsWith("/tariff?month=1", page.Url, StringComparison.Ordinal);
        app.NoErrors();
    }

    [Fact]
    public async Task another_tube_moves_the_payback_and_an_option_can_be_added_copied_and_deleted()
    {
        var page = await OpenAsync("options");
        var load = page.Locator(".strip dl > div", new() { HasText = "Load" }).Locator("dd.proposed");
        var payback = page.Locator(".strip dl > div", new() { HasText = "Payback" }).Locator("dd.proposed");
        var (loadBefore, paybackBefore) = (await load.InnerTextAsync(), await payback.InnerTextAsync());
        // 96 luminaires with two tubes of 24 W instead of 18 W: 1,152 W more.
        await page.GetByLabel("Product, Shelves, tiers 1–2").SelectOptionAsync(new SelectOptionValue { Label = "4 ft T8 direct-wire tube, 24 W, fed at both ends" });
        await Assertions.Expect(load).Not.ToContainTextAsync(Figure(loadBefore));
        await page.GetByLabel("Product for all lines of Tissue culture").SelectOptionAsync("dw-4ft-t8-24");
        await page.GetByRole(AriaRole.Button, new() { Name = "Set all lines of Tissue culture" }).ClickAsync();
        await Assertions.Expect(payback).Not.ToContainTextAsync(Figure(paybackBefore));
        await page.SavedAsync();

        await page.GetByRole(AriaRole.Button, new() { Name = "Direct-wire everywhere" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Name of the option")).ToHaveValueAsync("Direct-wire everywhere");
        await page.GetByRole(AriaRole.Button, new() { Name = "Copy Direct-wire everywhere" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Name of the option")).ToHaveValueAsync("Direct-wire everywhere, copy");
        await page.GetByRole(AriaRole.Button, new() { Name = "Delete Direct-wire everywhere, copy" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Link, new() { Name = "Direct-wire everywhere, copy" })).ToHaveCountAsync(0);
        await page.AccessibleAsync();
        app.NoErrors();
    }

    /// <summary>What the strip shows, without the word for screen readers.</summary>
    private static string Figure(string shown) => shown.Replace("proposed", "", StringComparison.Ordinal).Trim();

    private async Task<IPage> OpenAsync(string place)
    {
        var page = await app.OpenAsync("/");
        var id = await app.CopyExampleAsync(page);
        await page.GotoAsync($"/studies/{id}/{place}");
        await page.ReadyAsync();
        return page;
    }
}
