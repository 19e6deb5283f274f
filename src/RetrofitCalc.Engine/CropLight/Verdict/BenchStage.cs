using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Light over a bench in one stage: now, after, and as what is fitted ages (E-78).</summary>
internal sealed class BenchStage
{
    private readonly BenchChange _change;
    private readonly BenchModel _model;
    private readonly double[]?[] _after;

    /// <summary>Works the light out where it can be.</summary>
    /// <param name="change">The bench and the option.</param>
    /// <param name="now">The stage as it is.</param>
    /// <param name="after">The stage as the option lights it.</param>
    /// <param name="model">The model over the readings that speak for the stage.</param>
    public BenchStage(BenchChange change, Stage now, Stage after, BenchModel model)
    {
        (_change, _model, NowStage, AfterStage) = (change, model, now, after);
        Unreached = change.Lines.Where(line => !model.Reaches(line.Now, line.HangingAfter(model.Read))).Select(line => (Length?)line.HeightAfter(model.Read)).FirstOrDefault();
        var present = change.Lines.Select(line => Present(line)).ToList();
        if (present.Count > 0 && present.All(light => light is not null))
            (Now, NowAtEnd) = (Sum(present, line => AgeingNow(line).At(0)), Sum(present, line => AgeingNow(line).At(AgeingNow(line).EndYears)));
        // Lines nobody has counted light the bench too: what the others do there is known only while nothing changes.
        var isWhole = change.IsUnchanged || change.Bench.Uncounted.Count == 0;
        _after = [.. change.Lines.Select(line => Unreached is null && isWhole ? After(line) : null)];
    }

    /// <summary>The stage as it is.</summary>
    public Stage NowStage { get; }

    /// <summary>The stage as the option lights it.</summary>
    public Stage AfterStage { get; }

    /// <summary>The readings it rests on.</summary>
    public MeasuredLight Read => _model.Read;

    /// <summary>A height of the option that the readings do not reach; null when they reach all.</summary>
    public Length? Unreached { get; }

    /// <summary>Light now at each place of the readings; null when not known. [µmol m⁻² s⁻¹]</summary>
    public double[]? Now { get; }

    /// <summary>Light of the present lamps when they are due, each line at the end of its own interval; null when not known. [µmol m⁻² s⁻¹]</summary>
    public double[]? NowAtEnd { get; }

    /// <summary>Whether light after the change is known.</summary>
    public bool IsKnown => Now is not null && _after.All(light => light is not null);

    /// <summary>Light after the change at each place. [µmol m⁻² s⁻¹]</summary>
    /// <param name="years">Since the change; each line no longer than its own interval. [years]</param>
    public double[] At(double years) => Sum(_after, line => _change.Ageing[line.Now.Line.Id].At(years));

    /// <summary>Mean light of some lines. [µmol m⁻² s⁻¹]</summary>
    /// <param name="which">The lines.</param>
    /// <param name="years">Since the change; each line no longer than its own interval. [years]</param>
    public double MeanOf(Func<BenchLine, bool> which, double years = 0) => Mean(Sum(_after, line => which(line) ? _change.Ageing[line.Now.Line.Id].At(years) : 0));

    /// <summary>Mean over the area the readings stand for. [µmol m⁻² s⁻¹]</summary>
    /// <param name="light">Light at each place.</param>
    public double Mean(double[] light) => light.Zip(Read.Weights, (value, weight) => value * weight).Sum() / Read.Weights.Sum();

    /// <summary>The figures of some light.</summary>
    /// <param name="light">Light at each place.</param>
    /// <param name="photoperiod">Lit hours of a day.</param>
    /// <param name="least">The least light wanted; null without a target.</param>
    public LightFigures Figures(double[] light, OperatingTime photoperiod, PhotonFluxDensity? least)
    {
        var statistics = LightStatistics.Of([.. light.Select(PhotonFluxDensity.FromMicromolesPerSquareMetre)], Read.Weights);
        return new(statistics.Mean, statistics.Minimum, statistics.Maximum, statistics.Daily(photoperiod), statistics.CoefficientOfVariation,
            least is { } wanted ? statistics.ShareAtOrAbove(wanted) : null);
    }

    private LineAgeing AgeingNow(BenchLine line) => _change.Bench.Ageing[line.Now.Line.Id];

    private double[]? Present(BenchLine line) => new Hanging(PresentBench.HeightOf(line.Now, Read)) is var hung && _model.Reaches(line.Now, hung)
        ? Dimmed(_model.Of(line.Now, line.Now, hung, NowStage.LitStep), BenchLine.Level(_change.Bench, line.Now, NowStage.Dimming))
        : null;

    private double[]? After(BenchLine line) =>
        Dimmed(_model.Of(line.After, line.Now, line.HangingAfter(Read), AfterStage.LitStep), BenchLine.Level(_change.Bench, line.After, AfterStage.Dimming));

    private static double[]? Dimmed(double[]? light, double level) => level == 1 ? light : light?.Select(each => each * level).ToArray();

    private double[] Sum(IReadOnlyList<double[]?> light, Func<BenchLine, double> share)
    {
        var sum = new double[_model.Places];
        for (var line = 0; line < light.Count; line++)
        {
            var left = share(_change.Lines[line]);
            for (var at = 0; at < sum.Length; at++)
                sum[at] += light[line]![at] * left;
        }
        return sum;
    }
}
