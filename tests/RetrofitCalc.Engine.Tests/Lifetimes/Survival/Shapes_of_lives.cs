using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Lifetimes.Survival;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.Tests.Lifetimes.Survival;

public class Shapes_of_lives
{
    [Fact] // IES mortality curve, from memory: 90 to 95 % left at 70 % of rated life
    public void leave_nine_lamps_of_ten_at_seventy_percent_of_rated_life() =>
        Assert.InRange(Of(WearPart.Lamp).Surviving(OperatingTime.FromHours(700)), 0.90, 0.95);

    [Fact] // trade page read: "a large percentage of failures" between 80 and 120 % of rated life
    public void let_most_lamps_fail_between_80_and_120_percent()
    {
        var lamp = Of(WearPart.Lamp);
        Assert.Equal(0.7076, lamp.Surviving(OperatingTime.FromHours(800)) - lamp.Surviving(OperatingTime.FromHours(1_200)), 1e-4);
    }

    [Theory]
    [InlineData(WearPart.Ballast)]
    [InlineData(WearPart.Tube)]
    [InlineData(WearPart.Luminaire)]
    public void spread_electronics_wider_than_lamps(WearPart part) => Assert.True(LifeShape.Of(part).Shape < LifeShape.Of(WearPart.Lamp).Shape);

    [Theory]
    [InlineData(WearPart.Lamp)]
    [InlineData(WearPart.Ballast)]
    public void say_that_they_are_practice_and_not_measured(WearPart part) => Assert.Equal(EvidenceKind.Practice, LifeShape.Of(part).Source.Kind);

    private static WeibullLife Of(WearPart part) => new(OperatingTime.FromHours(1_000), LifeShape.Of(part).Shape);
}
