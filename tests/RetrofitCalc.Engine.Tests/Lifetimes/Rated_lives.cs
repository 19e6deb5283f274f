using CsCheck;
using RetrofitCalc.Engine.Lifetimes;
using RetrofitCalc.Engine.Tests.Examples;

namespace RetrofitCalc.Engine.Tests.Lifetimes;

public class Rated_lives
{
    // 50,000 h at 70 °C: 2^(-10/10) = 1/2 at 80 °C, 1/4 at 90 °C, 2^(-0.5) at 75 °C. Rule of thumb, from memory.
    [Theory, InlineData(70, 50_000), InlineData(80, 25_000), InlineData(90, 12_500), InlineData(75, 35_355.339)]
    public void of_a_ballast_halve_for_every_10_degrees_above_the_rated_case(double celsius, double expected) =>
        Assert.Equal(expected, RatedLives.BallastAt(SmallRoom.Hours(50_000), 70, celsius).Hours, 1e-3);

    [Theory, InlineData(69.9), InlineData(20), InlineData(-10)]
    public void of_a_ballast_do_not_grow_in_the_cold(double celsius) =>
        Assert.Equal(50_000, RatedLives.BallastAt(SmallRoom.Hours(50_000), 70, celsius).Hours);

    [Fact]
    public void of_a_ballast_never_grow_with_temperature() =>
        Gen.Select(Gen.Double[0, 120], Gen.Double[0, 40]).Sample((celsius, rise) =>
            RatedLives.BallastAt(SmallRoom.Hours(50_000), 70, celsius + rise) <= RatedLives.BallastAt(SmallRoom.Hours(50_000), 70, celsius));

    // IES PS-10-18: 10,000 h of test allow 60,000 h.
    [Theory, InlineData(100_000, 10_000, 60_000), InlineData(50_000, 10_000, 50_000), InlineData(60_000, 10_000, 60_000)]
    public void of_a_tube_are_quoted_up_to_six_times_the_test(double rated, double tested, double expected) =>
        Assert.Equal(expected, RatedLives.Quotable(SmallRoom.Hours(rated), SmallRoom.Hours(tested)).Hours);

    [Fact]
    public void of_a_tube_stand_as_claimed_while_the_test_is_not_known() =>
        Assert.Equal(100_000, RatedLives.Quotable(SmallRoom.Hours(100_000), null).Hours);

    [Fact]
    public void last_for_ever_where_nothing_burns() => Assert.Null(RatedLives.Years(SmallRoom.Hours(20_000), SmallRoom.Hours(0)));
}
