using Bunit;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Examples;
using RetrofitCalc.Web.Features.Light;
using RetrofitCalc.Web.Features.Light.Keep;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Light;

/// <summary>The worked example's greens lose light under the tubes proposed for them.</summary>
public class Light_of_the_example
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task stands_on_two_maps_of_one_scale_with_figures_and_what_they_rest_on()
    {
        await using var open = await OpenStudy.Of(WorkedExample.Load());
        var page = open.Page<LightPage>();
        Assert.StartsWith("Leafy-greens racks would lose", page.Find("h1").TextContent, StringComparison.Ordinal);
        page.WaitForAssertion(() => Assert.Equal(2, page.FindAll("svg.light-map.wide-only[aria-label^='Contour map']").Count), Patience);
        Assert.Single(page.FindAll("svg.scale"));
        Assert.Equal(2, page.FindAll("dl.figures.five").Count);
        Assert.Contains("The model meets", page.Find(".rests").TextContent, StringComparison.Ordinal);
        var option = open.Session.Result!.Chosen!;
        var shown = option.Light.WorstFirst[0];
        Assert.Contains($"Proposed: {Math.Round(shown.After!.Mean.MicromolesPerSquareMetre, MidpointRounding.AwayFromZero)} on average", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task is_tried_lower_and_searched_for_the_least_watts_without_touching_the_study()
    {
        await using var open = await OpenStudy.Of(WorkedExample.Load());
        var page = open.Page<LightPage>();
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll(".what-if")), Patience);
        await page.Find(".what-if .button.strong").ClickAsync(new());
        Assert.Contains("Change something first.", page.Find(".what-if").TextContent, StringComparison.Ordinal);
        await page.Find("#if-height").ChangeAsync(new() { Value = "9 in" });
        await page.Find(".what-if .button.strong").ClickAsync(new());
        page.WaitForAssertion(() => Assert.Equal(2, page.FindAll(".what-if tbody tr").Count), Patience);
        var means = page.FindAll(".what-if tbody tr").Select(row => int.Parse(row.QuerySelectorAll("td")[1].TextContent, System.Globalization.CultureInfo.InvariantCulture)).ToList();
        Assert.True(means[1] > means[0], "Nearer lamps give more light on the bench below them.");
        Assert.Null(open.Session.CanUndo);

        await page.FindAll(".search .button.strong").Single().ClickAsync(new());
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll(".search tbody tr")), Patience);
        Assert.Matches("Of \\d+ ways \\d+ keep|None of \\d+ ways", page.Find(".search").TextContent);
        Assert.NotEmpty(page.FindAll(".trade-off .c-prop"));
        Assert.Null(open.Session.CanUndo);

        await page.FindAll(".what-if .button")[1].ClickAsync(new());
        Assert.Contains(open.Study.Options.First(o => o.Id == open.Study.ChosenOption).Measures, measure => measure.Height?.Metres is > 0.228 and < 0.229);
    }

    [Fact]
    public async Task counts_places_in_metres_where_people_do()
    {
        var study = LightSamples.Bench(ReadingPattern.CellCentres, 4, 2);
        await using var open = await OpenStudy.Of(study with { Site = study.Site with { Culture = "de-DE", Jurisdiction = "eu" } });
        var page = open.Page<LightPage>();
        Assert.Equal(["0,15", "0,45", "0,75", "1,05"], page.FindAll(".reading-grid thead th").Select(head => head.TextContent));
        Assert.Contains("0,3 m under the lamps", page.Find("article.set h3").TextContent, StringComparison.Ordinal);
        await page.Find("#f-areas-0-light-readings-0-values-0-0").ChangeAsync(new() { Value = "82,5" });
        Assert.Equal(82.5, open.Study.Areas[0].Light!.Readings[0].Values[0][0]);
    }
}
