using Bunit;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Tariffs;
using RetrofitCalc.Web.Features.Tariffs.Periods;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Tariffs;

public class The_painter
{
    [Fact]
    public async Task one_drag_is_one_step_of_undo()
    {
        await using var open = await OpenStudy.Of(Seasons());
        var page = open.Page<TariffPage>();
        var before = open.Study.Tariff.Energy;
        // The first period, A, is chosen: it takes 8 to 12 in July and August.
        await page.FindComponents<HourGrid>()[0].Instance.PaintAsync(7, 8, 8, 11);
        page.WaitForAssertion(() => Assert.Equal("July, 8 to 9: Summer on-peak", Cell(page, 7, 8).GetAttribute("aria-label")));
        Assert.Equal("A", Cell(page, 8, 11).TextContent);
        Assert.Equal("B", Cell(page, 9, 11).TextContent);
        await open.Session.UndoAsync();
        Assert.Same(before, open.Study.Tariff.Energy);
    }

    [Fact]
    public async Task a_sentence_paints_over_midnight()
    {
        await using var open = await OpenStudy.Of(Seasons());
        var page = open.Page<TariffPage>();
        foreach (var (field, value) in new[] { ("days", "0"), ("from-month", "1"), ("to-month", "1"), ("from-hour", "22"), ("to-hour", "6") })
            await page.Find($"#paint-{field}").ChangeAsync(new() { Value = value });
        await page.FindAll("button").Single(b => b.TextContent == "Paint Summer on-peak").ClickAsync(new());
        page.WaitForAssertion(() => Assert.Equal("A", Cell(page, 1, 22).TextContent));
        Assert.Equal(["A", "D"], new[] { Cell(page, 1, 5).TextContent, Cell(page, 1, 6).TextContent });
        Assert.Empty(open.Session.Problems);
    }

    [Fact]
    public async Task a_new_period_appears_in_the_list_of_prices_and_stays_chosen()
    {
        await using var open = await OpenStudy.Of(Seasons());
        var page = open.Page<TariffPage>();
        await page.FindAll(".brushes input")[^1].ChangeAsync(new() { Value = "on" });
        await page.FindComponents<HourGrid>()[1].Instance.PaintAsync(1, 12, 0, 5);
        page.WaitForAssertion(() => Assert.Contains("Period 5", page.FindAll(".grid.periods input").Select(i => i.GetAttribute("value"))));
        await page.FindComponents<HourGrid>()[1].Instance.PaintAsync(1, 12, 6, 6);
        page.WaitForAssertion(() => Assert.Equal("E", page.FindAll(".weekend-hours td[data-month='12'][data-hour='6']")[0].TextContent));
        Assert.Equal(5, PeriodMarks.Of(open.Study.Tariff).Periods.Count);
    }

    [Fact]
    public async Task a_price_typed_counts_in_all_charges_of_its_period()
    {
        await using var open = await OpenStudy.Of(Seasons());
        var page = open.Page<TariffPage>();
        await page.FindComponents<HourGrid>()[0].Instance.PaintAsync(7, 7, 8, 8);
        page.WaitForAssertion(() => Assert.Equal(3, open.Study.Tariff.Energy.Count(c => c.Name == "Summer on-peak")));
        await page.Find("#f-tariff-energy-0-blocks-0-price").ChangeAsync(new() { Value = "0.31" });
        Assert.All(open.Study.Tariff.Energy.Where(c => c.Name == "Summer on-peak"), c => Assert.Equal(0.31, c.Blocks[0].Price.PerKilowattHour));
    }

    private static AngleSharp.Dom.IElement Cell(IRenderedComponent<TariffPage> page, int month, int hour) =>
        page.Find($".weekday-hours td[data-month='{month}'][data-hour='{hour}']");

    private static Study Seasons() => SmallStudies.TenWithTubes() with { Tariff = TariffEdits.ToSeasons(SmallStudies.OneRack().Tariff) };
}
