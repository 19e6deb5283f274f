using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Luminaires;

public class A_measure_that_does_not_fit
{
    [Theory]
    [InlineData("G5", 4, 277, 2, "base G5")]
    [InlineData("G13", 3, 277, 2, "3 ft long")]
    [InlineData("G13", 4, 277, 3, "3 tubes are asked for")]
    [InlineData("G13", 4, 347, 2, "the supply here is 347 V")]
    public void is_refused_with_the_reason_and_its_line_is_kept(string lampholder, double feet, double volts, int tubes, string reason)
    {
        var (context, measures) = Context(SampleCatalogue.TubeT8 with { Base = lampholder, Length = Length.FromFeet(feet) }, volts, tubes);
        var fitted = FittedLines.Of(context, measures, out var refused);
        Assert.Contains(reason, Assert.Single(refused).Reason);
        Assert.IsType<BallastedFitting>(Assert.Single(fitted).Fitting);
    }

    [Fact]
    public void names_a_product_the_catalogue_does_not_have()
    {
        var (context, _) = Context(SampleCatalogue.TubeT8, 120, 2);
        var refusal = Assert.Single(CaseEvaluation.Refusals(context, new Dictionary<string, Measure> { ["racks"] = new DirectWire("no-such-tube") }));
        Assert.Contains("no-such-tube", refusal.Reason);
    }

    [Fact]
    public void is_not_one_that_fits_by_a_metric_length()
    {
        var (context, measures) = Context(SampleCatalogue.TubeT8, 120, 2); // 1.2 m in place of 4 ft
        Assert.Empty(CaseEvaluation.Refusals(context, measures));
    }

    private static (StudyContext, Dictionary<string, Measure>) Context(DirectWireTube tube, double volts, int tubes)
    {
        var study = SampleStudy.Small with
        {
            Lines = [SampleStudy.Small.Lines[0] with { SupplyVolts = volts }],
            Catalogue = SampleCatalogue.All with { Tubes = [tube] },
        };
        return (new(study), new() { ["racks"] = new DirectWire(tube.Id, tubes) });
    }
}
