using CsCheck;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.CropLight.Verdict;

public class Properties_of_a_verdict
{
    private static Study WithTube(double micromoles)
    {
        var study = SampleBench.Study.With(new DirectWire("other"));
        return study with { Catalogue = study.Catalogue with { Tubes = [SampleBench.Tube("other", micromoles)] } };
    }

    [Fact]
    public void a_stronger_tube_never_loses_more_light() => Gen.Select(Gen.Double[5, 80], Gen.Double[0, 40]).Sample((micromoles, more) =>
    {
        var (weaker, stronger) = (WithTube(micromoles).Verdict(), WithTube(micromoles + more).Verdict());
        Assert.True(stronger.Change >= weaker.Change - 1e-12);
        Assert.True(Rank(stronger.Verdict) <= Rank(weaker.Verdict));
    }, iter: 25);

    [Fact]
    public void more_light_now_is_never_less_light_after() => Gen.Double[0.2, 3].Sample(factor =>
    {
        var brighter = SampleBench.Study.WithLight(light => light with
        {
            Readings = [.. light.Readings.Select(set => set with { Values = [.. set.Values.Select(row => row.Select(value => value * factor).ToArray())] })],
        }).Verdict();
        var plain = SampleBench.Study.Verdict();
        Assert.Equal(factor * plain.After!.Mean.MicromolesPerSquareMetre, brighter.After!.Mean.MicromolesPerSquareMetre, 1e-6 * factor * plain.After.Mean.MicromolesPerSquareMetre);
        Assert.Equal(plain.Change!.Value, brighter.Change!.Value, 1e-9);
    }, iter: 25);

    private static int Rank(LightVerdict verdict) => verdict switch { LightVerdict.Loses => 2, LightVerdict.KeepsAtFirst => 1, _ => 0 };
}
