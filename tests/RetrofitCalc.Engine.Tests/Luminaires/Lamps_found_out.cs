using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Luminaires;

/// <summary>E-03, on 10 luminaires of two lamps. Dark power of a magnetic ballast 4 W: trade notes on magnetic ballasts (S-08).</summary>
public class Lamps_found_out
{
    private const double LampWatts = 29 * 0.88 / 0.93;

    [Fact]
    public void on_a_parallel_ballast_take_their_own_share_only() =>
        Assert.Equal(17 * LampWatts, Connected(Parallel, lampsOut: 3), 1e-9);

    // 12 of 20 lamps out: at best 8 ballasts still have a lamp, so two are energised with none, at 2 W each.
    [Fact]
    public void leave_a_parallel_ballast_drawing_its_dark_power_when_none_is_left() =>
        Assert.Equal(8 * LampWatts + 2 * 2, Connected(Parallel, lampsOut: 12), 1e-9);

    [Theory, InlineData(1), InlineData(2)] // one failed lamp darkens both, whether the survey counts one or both
    public void on_a_series_ballast_darken_all_its_lamps(int lampsOut) =>
        Assert.Equal(9 * 2 * LampWatts + 4, Connected(Series, lampsOut), 1e-9);

    [Fact]
    public void with_a_dead_ballast_draw_nothing() =>
        Assert.Equal(9 * 2 * LampWatts, Connected(Parallel, lampsOut: 2, deadBallasts: 1), 1e-9);

    [Fact]
    public void all_of_them_leave_dark_power_alone() => Assert.Equal(10 * 4, Connected(Series, lampsOut: 20), 1e-9);

    [Fact]
    public void count_the_dark_power_as_ballast_loss()
    {
        var load = Load(Series, 1, 0);
        Assert.Equal(9 * (2 * LampWatts - 51.04) + 4, load.BallastLoss!.Value.Watts, 1e-9);
    }

    private static Ballast Parallel => SampleCatalogue.Electronic;

    private static Ballast Series => SampleCatalogue.Electronic with { Circuit = LampCircuit.Series, Technology = BallastTechnology.Magnetic, LampsOutPower = null };

    private static double Connected(Ballast ballast, int lampsOut, int deadBallasts = 0) => Load(ballast, lampsOut, deadBallasts).Connected.Watts;

    private static LineLoad Load(Ballast ballast, int lampsOut, int deadBallasts)
    {
        var line = SampleStudy.Line("l", "room", "2-t8", 10) with { LampsOut = lampsOut, DeadBallasts = deadBallasts };
        var model = new SetUpModel(SampleCatalogue.TwoT8, SampleCatalogue.LampT8, [ballast]);
        return LineLoad.AsFound(model.Full!, line, model, []);
    }
}
