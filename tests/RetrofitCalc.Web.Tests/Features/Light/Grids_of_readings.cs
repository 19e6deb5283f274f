using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Features.Light;
using RetrofitCalc.Web.Features.Light.Readings;

namespace RetrofitCalc.Web.Tests.Features.Light;

/// <summary>On a bench of 1.2 by 0.6 m, places by hand.</summary>
public class Grids_of_readings
{
    private static readonly Length Long = Length.FromMetres(1.2);
    private static readonly Length Wide = Length.FromMetres(0.6);

    [Fact]
    public void lie_in_the_middles_of_equal_cells()
    {
        var (x, y) = ReadingGrids.Lay(ReadingPattern.CellCentres, Long, Wide, new(4, 2));
        Assert.Equal([-0.45, -0.15, 0.15, 0.45], x);
        Assert.Equal([-0.15, 0.15], y);
    }

    [Fact]
    public void lie_at_crossings_with_the_edges()
    {
        var (x, y) = ReadingGrids.Lay(ReadingPattern.Crossings, Long, Wide, new(5, 3));
        Assert.Equal([-0.6, -0.3, 0, 0.3, 0.6], x);
        Assert.Equal([-0.3, 0, 0.3], y);
    }

    [Fact]
    public void of_a_quarter_begin_in_the_middle_and_end_at_two_edges()
    {
        var (x, y) = ReadingGrids.Lay(ReadingPattern.Quadrant, Long, Wide, new(3, 2));
        Assert.Equal([0, 0.3, 0.6], x);
        Assert.Equal([0, 0.3], y);
    }

    [Fact]
    public void outwards_have_distances_and_directions()
    {
        var (x, y) = ReadingGrids.Lay(ReadingPattern.Outwards, Long, Wide, new(3, 4));
        Assert.Equal([0, 0.3, 0.6], x);
        Assert.Equal([0, 90, 180, 270], y);
    }

    /// <summary>EN 12464-1: 0.2 · 5^log₁₀(0.6) = 0.140 m, so 9 cells along 1.2 m and 5 across 0.6 m.</summary>
    [Theory]
    [InlineData(ReadingPattern.CellCentres, 9, 5)]
    [InlineData(ReadingPattern.Crossings, 10, 6)]
    [InlineData(ReadingPattern.Quadrant, 6, 4)]
    [InlineData(ReadingPattern.Outwards, 6, 4)]
    public void are_as_close_as_the_spacing_rule_wants(ReadingPattern pattern, int along, int across)
    {
        var count = ReadingGrids.Suggested(pattern, Long, Wide);
        Assert.Equal(new GridCount(along, across), count);
        var (x, _) = ReadingGrids.Lay(pattern, Long, Wide, count);
        Assert.True(x[1] - x[0] <= 0.2 * Math.Pow(5, Math.Log10(0.6)) + 1e-4);
    }

    [Fact]
    public void are_walked_row_by_row_there_and_back()
    {
        var set = LightSamples.Bench().Areas[0].Light!.Readings[0];
        Assert.Equal([(0, 0), (0, 1), (0, 2), (1, 2), (1, 1), (1, 0)], WalkOrder.Of(set));
        Assert.Equal([(0, 0), (0, 1), (0, 2), (1, 0), (1, 1), (1, 2)], WalkOrder.Of(set with { Pattern = ReadingPattern.Outwards }));
    }

    [Fact]
    public void go_on_at_the_first_blank_on_the_way()
    {
        var set = LightSamples.Bench().Areas[0].Light!.Readings[0];
        Assert.Equal(3, WalkOrder.FirstBlank(set with { Values = [[1, 2, 3], [null, null, null]] })); // The far end of the second row.
        Assert.Equal(0, WalkOrder.FirstBlank(set with { Values = [[1, 2, 3], [4, 5, 6]] }));
    }
}
