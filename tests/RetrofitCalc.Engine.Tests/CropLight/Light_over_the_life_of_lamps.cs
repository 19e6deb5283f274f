using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;

namespace RetrofitCalc.Engine.Tests.CropLight;

public class Light_over_the_life_of_lamps
{
    // Instant start, 3 h at each start: 24,000 h; 40 % of that is 9,600 h.
    private static readonly LumenMaintenance Lamp = LumenMaintenance.Of(Lamps(SmallRoom.Lamp with { MeanOverInitial = 0.94 }));

    private static readonly LumenMaintenance Tube = LumenMaintenance.Of(SmallRoom.Fitted with { Fitting = new TubeFitting(SmallRoom.Tube, 2) });

    [Theory, InlineData(0, 1), InlineData(100, 1), InlineData(9_600, 0.94), InlineData(19_100, 0.94 * 0.94)]
    public void of_a_lamp_is_whole_after_100_h_and_its_mean_at_two_fifths_of_rated_life(double burned, double share) =>
        Assert.Equal(share, Lamp.At(SmallRoom.Hours(burned)), 1e-12); // 19,100 h: twice 9,500 h after the first 100 h

    [Theory, InlineData(0, 1), InlineData(50_000, 0.7), InlineData(100_000, 0.49)]
    public void of_a_tube_is_70_percent_at_rated_life(double burned, double share) =>
        Assert.Equal(share, Tube.At(SmallRoom.Hours(burned)), 1e-12);

    [Fact]
    public void of_a_tube_follows_no_claim_beyond_six_times_its_test()
    {
        var luminaire = LumenMaintenance.Of(SmallRoom.Fitted with { Fitting = new LuminaireFitting(SmallRoom.Luminaire) });
        Assert.Equal(0.7, luminaire.At(SmallRoom.Hours(54_000)), 1e-12); // rated 100,000 h, tested 9,000 h
    }

    [Theory, InlineData(0.94), InlineData(0.80), InlineData(0.5), InlineData(1.0)]
    public void falls_to_a_share_at_the_hour_that_is_told(double share) =>
        Assert.Equal(share, Lamp.At(Lamp.Until(share)!.Value), 1e-12);

    [Fact]
    public void falls_to_80_percent_after_hours_anyone_can_redo() =>
        Assert.Equal(100 + 9_500 * Math.Log(0.8) / Math.Log(0.94), Lamp.Until(0.8)!.Value.Hours, 1e-6); // 34,360 h

    [Fact]
    public void never_falls_where_the_sheet_says_so()
    {
        var level = LumenMaintenance.Through(OperatingTime.Zero, SmallRoom.Hours(1_000), 1);
        Assert.Null(level.Until(0.9));
        Assert.Equal(OperatingTime.Zero, level.Until(1));
        Assert.Equal(1, level.At(SmallRoom.Hours(1e6)));
    }

    [Fact]
    public void is_taken_from_the_family_and_said_so_where_the_sheet_gives_nothing()
    {
        var unknown = LumenMaintenance.Of(Lamps(SmallRoom.Lamp with { Family = "T12", Lives = [] }));
        Assert.Equal(0.80, unknown.At(SmallRoom.Hours(8_000)), 1e-12);
        Assert.Contains("The sheet gives no mean light: 80 %", unknown.Basis);
        Assert.Contains("20 000 h, for the sheet gives none", unknown.Basis);
    }

    [Fact]
    public void refuses_a_point_before_the_light_counts_as_new() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LumenMaintenance.Through(SmallRoom.Hours(100), SmallRoom.Hours(100), 0.9));

    [Fact]
    public void is_lost_to_dirt_between_two_cleanings_and_further_without_one()
    {
        var light = new AreaLight { DirtLoss = 0.10, CleaningMonths = 18 };
        Assert.Equal(1, DirtDepreciation.At(light, 0));
        Assert.Equal(0.90, DirtDepreciation.At(light, 1.5), 1e-12);
        Assert.Equal(0.81, DirtDepreciation.At(light, 3), 1e-12);
    }

    [Fact]
    public void is_the_product_of_wear_dirt_and_air()
    {
        var area = SmallRoom.Area with { Light = new() { DirtLoss = 0.05, CleaningMonths = 12, AirAtLamps = 35 } };
        var loss = LightLoss.Of(Lamps(SmallRoom.Lamp with { MeanOverInitial = 0.94 }) with { Area = area }, SmallRoom.Hours(9_600), 1);
        Assert.Equal((0.94, 0.95, 0.90), (Math.Round(loss.Lamp, 12), Math.Round(loss.Dirt, 12), Math.Round(loss.Temperature, 12)));
        Assert.Equal(0.94 * 0.95 * 0.90, loss.Factor, 1e-12);
    }

    [Fact]
    public void says_when_nobody_has_measured_the_air()
    {
        Assert.Contains(LightLoss.Of(SmallRoom.Fitted, OperatingTime.Zero, 0).Remarks, remark => remark.StartsWith("Air at the lamps is not measured", StringComparison.Ordinal));
        var tube = LightLoss.Of(SmallRoom.Fitted with { Fitting = new TubeFitting(SmallRoom.Tube, 2) }, OperatingTime.Zero, 0);
        Assert.Contains(LampTemperature.LedRemark, tube.Remarks);
    }

    private static FittedLine Lamps(Lamp lamp) => SmallRoom.Fitted with { Fitting = SmallRoom.Fitting with { Lamp = lamp } };
}
