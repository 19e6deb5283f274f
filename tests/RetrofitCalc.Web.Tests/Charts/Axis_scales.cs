using RetrofitCalc.Web.Charts;

namespace RetrofitCalc.Web.Tests.Charts;

/// <summary>Ticks are round numbers, and zero is always among them.</summary>
public class Axis_scales
{
    [Theory]
    [InlineData(-46509, 133930, new double[] { -50000, 0, 50000, 100000, 150000 })]
    [InlineData(0, 7.2, new double[] { 0, 2, 4, 6, 8 })]
    [InlineData(12, 90, new double[] { 0, 20, 40, 60, 80, 100 })]
    [InlineData(-900, -100, new double[] { -1000, -800, -600, -400, -200, 0 })]
    public void have_round_ticks_around_zero(double low, double high, double[] ticks) =>
        Assert.Equal(ticks, AxisScale.Around(low, high, _ => "").Ticks.Select(t => t.At));

    [Fact]
    public void of_nothing_but_zeros_still_have_a_length() => Assert.Equal(1, AxisScale.Around(0, 0, _ => "").High);

    [Fact]
    public void write_labels_as_they_are_told() =>
        Assert.Equal(["$0", "$2", "$4"], AxisScale.Around(0, 3.5, v => $"${v}").Ticks.Select(t => t.Lines[0]).Where((_, i) => i % 2 == 0));
}
