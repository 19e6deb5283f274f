using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Luminaires;

/// <summary>E-01 and E-02: 2 × 29 W × 0.88 / 0.93 = 54.88 W, of which 51.04 W reach the lamps.</summary>
public class Input_power_of_a_set_up
{
    [Fact]
    public void is_computed_from_parts_with_its_ballast_loss()
    {
        var full = Model(SampleCatalogue.TwoT8).Full!;
        Assert.Equal((54.8817, 3.8417), (Math.Round(full.Total.Watts, 4), Math.Round(full.BallastLoss!.Value.Watts, 4)));
        Assert.Equal(0.07, full.LossShare!.Value, 1e-9); // 1 − BLE
        Assert.Equal(EvidenceKind.Computed, full.Evidence);
    }

    [Fact]
    public void takes_a_tested_combination_before_the_parts_and_the_parts_before_a_nameplate()
    {
        var tested = SampleCatalogue.TwoT8 with { TestedPower = Power.FromWatts(59), NameplatePower = Power.FromWatts(64) };
        Assert.Equal((59, EvidenceKind.Tested), (Model(tested).Full!.Total.Watts, Model(tested).Full!.Evidence));
        Assert.Equal(59 - 51.04, Model(tested).Full!.BallastLoss!.Value.Watts, 1e-9);
        Assert.Equal(EvidenceKind.Computed, Model(tested with { TestedPower = null }).Full!.Evidence);
        var nameplate = new SetUpModel(tested with { TestedPower = null }, SampleCatalogue.LampT8, [null]).Full!;
        Assert.Equal((64, EvidenceKind.Nameplate), (nameplate.Total.Watts, nameplate.Evidence));
        Assert.Null(nameplate.BallastLoss);
    }

    [Fact]
    public void takes_a_reading_at_the_line_before_everything()
    {
        var line = SampleStudy.Line("l", "room", "2-t8", 1) with { Reading = new(Power.FromWatts(57), new(2026, 5, 1)) };
        var input = InputEvidence.Of(line, Model(SampleCatalogue.TwoT8 with { TestedPower = Power.FromWatts(59) }))!;
        Assert.Equal((57, EvidenceKind.Measured), (input.Total.Watts, input.Evidence));
        Assert.Equal(57 - 51.04, input.BallastLoss!.Value.Watts, 1e-9);
    }

    [Fact]
    public void is_not_known_without_any_evidence() =>
        Assert.Null(new SetUpModel(SampleCatalogue.TwoT8, SampleCatalogue.LampT8, [null]).Full);

    [Fact]
    public void never_shows_a_negative_loss() =>
        Assert.Null(Model(SampleCatalogue.TwoT8 with { TestedPower = Power.FromWatts(50) }).Full!.BallastLoss);

    [Fact]
    public void of_a_direct_wire_tube_is_its_rated_line_power_without_loss()
    {
        var input = InputEvidence.OfReplacement(SampleCatalogue.TubeT8, 2);
        Assert.Equal((30, 0), (input.Total.Watts, input.BallastLoss!.Value.Watts));
    }

    // One ballast with one lamp, one with two: the small one alone is a third of the computed power.
    [Fact]
    public void in_a_step_counts_the_energised_ballasts_only()
    {
        var model = Model(SampleCatalogue.ThreeT8InTwoSteps);
        Assert.Equal(1 / 3.0, model.PowerShare(SampleCatalogue.OneLamp), 1e-9);
        Assert.Equal(1, model.PowerShare("a step this set-up does not have"));
        var tested = Model(SampleCatalogue.ThreeT8InTwoSteps with { TestedPower = Power.FromWatts(90), Steps = [new("half", [0], Power.FromWatts(36))] });
        Assert.Equal(0.4, tested.PowerShare("half"), 1e-9);
    }

    private static SetUpModel Model(SetUp setUp) =>
        new(setUp, SampleCatalogue.LampT8, [.. setUp.Ballasts.Select(_ => (Ballast?)SampleCatalogue.Electronic)]);
}
