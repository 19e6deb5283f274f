using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.CropLight;

/// <summary>12 mol a day is 12/(180 · 0.0036) = 18.52 h of 180 µmol, and 16.67 h of 200 µmol.</summary>
public class Reach_of_a_light_target
{
    private static readonly LightTarget Twelve = new() { Crop = "leafy greens", LeastDaily = DailyLight.FromMolesPerSquareMetre(12), Source = Provenance.None };

    [Fact]
    public void is_met_in_hours_enough()
    {
        var reach = TargetReach.Of(Twelve, Micromoles(200), Hours(17));
        Assert.Equal((true, false, null), (reach.Met, reach.Unreachable, reach.Problem));
        Assert.Equal(12 / (200 * 0.0036), reach.Hours!.Value.Hours, 1e-9);
    }

    [Fact]
    public void tells_the_hours_that_would_do()
    {
        var reach = TargetReach.Of(Twelve, Micromoles(180), Hours(16));
        Assert.Equal((false, false, "It needs 18.6 h a day."), (reach.Met, reach.Unreachable, reach.Problem)); // 18.52 rounded up
    }

    [Fact]
    public void ends_where_the_crop_bears_no_more()
    {
        var reach = TargetReach.Of(Twelve with { MostHours = Hours(17) }, Micromoles(180), Hours(17));
        Assert.Equal((false, true, "It would need 18.6 h a day, and the crop bears 17 h."), (reach.Met, reach.Unreachable, reach.Problem));
    }

    [Fact]
    public void ends_where_the_day_does()
    {
        var reach = TargetReach.Of(Twelve, Micromoles(130), Hours(24)); // 25.6 h
        Assert.Equal((false, true, "A day of 24 h is too short for it."), (reach.Met, reach.Unreachable, reach.Problem));
        Assert.True(TargetReach.Of(Twelve, PhotonFluxDensity.Zero, Hours(24)).Unreachable);
    }

    [Fact]
    public void is_not_met_by_more_hours_than_the_crop_bears()
    {
        var reach = TargetReach.Of(Twelve with { MostHours = Hours(17) }, Micromoles(200), Hours(20));
        Assert.Equal((false, false, "It bears 17 h a day."), (reach.Met, reach.Unreachable, reach.Problem));
    }

    [Fact]
    public void asks_for_the_hours_the_crop_wants_even_where_light_is_plenty() =>
        Assert.Equal(14, TargetReach.Of(Twelve with { FewestHours = Hours(14) }, Micromoles(600), Hours(10)).Hours!.Value.Hours);

    [Fact]
    public void is_not_bought_with_hours_where_the_light_itself_is_wanted() =>
        Assert.True(TargetReach.Of(new() { Crop = "foliage", LeastLight = Micromoles(36), Source = Provenance.None }, Micromoles(35.9), Hours(24)).Unreachable);

    [Fact]
    public void is_met_by_exactly_the_light_wanted() =>
        Assert.True(TargetReach.Of(Twelve, DailyLight.FromMolesPerSquareMetre(12).LightOver(Hours(16)), Hours(16)).Met);

    private static PhotonFluxDensity Micromoles(double value) => PhotonFluxDensity.FromMicromolesPerSquareMetre(value);

    private static OperatingTime Hours(double value) => OperatingTime.FromHours(value);
}
