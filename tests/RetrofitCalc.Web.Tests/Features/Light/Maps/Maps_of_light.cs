using System.Globalization;
using Bunit;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Typing;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Features.Light;
using RetrofitCalc.Web.Features.Light.Maps;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Light.Maps;

/// <summary>A bench of 2 by 1 m with three columns and two rows of light: values and places by hand.</summary>
public class Maps_of_light
{
    private static readonly LightMap Coarse = new([-1, 0, 1], [-0.5, 0.5], new double[,] { { 100, 200, 100 }, { 120, 220, 120 } });

    private static readonly QuantityText Text = new("en-US", "USD", UnitSystem.UsCustomary);

    private static BenchMap Bench(double? target = 150) =>
        new(Coarse, 2, 1, new LightScale(EvenSteps.Over(100, 220), target), new(Coarse.X, Coarse.Y)) { Text = Text };

    [Theory]
    [InlineData(0, -0.5, 200)]
    [InlineData(-0.5, -0.5, 150)]
    [InlineData(0, 0, 210)]
    [InlineData(-0.5, 0, 160)]
    [InlineData(5, -5, 100)]
    public void lie_on_straight_lines_between_their_points_and_keep_their_edges_beyond(double x, double y, double light) =>
        Assert.Equal(light, Coarse.At(new(x, y)), 1e-9);

    [Fact]
    public void are_smoothed_through_their_values_and_never_past_them()
    {
        var smooth = Coarse.Smooth();
        Assert.Equal(200, smooth.At(new(0, -0.5)), 1e-9);
        Assert.Equal(120, smooth.At(new(1, 0.5)), 1e-9);
        Assert.Equal(220, smooth.Light.Cast<double>().Max(), 1e-9);
        Assert.Equal(100, smooth.Light.Cast<double>().Min(), 1e-9);
        Assert.True(smooth.X.Count > 40);
    }

    [Fact]
    public void have_the_same_tint_for_the_same_light_whichever_map_it_is_on()
    {
        // 100 to 220 in steps of 20: seven steps, seven tints.
        var scale = Bench().Scale;
        Assert.Equal((100, 20, 7), (scale.Steps.Low, scale.Steps.Step, scale.Steps.Count));
        Assert.Equal([1, 1, 2, 6, 7], new[] { 100.0, 119, 120, 219, 220 }.Select(scale.TintOf));
        // Three steps are spread from the darkest over the middle to the brightest.
        Assert.Equal([1, 4, 7], Enumerable.Range(0, 3).Select(new LightScale(new EvenSteps(0, 50, 3), null).Tint));
    }

    [Fact]
    public void are_drawn_to_the_shape_of_the_bench()
    {
        var drawing = new MapDrawing(Bench(), 522);
        Assert.Equal((480, 240), (drawing.PlotWidth, drawing.PlotHeight)); // 522 − 34 − 8; half as wide as long
        Assert.Equal((34, 274), (drawing.X(-1), drawing.X(0)));
        Assert.Equal((10, 250), (drawing.Y(-0.5), drawing.Y(0.5)));
        Assert.Equal((34, 10, 480, 240), drawing.Known);
    }

    [Fact]
    public void of_readings_in_cell_middles_stop_where_nothing_was_read()
    {
        var map = new LightMap([-0.5, 0.5], [-0.25, 0.25], new double[,] { { 100, 200 }, { 100, 200 } });
        var drawing = new MapDrawing(Bench() with { Map = map, Points = new(map.X, map.Y) }, 522);
        Assert.Equal((154, 70, 240, 120), drawing.Known);
    }

    [Fact]
    public void draw_the_target_where_the_light_is_just_that()
    {
        // From 100 at the left end to 200 at the right, 150 lies in the middle: x = 34 + 480/2 = 274, from edge to edge.
        var slope = new LightMap([-1, 1], [-0.5, 0.5], new double[,] { { 100, 200 }, { 100, 200 } });
        var drawing = new MapDrawing(Bench() with { Map = slope }, 522);
        Assert.StartsWith("M274 ", drawing.Target, StringComparison.Ordinal);
        Assert.Contains("274 10", drawing.Target, StringComparison.Ordinal);
        Assert.Contains("274 250", drawing.Target, StringComparison.Ordinal);
        Assert.Empty(new MapDrawing(Bench(target: null), 522).Target);
    }

    [Fact]
    public void show_each_value_that_has_room_and_dots_for_the_others()
    {
        Assert.Equal(["100", "200", "100", "120", "220", "120"], new MapDrawing(Bench(), 522).Marks.Select(mark => mark.Text));
        var many = new MapPoints([.. Enumerable.Range(0, 25).Select(i => -1 + i / 12.0)], [-0.5, 0.5]);
        var marks = new MapDrawing(Bench() with { Points = many }, 522).Marks;
        Assert.Equal(50, marks.Count);
        Assert.Equal(26, marks.Count(mark => mark.Text is not null)); // 480 px over 24 gaps: every second has its 40 px, 13 in each row.
    }

    [Fact]
    public void name_their_values_in_a_table_by_inches_from_the_ends()
    {
        BenchAxis Axis(double metres) => new(metres, LengthUnit.Inches, CultureInfo.InvariantCulture);
        var table = MapTable.Of(Bench() with { Length = 2.032, Width = 1.016, Map = Coarse, Points = new([-1.016, 0], [0]) }, Axis(2.032), Axis(1.016));
        Assert.Equal(["0", "40"], table.Head.Skip(1));
        Assert.Equal(["20", "110", "210"], table.Rows.Single());
        Assert.Equal(["0", "24", "48", "72 in"], Axis(2.032).Ticks().Select(tick => tick.Text));
        Assert.Equal("80 in", Axis(2.032).ToString());
    }

    [Fact]
    public async Task stand_on_the_page_as_soon_as_every_place_is_read()
    {
        var study = LightSamples.Bench(ReadingPattern.CellCentres, 3, 2);
        var read = LightEdits.Set(study, LightSamples.First, set => set with { Values = [[100, 200, 100], [120, 220, null]] });
        await using var open = await OpenStudy.Of(read);
        var page = open.Page<LightPage>();
        Assert.Empty(page.FindAll("svg.light-map"));
        await page.Find("#f-areas-0-light-readings-0-values-1-2").ChangeAsync(new() { Value = "120" });
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll("svg.light-map.narrow")));
        var map = page.Find("svg.light-map.wide-only");
        Assert.Contains("From 100 to 220", map.GetAttribute("aria-label"), StringComparison.Ordinal);
        Assert.Contains("220", map.TextContent, StringComparison.Ordinal);
        // (100 + 200 + 100 + 120 + 220 + 120) / 6 = 143.3
        Assert.Contains("mean 143 µmol/m²·s", page.Find(".rests").TextContent, StringComparison.Ordinal);
    }
}
