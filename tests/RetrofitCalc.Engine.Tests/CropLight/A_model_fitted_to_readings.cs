using CsCheck;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.CropLight;

public class A_model_fitted_to_readings
{
    private static readonly AreaLight Bench = new() { BenchLength = Length.FromMetres(1.2), BenchWidth = Length.FromMetres(0.6) };
    private static readonly double[] X = [-0.48, -0.24, 0, 0.24, 0.48], Y = [-0.24, -0.12, 0, 0.12, 0.24];
    private static readonly PlanePoint[] Points = [.. Y.SelectMany(y => X.Select(x => new PlanePoint(x, y)))];
    private static readonly double[] Heights = [0.25, 0.40, 0.60];

    // Readings made up from known shares, at three heights of 25 points: the shares come back and nothing is left.
    [Fact]
    public void finds_the_shares_that_made_the_readings() =>
        Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[0, 0.3]).Where((strip, tube, _) => strip + tube > 0.1).Sample((strip, tube, constant) =>
        {
            var fit = LightModel.Fit([.. Heights.Select(height => Read(height, (strip, tube, constant), at => 1))], null);
            Assert.Equal(strip, fit.Strip, tolerance: 1e-6);
            Assert.Equal(tube, fit.Tube, tolerance: 1e-6);
            Assert.Equal(constant, fit.Constant.MicromolesPerSquareMetre, tolerance: 1e-6);
            Assert.All(fit.Residuals, residual => Assert.Equal(0, residual, tolerance: 1e-6));
            Assert.Equal(75, fit.Residuals.Count);
        }, iter: 100);

    // Light of a mixed fixture predicted between and beyond the heights it was read at.
    [Theory, InlineData(0.125), InlineData(0.33), InlineData(0.9)]
    public void tells_the_light_at_other_heights_within_reach(double height)
    {
        var fit = LightModel.Fit([.. Heights.Select(at => Read(at, (0.4, 0.5, 0.05), _ => 1))], null);
        var found = fit.Over(Lamps(height), Length.FromMetres(height), Points);
        foreach (var (truth, light) in Truth(height, (0.4, 0.5, 0.05)).Zip(found))
            Assert.Equal(truth, light.MicromolesPerSquareMetre, tolerance: 1e-6 * truth);
    }

    // Half beyond the measured heights 0.25 to 0.60: 0.125 to 0.90 m.
    [Theory, InlineData(0.12, false), InlineData(0.125, true), InlineData(0.90, true), InlineData(0.91, false)]
    public void refuses_heights_the_readings_do_not_reach(double height, bool reached)
    {
        var fit = LightModel.Fit([.. Heights.Select(at => Read(at, (0.4, 0.5, 0.05), _ => 1))], null);
        Assert.Equal(reached, fit.Reaches(Length.FromMetres(height)));
        if (!reached) Assert.Throws<ArgumentOutOfRangeException>(() => fit.Over(Lamps(height), Length.FromMetres(height), Points));
    }

    // One height: one shape and the constant at most, and it says so.
    [Fact]
    public void of_one_height_takes_one_shape_and_says_so()
    {
        var fit = LightModel.Fit([Read(0.4, (0.4, 0.5, 0.05), _ => 1)], null);
        Assert.True(fit.Strip == 0 || fit.Tube == 0);
        Assert.True(fit.OneHeight);
        Assert.Contains("cannot tell", fit.Determined, StringComparison.Ordinal);
        Assert.True(fit.RootMeanSquare is > 1e-6 and < 0.05);
        var found = fit.Over(Lamps(0.4), Length.FromMetres(0.4), Points);
        Assert.Equal(Truth(0.4, (0.4, 0.5, 0.05)).Average(), found.Average(light => light.MicromolesPerSquareMetre), tolerance: 0.5);
    }

    [Fact]
    public void of_one_reading_scales_the_lamps_own_shape()
    {
        var (measured, sources) = Read(0.4, (0, 0.8, 0), _ => 1);
        var one = measured with { Readings = [measured.Readings[12]], Weights = [1] };
        var fit = LightModel.Fit([(one, sources)], null);
        Assert.Equal((0.8, 0), (Math.Round(fit.Tube, 9), fit.Strip));
        Assert.Null(fit.ErrorOfMean(sources, Length.FromMetres(0.4), Points));
    }

    // Noise of ±5 %, evenly spread: the mean of a prediction lies within its stated error 19 times in 20.
    [Fact]
    public void tells_the_mean_of_noisy_readings_within_its_error()
    {
        var (within, all) = (0, 0);
        Gen.Double[-1, 1].Array[75].Sample(noise =>
        {
            var fit = LightModel.Fit([.. Heights.Select((height, set) => Read(height, (0.4, 0.5, 0.05), at => 1 + 0.05 * noise[set * 25 + at]))], null);
            var truth = Truth(0.5, (0.4, 0.5, 0.05)).Average();
            var off = Math.Abs(fit.Over(Lamps(0.5), Length.FromMetres(0.5), Points).Average(light => light.MicromolesPerSquareMetre) / truth - 1);
            var error = fit.ErrorOfMean(Lamps(0.5), Length.FromMetres(0.5), Points)!.Value;
            Assert.InRange(error, 0.001, 0.02);
            all++;
            if (off <= error) within++;
        }, iter: 400, threads: 1);
        Assert.InRange(within / (double)all, 0.90, 0.995); // 400 draws of 0.95: ±0.011
    }

    // What surfaces throw back is in the model then, not in a constant.
    [Fact]
    public void knows_the_light_that_surfaces_throw_back()
    {
        var surroundings = new Surroundings(Length.FromMetres(0.65), new(0.3, 0.7, 0.6));
        var box = new ReflectingCavity(Length.FromMetres(1.2), Length.FromMetres(0.6), Length.FromMetres(0.65), surroundings.Reflectance);
        var sets = Heights.Select(height => (Measured(height, [.. ShelfLight.Over([.. Lamps(height).Select(lamp => lamp.Tube)], box, Points).Select(light => light.MicromolesPerSquareMetre * 0.7)]), Lamps(height))).ToList();
        var fit = LightModel.Fit(sets, surroundings);
        Assert.Equal(0.7, fit.Tube, tolerance: 1e-6);
        Assert.Equal(0, fit.Strip, tolerance: 1e-6);
        Assert.Equal(PhotonFluxDensity.Zero, fit.Constant);
        var plain = LightModel.Fit(sets, null);
        Assert.True(plain.Constant > PhotonFluxDensity.Zero);
    }

    // A luminaire with a file has one factor, whatever the heights.
    [Fact]
    public void scales_a_photometric_file()
    {
        double[] angles = [.. Enumerable.Range(0, 91).Select(i => (double)i)];
        var file = new LuminousIntensityDistribution(PhotometricType.C, angles, [0], [angles.Select(a => 1000 * Math.Cos(a * Math.PI / 180)).ToArray()]) { Opening = new(0.1, 1.2, 0) };
        IReadOnlyList<LightSource> At(double height) => [.. Lamps(height).Select(lamp => new LightSource(lamp.Tube, file))];
        var fit = LightModel.Fit([.. Heights.Select(height => (Measured(height, [.. LightField.Over(At(height), Points).Select(light => light.MicromolesPerSquareMetre * 0.83)]), At(height)))], null);
        Assert.Equal((0.83, 0, 0), (Math.Round(fit.File, 9), fit.Strip, fit.Tube));
        Assert.Equal(LightField.Over(At(0.5), Points)[3].MicromolesPerSquareMetre * 0.83, fit.Over(At(0.5), Length.FromMetres(0.5), Points)[3].MicromolesPerSquareMetre, tolerance: 1e-6);
    }

    // Bare tubes seen whole (1) with a reflector that turns 0.45 down: strips send all of their light down, not 1.45 times.
    [Theory, InlineData(0.45, 1.0, 1.0), InlineData(0, 1.0, 1.0), InlineData(0.7, 0.2, 0.8)]
    public void gives_strips_no_more_than_the_lamps_they_replace(double strip, double tube, double expected)
    {
        var fit = LightModel.Fit([.. Heights.Select(height => Read(height, (strip, tube, 0), _ => 1))], null);
        Assert.Equal(expected, fit.SharesOf(TubeEmission.DownFacingStrip).Strip, tolerance: 1e-6);
        Assert.Equal(0, fit.SharesOf(TubeEmission.DownFacingStrip).Tube);
        Assert.Equal(tube, fit.SharesOf(TubeEmission.BareTube).Tube, tolerance: 1e-6);
    }

    [Fact]
    public void has_no_shares_of_readings_in_the_dark()
    {
        var fit = LightModel.Fit([(Measured(0.4, [.. Points.Select(_ => 0.0)]), Lamps(0.4))], null);
        Assert.Equal((0, 0), (fit.Strip, fit.Tube));
        Assert.Null(fit.ErrorOfMean(Lamps(0.4), Length.FromMetres(0.4), Points));
        Assert.All(fit.Over(Lamps(0.4), Length.FromMetres(0.4), Points), light => Assert.Equal(PhotonFluxDensity.Zero, light));
    }

    // Whatever was read, shares are zero or more and light stays a number.
    [Fact]
    public void has_an_answer_for_any_readings() =>
        Gen.Select(Gen.Double[0, 900].Array[25], Gen.Double[0, 900].Array[25], Gen.Double[0.1, 2], Gen.Double[0.1, 2]).Sample((first, second, low, high) =>
        {
            var fit = LightModel.Fit([(Measured(low, first), Lamps(low)), (Measured(high, second), Lamps(high))], null);
            Assert.True(fit.Strip >= 0 && fit.Tube >= 0 && double.IsFinite(fit.RootMeanSquare));
            Assert.Equal(50, fit.Residuals.Count);
            Assert.All(fit.Over(Lamps(low), Length.FromMetres(low), Points), light => Assert.True(double.IsFinite(light.MicromolesPerSquareMetre)));
        }, iter: 100);

    // The mark of a least sum of squares with shares of zero or more (Karush, Kuhn and Tucker): no share in use could be better larger or
    // smaller, and none that is zero better larger, except by less than the billionth for which no share is added (slope² < 1e-9 · sum).
    [Fact]
    public void leaves_no_better_shares() =>
        Gen.Select(Gen.Double[0.2, 1], Gen.Double[0, 1], Gen.Double[-0.4, 0.4].Array[50]).Sample((strip, tube, noise) =>
        {
            double[] read = [.. Truth(0.3, (strip, tube, 0)).Concat(Truth(0.6, (strip, tube, 0))).Zip(noise, (light, off) => light * (1 + off))];
            double[] first = read[..25], second = read[25..];
            var fit = LightModel.Fit([(Measured(0.3, first) with { OutOfLine = [] }, Lamps(0.3)), (Measured(0.6, second) with { OutOfLine = [] }, Lamps(0.6))], null);
            double[] sizes = [.. new[] { first, second }.SelectMany(read => read.Select(light => Math.Max(light, read.Average() / 10)))];
            foreach (var (share, unit) in new[] { (fit.Strip, (1, 0, 0)), (fit.Tube, (0, 1, 0)), (fit.Constant.MicromolesPerSquareMetre, (0, 0, 1.0)) })
            {
                double[] shape = [.. Truth(0.3, unit).Concat(Truth(0.6, unit)).Zip(sizes, (light, size) => light / size)];
                var slope = fit.Residuals.Zip(shape, (left, each) => left * each).Sum() / Math.Sqrt(shape.Sum(each => each * each));
                Assert.True(share > 0 ? Math.Abs(slope) < 1e-9 : slope > -1e-4, $"share {share}, slope {slope}");
            }
        }, iter: 200);

    [Fact]
    public void needs_readings_and_lamps()
    {
        Assert.Throws<ArgumentException>(() => LightModel.Fit([], null));
        Assert.Throws<ArgumentException>(() => LightModel.Fit([(Measured(0.4, [.. Points.Select(_ => 100.0)]), [])], null));
    }

    private static (MeasuredLight, IReadOnlyList<LightSource>) Read(double height, (double, double, double) shares, Func<int, double> noise) =>
        (Measured(height, [.. Truth(height, shares).Select((light, at) => light * noise(at))]), Lamps(height));

    private static double[] Truth(double height, (double Strip, double Tube, double Constant) shares)
    {
        PlacedTube[] bare = [.. Lamps(height).Select(lamp => lamp.Tube)], strips = [.. bare.Select(tube => tube.As(TubeEmission.DownFacingStrip))];
        return [.. Points.Select(point => shares.Strip * LightField.At(strips, point).MicromolesPerSquareMetre
            + shares.Tube * LightField.At(bare, point).MicromolesPerSquareMetre + shares.Constant * 3 * 54)];
    }

    private static IReadOnlyList<LightSource> Lamps(double height) => [.. new[] { -0.2, 0, 0.2 }.Select(y =>
        new LightSource(new PlacedTube(TubeEmission.BareTube, Length.FromMetres(1.2), PhotonFlux.FromMicromolesPerSecond(54), Length.FromMetres(height)) { Centre = new(0, y) }))];

    private static MeasuredLight Measured(double height, double[] light) => MeasuredLight.Of(new()
    {
        Id = "r", Height = Length.FromMetres(height), Columns = X, Rows = Y,
        Values = [.. Enumerable.Range(0, 5).Select(row => (IReadOnlyList<double?>)[.. Enumerable.Range(0, 5).Select(column => (double?)light[row * 5 + column])])],
    }, Bench)!;
}
