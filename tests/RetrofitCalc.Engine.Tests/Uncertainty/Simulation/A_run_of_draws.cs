using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;
using RetrofitCalc.Engine.Uncertainty.Simulation;
using static RetrofitCalc.Engine.Tests.Uncertainty.Simulation.LevelRoom;

namespace RetrofitCalc.Engine.Tests.Uncertainty.Simulation;

public class A_run_of_draws
{
    /// <summary>A ratchet, blocks, a meter, and an option that lights a stage in another way.</summary>
    private static readonly Study Full = SampleStudy.Small with
    {
        Meter = SampleMeter.Uneven(2027, 15, 8, 30),
        Options = [SampleStudy.TubesEverywhere with { Stages = [new("room", "Winter crop", "Growing") { LightsOff = new(11, 5) }] }],
    };

    public static TheoryData<bool, bool> Kinds => new() { { false, false }, { false, true }, { true, false }, { true, true } };

    [Theory, MemberData(nameof(Kinds))]
    public void without_ranges_is_the_evaluation_of_the_study(bool metered, bool staged)
    {
        var study = Full with { Meter = metered ? Full.Meter : null, Options = staged ? Full.Options : [SampleStudy.TubesEverywhere], Assumptions = Sure };
        var likely = StudyEvaluation.Run(study, new SafetyRuleBook()).Options[0];
        var drawn = Draw(study, Sure, new() { Draws = 100 });
        Assert.Equal(likely.NetPresentValue.Units, drawn.NetPresentValue.P50, 1e-9);
        Assert.Equal(likely.AnnualBillSaving.Units, drawn.AnnualSaving.P50, 1e-9);
        Assert.Equal(likely.FirstCost.Total.Units, drawn.FirstCost.P50, 1e-9);
        Assert.Equal(drawn.NetPresentValue.P10, drawn.NetPresentValue.P90);
    }

    private static SimulationResult Run(int seed, int workers) =>
        Draw(Full, Full.Assumptions with { Seed = seed }, new() { Draws = 333 }, new() { Workers = workers });

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    public void gives_the_same_to_the_last_bit_on_any_number_of_threads(int workers)
    {
        var (one, many) = (Run(5, 1), Run(5, workers));
        Assert.Equal(Figures(one), Figures(many));
        Assert.Equal(one.Cumulative, many.Cumulative);
        Assert.Equal(one.Measurements, many.Measurements);
    }

    [Fact]
    public void gives_something_else_from_another_seed()
    {
        Assert.NotEqual(Figures(Run(5, 1)), Figures(Run(6, 1)));
        Assert.Equal(6, Run(6, 1).Seed);
    }

    /// <summary>Every drawn value in order, as bits.</summary>
    private static long[] Figures(SimulationResult drawn) =>
    [
        .. from figure in new[] { drawn.NetPresentValue, drawn.Payback, drawn.FirstCost, drawn.AnnualSaving }
           from value in Enumerable.Range(0, drawn.Draws).Select(i => figure.Percentile(i / (drawn.Draws - 1.0))).Append(figure.Mean)
           select BitConverter.DoubleToInt64Bits(value),
    ];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void tells_how_far_it_is(int workers)
    {
        var told = new Told();
        Draw(Level, new(), new() { Draws = 420 }, new() { Workers = workers, Progress = told });
        Assert.Equal(9, told.Shares.Count); // eight handfuls of fifty and one of twenty
        Assert.Equal(told.Shares.Order(), told.Shares);
        Assert.Equal(1, told.Shares[^1]);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void stops_soon_when_it_is_cancelled(int workers)
    {
        using var stop = new CancellationTokenSource();
        var told = new Told { Then = stop.Cancel };
        Assert.ThrowsAny<OperationCanceledException>(() =>
            Draw(Level, new(), new() { Draws = 100_000 }, new() { Workers = workers, Progress = told, Cancellation = stop.Token }));
        Assert.InRange(told.Shares.Count, 1, workers);
    }

    [Fact]
    public void does_not_begin_once_cancelled()
    {
        var told = new Told();
        Assert.ThrowsAny<OperationCanceledException>(() =>
            Draw(Level, new(), control: new() { Progress = told, Cancellation = new(canceled: true) }));
        Assert.Empty(told.Shares);
    }

    [Fact]
    public void wants_enough_draws_and_a_thread()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new SimulationSettings { Draws = 99 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new SimulationSettings { LivesTogether = 1.1 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new SimulationControl { Workers = 0 });
        Assert.Equal(10_000, new SimulationSettings().Draws);
    }

    private sealed class Told : IProgress<double>
    {
        public List<double> Shares { get; } = [];

        public Action Then { get; init; } = () => { };

        public void Report(double value)
        {
            Shares.Add(value);
            Then();
        }
    }
}
