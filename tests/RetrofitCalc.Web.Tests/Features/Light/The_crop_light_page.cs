using Bunit;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Light;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Light;

public class The_crop_light_page
{
    [Fact]
    public async Task says_not_known_and_asks_for_readings_before_anything_was_read()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var page = open.Page<LightPage>();
        Assert.Equal("Whether the crop keeps its light is not known", page.Find("h1").TextContent);
        Assert.Contains("Rack", page.Find("p.lead").TextContent, StringComparison.Ordinal);
        Assert.Contains("not known", page.Find("table.verdicts tbody td").TextContent, StringComparison.Ordinal);
        Assert.Contains("Nothing has been read here yet", page.Find(".readings-panel").TextContent, StringComparison.Ordinal);
        Assert.True(page.Find(".new-set button.strong").HasAttribute("disabled"));
    }

    [Fact]
    public async Task lays_out_a_quarter_of_the_bench_and_keeps_what_is_typed()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var page = open.Page<LightPage>();
        await page.Find("#f-areas-0-light-benchlength").ChangeAsync(new() { Value = "48 in" });
        await page.Find("#f-areas-0-light-benchwidth").ChangeAsync(new() { Value = "2 ft" });
        await page.FindAll(".pattern input")[2].ChangeAsync(new() { Value = "on" });
        await page.Find("#new-height").ChangeAsync(new() { Value = "12" });
        await page.Find("#new-along").ChangeAsync(new() { Value = "3" });
        await page.Find("#new-across").ChangeAsync(new() { Value = "2" });
        await page.Find(".new-set button.strong").ClickAsync(new());
        var set = Assert.Single(open.Study.Areas[0].Light!.Readings);
        Assert.Equal((ReadingPattern.Quadrant, 0.3048), (set.Pattern, Math.Round(set.Height.Metres, 6)));
        Assert.Equal([0, 0.3048, 0.6096], set.Columns);
        page.WaitForElement(".reading-grid");
        await page.Find("#f-areas-0-light-readings-0-values-1-2").ChangeAsync(new() { Value = "9o" });
        var cell = page.Find("#f-areas-0-light-readings-0-values-1-2");
        Assert.Equal(("9o", "true"), (cell.GetAttribute("value"), cell.GetAttribute("aria-invalid")));
        Assert.Contains("24 in from the middle, 12 in from the middle: 9o", page.Find(".reading-grid tr.message").TextContent, StringComparison.Ordinal);
        await open.Session.UndoAsync();
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".reading-grid tr.message")));
    }

    [Fact]
    public async Task asks_for_a_height_before_it_lays_out_a_grid()
    {
        var study = LightSamples.Bench();
        await using var open = await OpenStudy.Of(study with { Areas = [study.Areas[0] with { Light = study.Areas[0].Light! with { Readings = [] } }] });
        var page = open.Page<LightPage>();
        await page.Find("#new-height").ChangeAsync(new() { Value = "" });
        await page.Find(".new-set button.strong").ClickAsync(new());
        Assert.Contains("Type how far the lamps hang", page.Find("#new-height-message").TextContent, StringComparison.Ordinal);
        Assert.Empty(open.Study.Areas[0].Light!.Readings);
    }

    [Fact]
    public async Task walks_along_the_grid_one_reading_at_a_time()
    {
        await using var open = await OpenStudy.Of(LightSamples.Bench());
        var page = open.Page<LightPage>();
        var walk = page.Find(".walk");
        Assert.Contains("Reading 1 of 6", walk.TextContent, StringComparison.Ordinal);
        await page.Find(".walk-value").ChangeAsync(new() { Value = "240" });
        await page.FindAll(".walk-steps button")[1].ClickAsync(new());
        page.WaitForAssertion(() => Assert.Contains("Reading 2 of 6", page.Find(".walk").TextContent, StringComparison.Ordinal));
        Assert.Contains("5 of 6 places still without a reading", page.Find(".walk").TextContent, StringComparison.Ordinal);
        Assert.Equal(240, open.Study.Areas[0].Light!.Readings[0].Values[0][0]);
        Assert.Single(page.FindAll(".walk-map .dot"));
    }

    [Theory]
    [InlineData("abc")]
    [InlineData("99999")]
    [InlineData("4,5")]
    public async Task stays_where_a_reading_could_not_be_read_and_says_why(string typed)
    {
        await using var open = await OpenStudy.Of(LightSamples.Bench());
        var page = open.Page<LightPage>();
        await page.Find(".walk-value").ChangeAsync(new() { Value = typed });
        await page.Find(".walk form").SubmitAsync();
        page.WaitForAssertion(() => Assert.Contains(typed, page.Find(".walk .field-message").TextContent, StringComparison.Ordinal));
        Assert.Contains("Reading 1 of 6", page.Find(".walk").TextContent, StringComparison.Ordinal);
        Assert.Equal(typed, page.Find(".walk-value").GetAttribute("value"));
        await page.Find(".walk-value").ChangeAsync(new() { Value = "240" });
        await page.Find(".walk form").SubmitAsync();
        page.WaitForAssertion(() => Assert.Contains("Reading 2 of 6", page.Find(".walk").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task of_an_area_for_people_shows_their_light_instead_of_an_empty_form()
    {
        var study = SmallStudies.TenLuminaires();
        await using var open = await OpenStudy.Of(study with { Areas = [new() { Id = "rack", Name = "Hall", Light = new() { People = new("packing") } }] });
        var page = open.Page<LightPage>();
        Assert.Contains("300 lx wanted", page.Find("#people-light").ParentElement!.TextContent, StringComparison.Ordinal);
        Assert.EndsWith("/light/people", page.Find("section[aria-labelledby=people-light] a").GetAttribute("href"), StringComparison.Ordinal);
        Assert.NotNull(page.Find(".readings-panel").Closest("details"));
    }

    [Fact]
    public async Task asks_how_lux_become_photons_and_names_the_source()
    {
        await using var open = await OpenStudy.Of(LightSamples.Bench());
        var page = open.Page<LightPage>();
        await page.Find("#f-areas-0-light-readings-0-unit").ChangeAsync(new() { Value = "1" });
        var choice = page.WaitForElement("#f-areas-0-light-readings-0-conversion");
        Assert.Contains("say nothing of photons", choice.TextContent, StringComparison.Ordinal);
        await choice.ChangeAsync(new() { Value = "0" });
        var conversion = open.Study.Areas[0].Light!.Readings[0].Conversion!;
        Assert.Equal((74, 0.07), (conversion.LuxPerMicromole, conversion.Uncertainty));
        page.WaitForAssertion(() => Assert.Contains("Thimijan and Heins", page.Find(".readings-panel").TextContent, StringComparison.Ordinal));
    }
}
