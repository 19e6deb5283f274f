using RetrofitCalc.Engine.CropLight;

namespace RetrofitCalc.Engine.Tests.CropLight;

public class Light_at_the_temperature_of_the_air
{
    // NLPIP Lighting Answers: T5 (2002), figure 10-1, read: T8 best at 25 °C, T5 at 35 °C, about a tenth between them for either.
    [Theory, InlineData("T8", 25, 1.0), InlineData("T8", 35, 0.90), InlineData("T12", 35, 0.90), InlineData("T5", 35, 1.0), InlineData("T5HO", 25, 0.90)]
    public void is_as_published(string family, double celsius, double share) => Assert.Equal(share, LampTemperature.Output(family, celsius), 1e-12);

    // From memory, with the reference's doubt; 4.4 °C from a field note of a cold dock: 25 % low or worse.
    [Theory, InlineData("T8", 10, 0.85), InlineData("T8", 4.4, 0.75), InlineData("T5", 15, 0.70), InlineData("T5", 45, 0.95)]
    public void is_as_remembered(string family, double celsius, double share) => Assert.Equal(share, LampTemperature.Output(family, celsius), 1e-12);

    [Fact]
    public void lies_between_neighbouring_points() => Assert.Equal(0.925, LampTemperature.Output("T8", 17.5), 1e-12); // halfway from 0.85 to 1

    [Fact]
    public void goes_on_with_the_last_slope()
    {
        Assert.Equal(0.85, LampTemperature.Output("T8HO", 40), 1e-12);
        Assert.Equal(0.60, LampTemperature.Output("T5", 10), 1e-12);
        Assert.Equal(0, LampTemperature.Output("T5", -30)); // 0.70 − 45 · 0.02 would be below nothing
    }

    [Fact]
    public void is_the_same_for_LED() => Assert.Equal([1, 1], new[] { LampTemperature.Output("LED", -20), LampTemperature.Output("LED", 60) });

    [Fact]
    public void is_never_more_than_rated() =>
        Assert.All(from family in new[] { "T5", "T8", "T12", "LED" } from celsius in Enumerable.Range(-30, 111) select LampTemperature.Output(family, celsius),
            share => Assert.InRange(share, 0, 1));

    [Fact]
    public void is_not_told_for_air_no_lamp_meets() => Assert.Throws<ArgumentOutOfRangeException>(() => LampTemperature.Output("T8", 81));
}
