using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.CropLight.Verdict;

/// <summary>E-84. Two luminaires side by side, 0.20 m apart, each with two lamps 0.10 m apart; what is expected comes from the closed forms (E-50).</summary>
public class Rows_drawn_together_or_apart
{
    private static readonly double[] Now = [-0.15, -0.05, 0.05, 0.15];

    // Twice as far: the luminaires move to 0.20 m from the middle, their lamps stay 0.05 m from theirs.
    [Fact]
    public void move_each_luminaire_about_the_middle_and_leave_its_lamps_together()
    {
        var light = With(new("bench", new DirectWire("same")) { RowSpread = 2 }).Verdict();
        Assert.Equal(Under(-0.25, -0.15, 0.15, 0.25), light.After!.Mean.MicromolesPerSquareMetre, 1e-3);
    }

    [Fact]
    public void give_the_light_of_now_at_the_distance_of_now()
    {
        var light = With(new("bench", new DirectWire("same")) { RowSpread = 1 }).Verdict();
        Assert.Equal(Under(Now), light.After!.Mean.MicromolesPerSquareMetre, 1e-3);
    }

    [Fact]
    public void are_no_change_of_nothing()
    {
        Assert.Equal(LightVerdict.Unchanged, With(new("bench", new KeepAsIs())).Verdict().Verdict);
        Assert.NotEqual(LightVerdict.Unchanged, With(new("bench", new KeepAsIs()) { RowSpread = 2 }).Verdict().Verdict);
    }

    [Fact]
    public void cannot_be_told_without_a_layout() =>
        Assert.Equal(LightVerdict.NotKnown, With(new("bench", new DirectWire("same")) { RowSpread = 2 }).WithLight(light => light with { Layout = [] }).Verdict().Verdict);

    // Luminaires that lie across the bench at x = ±0.2 m: their rows lie side by side along its length, so three times as far is ±0.6 m.
    [Fact]
    public void move_across_the_lamps_whichever_way_they_lie()
    {
        double[] Light(double metres, double away) => [.. SampleBench.Quadrant.Select(point => new[] { -away, away }.Sum(x => new[] { -0.05, 0.05 }.Sum(lamp => Lamp(x + lamp, metres).At(point).MicromolesPerSquareMetre)))];
        var study = SampleBench.Study.With(new LineMeasure("bench", new DirectWire("same")) { RowSpread = 3 }).WithLight(light => light with
        {
            Layout = [new("bench", new(-0.2, 0), 90), new("bench", new(0.2, 0), 90)],
            Readings = [.. light.Readings.Select(set => set with { Values = Table(set, Light(set.Height.Metres, 0.2)) })],
        });
        Assert.Equal(Mean(Light(0.4, 0.6)), study.Verdict().After!.Mean.MicromolesPerSquareMetre, 1e-3);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(6)]
    public void stay_within_what_a_bench_can_hold(double spread) =>
        Assert.Contains(StudyEvaluation.Check(With(new("bench", new DirectWire("same")) { RowSpread = spread })), problem => problem.Path == "Options[0].Measures[0].RowSpread");

    private static Study With(LineMeasure measure) => SampleBench.Study.With(measure).WithLight(light => light with
    {
        Layout = [new("bench", new(0, -0.1)), new("bench", new(0, 0.1))],
        Readings = [.. light.Readings.Select(set => set with
        {
            Values = Table(set, SampleBench.Closed(set.Height.Metres, 0.8 * 36, SampleBench.Quadrant, Now)),
        })],
    });

    private static IReadOnlyList<IReadOnlyList<double?>> Table(ReadingSet set, double[] light) =>
        [.. light.Chunk(set.Columns.Count).Select(row => row.Select(value => (double?)value).ToArray())];

    private static PlacedTube Lamp(double x, double metres) =>
        new(TubeEmission.DownFacingStrip, Length.FromFeet(4), PhotonFlux.FromMicromolesPerSecond(0.8 * 36), Length.FromMetres(metres)) { Centre = new(x, 0), AxisDegrees = 90 };

    private static double Under(params double[] across) => Mean(SampleBench.Closed(0.4, 0.8 * 36, SampleBench.Quadrant, across));

    private static double Mean(double[] light)
    {
        var weights = AreaWeights.OfNodes([0, 0.2, 0.4, 0.6], [0, 0.15, 0.3]);
        return light.Zip(weights, (value, weight) => value * weight).Sum() / weights.Sum();
    }
}
