using Microsoft.Playwright;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Journeys;

/// <summary>Someone with a clipboard and a bill, who has never seen the program.</summary>
[Collection(JourneyCollection.Name)]
public sealed class First_answer_journey(RunningApp app)
{
    [Fact]
    public async Task five_facts_give_watts_energy_cost_heat_and_a_payback_with_its_range()
    {
        var page = await app.OpenAsync("/");
        await page.GetByLabel("Which set-up hangs there now").SelectOptionAsync(new SelectOptionValue { Value = "f32t8-2-is-nlo" });
        await page.GetByLabel("How many luminaires").FillAsync("192");
        await page.GetByLabel("Lit hours a day").FillAsync("16");
        await page.GetByLabel("Price of electricity").FillAsync("0.15");
        await page.GetByLabel("Replace with").SelectOptionAsync(new SelectOptionValue { Value = "dw-4ft-t8-15" });
        await page.GetByRole(AriaRole.Button, new() { Name = "Answer" }).ClickAsync();

        var answer = page.GetByRole(AriaRole.Region, new() { Name = "First answer", Exact = true });
        // 192 luminaires × 59 W (two F32T8 on an instant-start ballast) = 11,328 W; × 16 h × 365 d = 66,156 kWh; × 0.15 = $9,923.
        await Assertions.Expect(answer).ToContainTextAsync("11,328");
        await Assertions.Expect(answer).ToContainTextAsync("66,156");
        await Assertions.Expect(answer).ToContainTextAsync("$9,923");
        // 11,328 W × 3.412142 = 38,653 BTU/h.
        await Assertions.Expect(answer).ToContainTextAsync("38,653");
        // Two 15 W tubes in each of 192: 5,760 W.
        await Assertions.Expect(answer).ToContainTextAsync("5,760");
        await Assertions.Expect(answer).ToContainTextAsync("would narrow");
        app.NoErrors();
    }

    [Fact]
    public async Task a_tube_that_does_not_fit_is_refused_with_the_reason()
    {
        var page = await app.OpenAsync("/?setup=f32t8-2-is-nlo&count=192&hours=16&price=0.15&replace=dw-2ft-t8-8");
        await Assertions.Expect(page.GetByLabel("Replace with")).ToHaveAttributeAsync("aria-invalid", "true");
        await Assertions.Expect(page.Locator("#replace-problem")).ToContainTextAsync("ft");
        await Assertions.Expect(page.GetByRole(AriaRole.Region, new() { Name = "First answer", Exact = true })).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task a_fact_that_cannot_be_is_kept_and_explained_beside_its_field()
    {
        var page = await app.OpenAsync("/?setup=f32t8-2-is-nlo&count=192&hours=25&price=0,15&replace=");
        await Assertions.Expect(page.GetByLabel("Lit hours a day")).ToHaveValueAsync("25");
        await Assertions.Expect(page.GetByLabel("Lit hours a day")).ToHaveAttributeAsync("aria-invalid", "true");
        await Assertions.Expect(page.GetByLabel("Price of electricity")).ToHaveValueAsync("0,15");
        await Assertions.Expect(page.GetByLabel("Price of electricity")).ToHaveAttributeAsync("aria-invalid", "true");
    }
}
