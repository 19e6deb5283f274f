using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Lifetimes;
using RetrofitCalc.Engine.Tests.Examples;

namespace RetrofitCalc.Engine.Tests.Lifetimes;

/// <summary>The sheet: F32T8/850, 24,000 h at 3 h and 30,000 h at 12 h a start on instant start; 30,000 and 36,000 on programmed (data sheet 81174).</summary>
public class Life_of_a_lamp
{
    [Theory]
    [InlineData(3, 24_000)]
    [InlineData(12, 30_000)]
    [InlineData(6, 27_000)] // 6 h lies half-way between 3 h and 12 h on the logarithm: ln 2 of ln 4
    public void follows_the_hours_per_start(double hoursPerStart, double expected) => Assert.Equal(expected, At(StartMethod.Instant, hoursPerStart), 1e-9);

    [Theory, InlineData(0, 24_000), InlineData(1, 24_000), InlineData(24, 30_000), InlineData(8_760, 30_000)]
    public void is_not_carried_beyond_the_cycles_that_were_tested(double hoursPerStart, double expected) =>
        Assert.Equal(expected, At(StartMethod.Instant, hoursPerStart), 1e-9);

    [Fact]
    public void follows_the_start_method() => Assert.Equal(36_000, At(StartMethod.Programmed, 12), 1e-9);

    [Fact]
    public void is_the_shorter_one_while_the_start_method_is_not_known() => Assert.Equal(30_000, At(null, 12), 1e-9);

    [Fact]
    public void comes_from_the_rows_without_a_method_when_the_sheet_has_them()
    {
        LampLife[] sheet = [new(3, null, SmallRoom.Hours(20_000)), new(3, StartMethod.Programmed, SmallRoom.Hours(15_000))];
        Assert.Equal(20_000, LampLives.At(sheet, StartMethod.Instant, 3)!.Value.Hours);
    }

    [Fact]
    public void is_not_known_without_a_sheet() => Assert.Null(LampLives.At([], StartMethod.Instant, 3));

    private static double At(StartMethod? start, double hoursPerStart) => LampLives.At(SmallRoom.Lamp.Lives, start, hoursPerStart)!.Value.Hours;
}
