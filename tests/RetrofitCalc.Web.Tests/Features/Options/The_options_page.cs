using Bunit;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Options;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Options;

public class The_options_page
{
    [Fact]
    public async Task shows_watts_and_ballast_loss_of_one_luminaire_now_and_proposed()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var rows = open.Page<OptionsPage>().FindAll("table.even tr").Where(r => r.TextContent.Contains("2 × F32T8", StringComparison.Ordinal)).ToList();
        Assert.Equal(["59", "36"], rows[0].QuerySelectorAll("td").Select(c => c.TextContent.Trim()));
        Assert.Equal("0", rows[1].QuerySelectorAll("td")[1].TextContent.Trim());
        Assert.Contains("ballast", rows[2].QuerySelectorAll("td")[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("tube", rows[2].QuerySelectorAll("td")[1].TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task shows_in_grey_what_counts_while_no_price_is_typed()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var tube = open.Study.Catalogue.Tubes.Single();
        var page = open.Page<OptionsPage>();
        var parts = (2 * tube.Price!.Value.Units).ToString("0.00", System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(parts, page.Find("#f-options-0-measures-0-partsperluminaire").GetAttribute("placeholder"));
        Assert.Equal("27", page.Find("#f-options-0-measures-0-labourperluminaire").GetAttribute("placeholder")); // 20 + 4 + 3 min
        Assert.Equal("2", page.Find("#f-options-0-measures-0-tubesperluminaire").GetAttribute("placeholder"));
    }

    [Fact]
    public async Task says_beside_the_line_why_a_measure_is_refused()
    {
        var study = SmallStudies.TenWithTubes();
        await using var open = await OpenStudy.Of(study with { Options = [study.Options[0] with { Measures = [new("shelf", new DirectWire("dw-4ft-t5-26"))] }] });
        Assert.Contains("the lampholders here take G13", open.Page<OptionsPage>().Find("table.measures tr.message").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task adds_an_option_from_a_template_with_a_tube_that_fits()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenLuminaires());
        var page = open.Page<OptionsPage>();
        await page.FindAll("button").Single(b => b.TextContent == "Direct-wire everywhere").ClickAsync(new());
        var option = Assert.Single(open.Study.Options);
        Assert.StartsWith("dw-4ft-t8-", Assert.IsType<DirectWire>(option.Measures.Single().Measure).Tube, StringComparison.Ordinal);
        Assert.Empty(open.Session.Result!.Options.Single().Refused);
    }

    [Fact]
    public async Task asks_for_another_option()
    {
        var study = SmallStudies.TenWithTubes();
        await using var open = await OpenStudy.Of(study with { Options = [.. study.Options, new RetrofitOption { Id = "keep", Name = "Keep" }], ChosenOption = "keep" });
        var page = open.Page<OptionsPage>();
        Assert.Contains("Keep: ", page.Find("h1").TextContent, StringComparison.Ordinal);
        await open.Session.EditAsync("asking", s => s with { ChosenOption = "tubes" });
        page.WaitForAssertion(() => Assert.StartsWith("Tubes: pays back in", page.Find("h1").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task says_never_when_the_money_does_not_come_back()
    {
        var study = SmallStudies.TenWithTubes();
        var dear = study.Options[0] with { Costs = new OptionCosts { FixedSum = Money.FromUnits(1_000_000) } };
        await using var open = await OpenStudy.Of(study with { Options = [dear] });
        Assert.Equal("Tubes: never pays back in 10 years", open.Page<OptionsPage>().Find("h1").TextContent);
    }
}
