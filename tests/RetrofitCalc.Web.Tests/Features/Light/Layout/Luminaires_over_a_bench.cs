using Bunit;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Light.Layout;
using RetrofitCalc.Web.Features.Light.Spectra;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Light.Layout;

public class Luminaires_over_a_bench
{
    private static readonly (Length, Length) Bench = (Length.FromMetres(1.2), Length.FromMetres(0.6));

    private static Study With(AreaLight light) => SmallStudies.TenLuminaires() with { Areas = [SmallStudies.OneRack().Areas[0] with { Light = light }] };

    private static readonly AreaLight Sized = new() { BenchLength = Bench.Item1, BenchWidth = Bench.Item2 };

    // 1.2 m by 3 cells of 0.4 m: middles at −0.4, 0, 0.4; 0.6 m by 2: −0.15, 0.15.
    [Fact]
    public void are_spread_in_the_middles_of_equal_cells()
    {
        var places = new EvenFill("shelf", 3, 2, 90).Over(Bench, null).ToList();
        Assert.Equal([(-0.4, -0.15), (0, -0.15), (0.4, -0.15), (-0.4, 0.15), (0, 0.15), (0.4, 0.15)], places.Select(place => (place.Centre.X, place.Centre.Y)));
        Assert.All(places, place => Assert.Equal(90, place.AxisDegrees));
    }

    [Fact]
    public void of_other_lines_stay_when_one_line_is_spread_anew()
    {
        var study = With(Sized with { Layout = [new("other", new(0, 0)), new("shelf", new(9, 9)) { LampSpacing = Length.FromMetres(0.2) }] });
        var layout = LayoutEdits.Fill(new(study, []), 0, new("shelf", 2, 1, 0), Bench).Study.Areas[0].Light!.Layout;
        Assert.Equal(["other", "shelf", "shelf"], layout.Select(place => place.Line));
        Assert.Equal(0.2, layout[2].LampSpacing.Metres);
        Assert.Equal(0.3, layout[2].Centre.X);
    }

    // 10 luminaires surveyed: 5 benches of 2; 3 do not come out even.
    [Theory, InlineData(2, "there are 5 alike."), InlineData(3, "do not come out even.")]
    public async Task are_held_against_the_count_of_the_survey(int over, string told)
    {
        await using var open = await OpenStudy.Of(With(Sized with { Layout = [.. Enumerable.Repeat(new LuminairePlace("shelf", new(0, 0)), over)] }));
        Assert.Contains(told, Assert.Single(LayoutText.Benches(open.Study, open.Study.Areas[0])), StringComparison.Ordinal);
    }

    // Two 4 ft lamps 0.1 m apart over a bench of 1.2 by 0.6 m; the lamps, 1.2192 m long, fill the width of the drawing less its border.
    [Fact]
    public async Task are_drawn_to_scale_with_every_lamp()
    {
        await using var open = await OpenStudy.Of(With(Sized with { Layout = [new("shelf", new(0, 0.1))] }));
        var plan = BenchPlan.Of(open.Study, open.Study.Areas[0].Light!, 340)!;
        Assert.Equal(2, plan.Lamps.Count);
        var scale = (340 - 52) / 1.2192;
        Assert.Equal(288, plan.Lamps[0].Length, 1e-6);
        Assert.Equal(1.2 * scale, plan.Bench.Width, 1e-6);
        Assert.Equal(0.1 * scale, Math.Abs(plan.Lamps[1].Y - plan.Lamps[0].Y), 1e-6);
        Assert.All(plan.Lamps, lamp => Assert.True(lamp.Y < plan.Height / 2, "y points up"));
    }

    [Fact]
    public void without_a_size_of_the_bench_there_is_no_drawing() => Assert.Null(BenchPlan.Of(With(new()), new(), 340));

    [Fact]
    public async Task are_spread_from_the_page_once_the_bench_has_a_size()
    {
        await using var open = await OpenStudy.Of(With(new()));
        var page = open.Page<LayoutPage>();
        await page.Find("#fill-along").ChangeAsync(new() { Value = "2" });
        await page.FindAll("button").Single(button => button.TextContent == "Fill evenly").ClickAsync(new());
        Assert.Contains("length and width of the bench first", page.Markup, StringComparison.Ordinal);
        await page.Find("#f-areas-0-light-benchlength").ChangeAsync(new() { Value = "8 ft" });
        await page.Find("#f-areas-0-light-benchwidth").ChangeAsync(new() { Value = "2 ft" });
        await page.FindAll("button").Single(button => button.TextContent == "Fill evenly").ClickAsync(new());
        Assert.Equal([-0.6096, 0.6096], open.Study.Areas[0].Light!.Layout.Select(place => place.Centre.X));
        page.WaitForAssertion(() => Assert.Equal("Two luminaires hang over a bench of Rack", page.Find("h1").TextContent));
        Assert.Equal("luminaires evenly over the bench", open.Session.CanUndo);
    }

    [Fact]
    public async Task get_plain_words_for_what_throws_light_back()
    {
        await using var open = await OpenStudy.Of(With(Sized));
        var page = open.Page<LayoutPage>();
        await page.Find("#f-areas-0-light-surroundings").ChangeAsync(new() { Value = "1" });
        await page.Find("[id$=reflectance-sideschoice]").ChangeAsync(new() { Value = "1" });
        Assert.Equal(0.8, open.Study.Areas[0].Light!.Surroundings!.Reflectance.Sides);
        await page.Find("[id$=reflectance-sides]").ChangeAsync(new() { Value = "37" });
        Assert.Equal(0.37, open.Study.Areas[0].Light!.Surroundings!.Reflectance.Sides);
    }

    [Fact]
    public async Task can_shine_in_another_way_and_hang_at_another_height_after_a_change()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var page = open.Page<LayoutPage>();
        await page.FindAll("select[id$=emission]")[1].ChangeAsync(new() { Value = "1" });
        Assert.Equal(TubeEmission.BareTube, ProductLights.Of(open.Study, "dw-4ft-t8-18").Emission);
        await page.Find("#f-options-0-measures-0-height").ChangeAsync(new() { Value = "10" });
        Assert.Equal(0.254, open.Study.Options[0].Measures[0].Height!.Value.Metres, 1e-9);
    }
}
