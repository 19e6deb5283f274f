using RetrofitCalc.Engine.CropLight;

namespace RetrofitCalc.Reports.Tests.Light;

/// <summary>Grids small enough to draw by hand.</summary>
public class Contour_lines
{
    [Fact]
    public void cross_a_slope_where_the_level_lies_between_two_columns()
    {
        // Light falls from 100 at x = 0 to 0 at x = 2, the same in both rows: 75 is met a quarter along, at x = 0.5.
        var line = Assert.Single(ContourLines.Of([0, 2], [0, 1], new double[,] { { 100, 0 }, { 100, 0 } }, 75));
        Assert.Equal([new(0.5, 0), new(0.5, 1)], line.OrderBy(point => point.Y));
    }

    [Fact]
    public void close_around_a_peak_half_way_down()
    {
        // A peak of 10 amid zeros, points 1 apart: 5 is met half a step out on each side.
        var line = Assert.Single(ContourLines.Of([-1, 0, 1], [-1, 0, 1], Peak, 5));
        Assert.Equal(line[0], line[^1]);
        Assert.Equal(Diamond, line.Skip(1).ToHashSet());
    }

    [Fact]
    public void join_the_high_corners_of_a_saddle_when_their_mean_is_above_the_level()
    {
        // High at two facing corners: 10, 0 / 0, 10, mean 5. At level 4 the high corners are joined, so the low ones are cut off, 0.4 from each.
        var lines = ContourLines.Of([0, 1], [0, 1], new double[,] { { 10, 0 }, { 0, 10 } }, 4);
        Assert.Equal(2, lines.Count);
        Assert.All(lines, line => Assert.True(Near(line, new(1, 0), 0.4) || Near(line, new(0, 1), 0.4), string.Join(" ", line)));
    }

    [Fact]
    public void part_the_high_corners_of_a_saddle_when_their_mean_is_below_the_level()
    {
        // The same corners at level 6: each high corner is cut off by itself, 0.4 from it.
        var lines = ContourLines.Of([0, 1], [0, 1], new double[,] { { 10, 0 }, { 0, 10 } }, 6);
        Assert.Equal(2, lines.Count);
        Assert.All(lines, line => Assert.True(Near(line, new(0, 0), 0.4) || Near(line, new(1, 1), 0.4), string.Join(" ", line)));
    }

    [Fact]
    public void are_none_where_all_is_brighter_or_all_is_dimmer()
    {
        Assert.Empty(ContourLines.Of([-1, 0, 1], [-1, 0, 1], Peak, 11));
        Assert.Empty(ContourLines.Of([-1, 0, 1], [-1, 0, 1], Peak, -1));
    }

    [Fact]
    public void refuse_values_that_do_not_fit_the_grid() =>
        Assert.Throws<ArgumentException>(() => ContourLines.Of([0, 1], [0, 1, 2], new double[,] { { 1, 2, 3 }, { 4, 5, 6 } }, 2));

    [Fact]
    public void bound_a_patch_by_the_edge_of_the_bench()
    {
        // The slope from above at 75: what is brighter is the strip from x = 0 to 0.5, area 0.5 · 1.
        var patch = Assert.Single(ContourLines.AtOrAbove([0, 2], [0, 1], new double[,] { { 100, 0 }, { 100, 0 } }, 75));
        Assert.Equal(0.5, Math.Abs(Area(patch)), 12);
    }

    [Fact]
    public void bound_the_whole_bench_where_all_of_it_is_bright_enough()
    {
        // The level is met even where it is just met: 3 m by 2 m.
        var patch = Assert.Single(ContourLines.AtOrAbove([0, 1, 3], [0, 2], new double[,] { { 5, 5, 5 }, { 5, 5, 5 } }, 5));
        Assert.Equal(6, Math.Abs(Area(patch)), 12);
    }

    [Fact]
    public void leave_a_hole_where_the_middle_is_dim()
    {
        // A dip of 0 amid tens, 2 by 2: the diamond of half a square is cut out of 4.
        var dip = new double[,] { { 10, 10, 10 }, { 10, 0, 10 }, { 10, 10, 10 } };
        var outlines = ContourLines.AtOrAbove([-1, 0, 1], [-1, 0, 1], dip, 5);
        Assert.Equal([0.5, 4], outlines.Select(outline => Math.Abs(Area(outline))).Order());
    }

    private static double[,] Peak => new double[,] { { 0, 0, 0 }, { 0, 10, 0 }, { 0, 0, 0 } };

    private static HashSet<PlanePoint> Diamond => [new(0.5, 0), new(-0.5, 0), new(0, 0.5), new(0, -0.5)];

    private static bool Near(IReadOnlyList<PlanePoint> line, PlanePoint corner, double distance) =>
        line.Count == 2 && line.All(point => Math.Abs(Math.Abs(point.X - corner.X) + Math.Abs(point.Y - corner.Y) - distance) < 1e-12);

    /// <summary>By the sum of cross products along the outline.</summary>
    private static double Area(IReadOnlyList<PlanePoint> outline) =>
        outline.Zip(outline.Skip(1), (a, b) => a.X * b.Y - b.X * a.Y).Sum() / 2;
}

public class Steps_of_a_light_map
{
    [Theory]
    [InlineData(91, 243, 75, 25, 7)] // 152 over seven is 21.7: steps of 25 from 75 to 250
    [InlineData(0, 70, 0, 20, 4)] // steps of 10 would need an eighth for 70 itself
    [InlineData(5, 5, 5, 0.001, 1)]
    public void are_round_and_seven_at_most(double low, double high, double first, double step, int count)
    {
        var steps = EvenSteps.Over(low, high);
        Assert.Equal((first, step, count), (Math.Round(steps.Low, 9), Math.Round(steps.Step, 9), steps.Count));
        Assert.Equal(count - 1, steps.Levels.Count);
    }

    [Fact]
    public void hold_a_value_on_a_level_in_the_brighter_step()
    {
        var steps = EvenSteps.Over(91, 243);
        Assert.Equal((0, 1, 6), (steps.IndexOf(99.9), steps.IndexOf(100), steps.IndexOf(250)));
    }
}
