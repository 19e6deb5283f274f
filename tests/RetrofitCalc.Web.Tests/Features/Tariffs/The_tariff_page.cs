using Bunit;
using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Tariffs;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Tariffs;

public class The_tariff_page
{
    [Fact]
    public async Task changes_a_flat_price_to_seasons_and_hours_without_moving_the_bill()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var page = open.Page<TariffPage>();
        await page.Find("#tariff-kind").ChangeAsync(new() { Value = "seasons" });
        Assert.Equal(["Summer on-peak", "Summer off-peak", "Winter on-peak", "Winter off-peak"], open.Study.Tariff.Energy.Select(c => c.Name));
        Assert.All(open.Study.Tariff.Energy, c => Assert.Equal(0.12, c.Blocks[0].Price.PerKilowattHour));
        Assert.Empty(open.Session.Problems);
        // Rounding each of two lines a month moves the year by a few cents at most.
        Assert.Equal(277.54, BillYear.Of(open.Session.Result!).Now.Units, tolerance: 0.08);
        Assert.Contains("Each hour of the year has one price", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task shows_what_was_added_at_once()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes() with { Tariff = TariffEdits.ToSeasons(SmallStudies.OneRack().Tariff) });
        var page = open.Page<TariffPage>();
        foreach (var (button, row) in new[] { ("Add a demand charge", "#f-tariff-demand-0-name"), ("Add a fixed charge", "#f-tariff-fixed-0-name") })
        {
            await page.FindAll("button").First(b => b.TextContent.StartsWith(button, StringComparison.Ordinal)).ClickAsync(new());
            page.WaitForAssertion(() => Assert.NotNull(page.Find(row)));
        }
    }

    [Fact]
    public async Task marks_hours_without_a_price_on_the_picture_and_in_words()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes() with { Tariff = TwoPrices(new(9, 0), new(20, 0)) });
        var page = open.Page<TariffPage>();
        Assert.Contains("Some hours have no price", page.Markup, StringComparison.Ordinal);
        Assert.Equal("January, 8 to 9: no price", page.Find("td.gap").GetAttribute("aria-label"));
        Assert.Contains("No energy price applies on 1 January", page.Find(".cell-message").TextContent, StringComparison.Ordinal);
        Assert.Contains(page.FindAll(".twin tr"), r => r.TextContent.Contains("08:00–09:00none: a gap", StringComparison.Ordinal));
    }

    [Fact]
    public async Task marks_hours_with_two_prices()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes() with { Tariff = TwoPrices(new(7, 0), LocalTime.Midnight) });
        var page = open.Page<TariffPage>();
        Assert.Equal("AB", page.Find("td.overlap").TextContent);
        Assert.Contains(page.FindAll(".twin tr"), r => r.TextContent.Contains("07:00–08:00Night and Day: an overlap", StringComparison.Ordinal));
    }

    [Fact]
    public async Task draws_prices_that_change_within_an_hour_and_opens_their_exact_times()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes() with { Tariff = TwoPrices(new(8, 30), LocalTime.Midnight) });
        var page = open.Page<TariffPage>();
        Assert.Empty(page.FindAll("table.hour-grid"));
        Assert.NotEmpty(page.FindAll("rect.gap"));
        Assert.NotNull(page.FindAll("details").Single(d => d.TextContent.TrimStart().StartsWith("Exact dates and times", StringComparison.Ordinal)).GetAttribute("open"));
    }

    [Fact]
    public async Task refuses_a_decimal_comma_where_the_site_writes_a_point_and_keeps_it()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var page = open.Page<TariffPage>();
        await page.Find("#f-tariff-energy-0-blocks-0-price").ChangeAsync(new() { Value = "0,15" });
        Assert.Equal("0,15", page.Find("#f-tariff-energy-0-blocks-0-price").GetAttribute("value"));
        Assert.Contains("could mean two things", page.Find(".field-message").TextContent, StringComparison.Ordinal);
        Assert.Equal(0.12, open.Study.Tariff.Energy[0].Blocks[0].Price.PerKilowattHour);
    }

    [Fact]
    public void goes_back_to_one_price_at_the_average_of_the_bills() =>
        Assert.Equal(0.12, TariffEdits.ToFlat(TwoPrices(new(8, 0), LocalTime.Midnight), EnergyPrice.FromPerKilowattHour(0.12)).Energy.Single().Blocks.Single().Price.PerKilowattHour);

    private static Tariff TwoPrices(LocalTime dayFrom, LocalTime dayTo) => new()
    {
        Name = "Two prices",
        Energy =
        [
            Charge("Night", new TariffWindow(DayKind.All, LocalTime.Midnight, new(8, 0))),
            Charge("Day", new TariffWindow(DayKind.All, dayFrom, dayTo)),
        ],
    };

    private static EnergyCharge Charge(string name, TariffWindow window) =>
        new() { Name = name, When = new() { Windows = [window] }, Blocks = [new(null, EnergyPrice.FromPerKilowattHour(0.12))] };
}
