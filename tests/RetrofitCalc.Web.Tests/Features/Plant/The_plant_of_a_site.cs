using Bunit;
using Microsoft.AspNetCore.Components.Forms;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Tests.Weather;
using RetrofitCalc.Web.Features.Plant;
using RetrofitCalc.Web.Features.Schedules;
using RetrofitCalc.Web.Features.Survey;
using RetrofitCalc.Web.Tests.Features.Survey;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Plant;

public class The_plant_of_a_site
{
    private static async Task<OpenStudy> OpenAsync(PlantInteraction? plant = null)
    {
        var study = SurveySamples.HallAndBarn();
        return await OpenStudy.Of(study with { Site = study.Site with { Plant = plant ?? new() } });
    }

    private static IRenderedComponent<SitePanel> Panel(OpenStudy open) => open.Part<SitePanel>(_ => { });

    private static Task UploadAsync(IRenderedComponent<SitePanel> panel, IEnumerable<string> lines)
    {
        using var text = new StreamReader(EpwText.Stream(lines));
        panel.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText(text.ReadToEnd(), "place.epw"));
        return panel.WaitForAssertionAsync(() => Assert.DoesNotContain("Reading place.epw", panel.Markup, StringComparison.Ordinal), TimeSpan.FromSeconds(60));
    }

    public static TheoryData<PlantMethod, string[], string[]> Methods => new()
    {
        { PlantMethod.Shares, ["cooledshare", "coolingcop", "heatedshare", "furnaceefficiency"], ["coolingbalance", "interactionfactor"] },
        { PlantMethod.InteractionFactors, ["interactionfactor", "interactiontherms"], ["cooledshare", "coolingcop", "coolingbalance"] },
        { PlantMethod.SealedRoom, ["coolingcop", "latentshare"], ["cooledshare", "heatedshare", "furnaceefficiency"] },
    };

    [Theory, MemberData(nameof(Methods))]
    public async Task asks_only_for_what_its_method_uses(PlantMethod method, string[] asked, string[] notAsked)
    {
        await using var open = await OpenAsync(new() { Method = method });
        var panel = Panel(open);
        Assert.All(asked, name => Assert.NotEmpty(panel.FindAll($"#f-site-plant-{name}")));
        Assert.All(notAsked, name => Assert.Empty(panel.FindAll($"#f-site-plant-{name}")));
    }

    [Fact]
    public async Task cannot_follow_the_hours_before_a_weather_file_is_read()
    {
        await using var open = await OpenAsync();
        var panel = Panel(open);
        Assert.Contains("read a weather file first", panel.Find("#f-site-plant-method option[disabled]").TextContent);
        await UploadAsync(panel, EpwText.Lines(_ => 20));
        Assert.Equal("Quillmere, OH, USA", open.Study.Weather!.Name);
        panel = Panel(open);
        await panel.Find("#f-site-plant-method").ChangeAsync(new() { Value = "2" });
        Assert.Equal(PlantMethod.Hourly, open.Study.Site.Plant.Method);
        Assert.NotEmpty(Panel(open).FindAll("#f-site-plant-economiserlimit"));
    }

    [Fact]
    public async Task names_missing_hours_and_fills_them_only_when_told()
    {
        await using var open = await OpenAsync();
        var panel = Panel(open);
        await UploadAsync(panel, EpwText.Lines(hour => hour == 30 ? 99.9 : 20));
        Assert.Null(open.Study.Weather);
        Assert.Contains("hour 7 of 2 January", panel.Markup, StringComparison.Ordinal);
        await panel.FindAll(".weather button").First(button => button.TextContent == "Fill 1 missing hour and use it").ClickAsync(new());
        Assert.Equal(20, open.Study.Weather!.DryBulb[30]);
        Assert.Equal("weather file", open.Session.CanUndo);
    }

    [Fact]
    public async Task tells_by_line_what_is_wrong_in_a_weather_file()
    {
        await using var open = await OpenAsync();
        var panel = Panel(open);
        var lines = EpwText.Lines(_ => 20);
        lines.RemoveAt(100);
        await UploadAsync(panel, lines);
        Assert.Contains("line 101, column 6", panel.Find(".weather [role=alert]").TextContent);
        Assert.Null(open.Study.Weather);
    }

    // 100 hours at 30 °C, 50 at 0 °C, the rest at 10 °C, between 8 and 12.
    [Fact]
    public void counts_the_hours_its_temperatures_divide()
    {
        var weather = new WeatherYear { Name = "Invented", DryBulb = [.. Enumerable.Range(0, 8760).Select(hour => hour < 100 ? 30 : hour < 150 ? 0 : 10.0)] };
        Assert.StartsWith(
            "Of the 8,760 hours of this year 100 are cooled, 50 heated, and in 8,610 the lights' heat changes neither.",
            WeatherText.Hours(weather, new(), Reports.QuantityText.For(SurveySamples.HallAndBarn())));
    }

    // EER 10.9 / 3.412142 = 3.194.
    [Fact]
    public async Task takes_a_rating_as_the_nameplate_gives_it()
    {
        await using var open = await OpenAsync();
        var panel = Panel(open);
        await panel.Find("#f-site-plant-coolingcop-rating").ChangeAsync(new() { Value = "1" });
        await panel.Find("#f-site-plant-coolingcop").ChangeAsync(new() { Value = "10.9" });
        Assert.Equal(3.194, open.Study.Site.Plant.CoolingCop, 0.001);
    }

    public static TheoryData<RatingKind> Ratings => [.. RatingKind.OfCooling, .. RatingKind.OfHeating];

    [Theory, MemberData(nameof(Ratings), DisableDiscoveryEnumeration = true)]
    public void reads_every_rating_both_ways(RatingKind kind) =>
        Assert.All([kind.Least, (kind.Least + kind.Most) / 2, kind.Most], rating => Assert.Equal(rating, kind.FromCop(kind.ToCop(rating)), 1e-6));

    [Fact]
    public void leaves_a_rating_blank_where_its_kind_does_not_reach()
    {
        var seer = RatingKind.OfCooling.Single(kind => kind.Name == "SEER");
        Assert.Equal(13, seer.Of(11.18 / 3.412142)!.Value, 0.001);
        Assert.Null(seer.Of(10));
    }

    // Bonneville Power Administration, 2012: small office with gas heat keeps 1.12 and makes up 0.02138 therm.
    [Fact]
    public async Task fills_published_factors_with_their_source_and_forgets_the_source_of_own_ones()
    {
        await using var open = await OpenAsync(new() { Method = PlantMethod.InteractionFactors });
        await Panel(open).Find("#f-site-plant-interaction-building").ChangeAsync(new() { Value = "3" });
        Assert.Equal((1.12, -0.02138), (open.Study.Site.Plant.InteractionFactor, open.Study.Site.Plant.InteractionTherms));
        Assert.Contains("Pacific Northwest", open.Study.Site.Plant.InteractionBuilding);
        await Panel(open).Find("#f-site-plant-interactionfactor").ChangeAsync(new() { Value = "1.05" });
        Assert.Null(open.Study.Site.Plant.InteractionBuilding);
    }

    // 10 × 59 + 4 × 31 + 6 × 59 = 1,068 W; 0.5 kg/h · 2450 / 3.6 = 340.3 W of it, a share of 0.3186.
    [Fact]
    public async Task takes_the_water_plants_give_off_for_the_share_of_heat()
    {
        await using var open = await OpenAsync();
        await Panel(open).Find("#f-site-plant-water").ChangeAsync(new() { Value = "0.5" });
        Assert.Equal(0.3186, open.Study.Site.Plant.LatentShare, 0.0001);
        Assert.Equal("0.5", Panel(open).Find("#f-site-plant-water").GetAttribute("value"));
        Assert.Equal(0.5, open.Session.Result!.Now.Site.MoisturePerHour, 1e-9);
    }

    [Fact]
    public async Task gives_way_to_the_plant_of_an_area()
    {
        await using var open = await OpenAsync(new() { CooledShare = 0.4 });
        IRenderedComponent<AreaPlant> Hall() => open.Part<AreaPlant>(p => p.Add(part => part.Index, 0));
        await Hall().Find("#f-areas-0-plant").ChangeAsync(new() { Value = "1" });
        Assert.Equal(open.Study.Site.Plant, open.Study.Areas[0].Plant);
        await Hall().Find("#f-areas-0-plant-method").ChangeAsync(new() { Value = "3" });
        Assert.Equal((PlantMethod.SealedRoom, PlantMethod.Shares), (open.Study.Areas[0].Plant!.Method, open.Study.Site.Plant.Method));
        await Hall().Find("#f-areas-0-plant").ChangeAsync(new() { Value = "0" });
        Assert.Null(open.Study.Areas[0].Plant);
    }
}
