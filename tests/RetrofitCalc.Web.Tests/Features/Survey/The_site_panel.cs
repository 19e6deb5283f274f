using Bunit;
using RetrofitCalc.Web.Features.Survey;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Survey;

public class The_site_panel
{
    private static IRenderedComponent<SitePanel> Panel(OpenStudy open) => open.Part<SitePanel>(_ => { });

    [Fact]
    public async Task shows_the_names_and_takes_shares_as_percentages()
    {
        await using var open = await OpenStudy.Of(SurveySamples.HallAndBarn());
        Assert.Equal("Invented site", Panel(open).Find("#f-site-name").GetAttribute("value"));
        await Panel(open).Find("#f-site-plant-cooledshare").ChangeAsync(new() { Value = "65" });
        Assert.Equal(0.65, open.Study.Site.Plant.CooledShare, 12);
        Assert.Equal("cooled share", open.Session.CanUndo);
    }

    [Fact]
    public async Task asks_for_the_performance_of_electric_heating_and_the_price_of_fuel_but_not_for_both()
    {
        await using var open = await OpenStudy.Of(SurveySamples.HallAndBarn());
        var panel = Panel(open);
        Assert.NotEmpty(panel.FindAll("#f-site-plant-fuelpricepertherm"));
        await panel.Find("#f-site-plant-heat").ChangeAsync(new() { Value = "1" });
        Assert.Equal(3, open.Study.Site.Plant.HeatingCop);
        await panel.WaitForAssertionAsync(() => Assert.Empty(panel.FindAll("#f-site-plant-fuelpricepertherm")));
        Assert.NotEmpty(panel.FindAll("#f-site-plant-heatingcop"));
    }

    [Fact]
    public async Task writes_the_state_in_capitals_and_blank_as_not_said()
    {
        await using var open = await OpenStudy.Of(SurveySamples.HallAndBarn());
        await Panel(open).Find("#f-site-region").ChangeAsync(new() { Value = "vt" });
        Assert.Equal("VT", open.Study.Site.Region);
        await Panel(open).Find("#f-site-region").ChangeAsync(new() { Value = "" });
        Assert.Null(open.Study.Site.Region);
    }

    [Fact]
    public void offers_every_zone_of_the_shipped_database_and_many_ways_to_write_numbers()
    {
        Assert.Contains(SitePlaces.Zones, z => z.Value == "America/New_York");
        Assert.Contains(SitePlaces.Cultures, c => c is { Value: "de-DE" } && c.Text.EndsWith("1.234,5", StringComparison.Ordinal));
    }
}
