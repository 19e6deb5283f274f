using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Tests.Cases;

public class Sums_of_a_case
{
    private const double Exact = 1e-6;

    public static TheoryData<string> Cases => ["now", "after"];

    [Fact]
    public void the_sample_has_no_problems() => Assert.Empty(StudyEvaluation.Check(SampleStudy.Small));

    [Theory, MemberData(nameof(Cases))]
    public void areas_make_the_site(string which)
    {
        var (result, _) = Evaluate(which);
        Assert.True(result.Site.Cost.Units > 1000);
        Assert.Equal(result.Site.Cost.Units, result.Areas.Sum(area => area.Cost.Units), Exact);
        Assert.Equal(result.Site.Lighting.KilowattHours, result.Areas.Sum(area => area.Lighting.KilowattHours), Exact);
    }

    [Theory, MemberData(nameof(Cases))]
    public void seasons_and_the_time_between_make_the_site(string which)
    {
        var (result, _) = Evaluate(which);
        Assert.Equal(["Winter crop", "Summer crop", "All year", "Between seasons"], result.Seasons.Select(season => season.Name));
        Assert.Equal(result.Site.Cost.Units, result.Seasons.Sum(season => season.Cost.Units), Exact);
        Assert.Equal(result.Site.Lighting.KilowattHours, result.Seasons.Sum(season => season.Lighting.KilowattHours), Exact);
        Assert.Equal(result.Site.Plant.KilowattHours, result.Seasons.Sum(season => season.Plant.KilowattHours), Exact);
        Assert.Equal(result.Site.FuelTherms, result.Seasons.Sum(season => season.FuelTherms), Exact);
    }

    [Theory, MemberData(nameof(Cases))]
    public void lines_make_the_site(string which)
    {
        var (result, _) = Evaluate(which);
        Assert.Equal(result.Site.Cost.Units, result.Lines.Sum(line => line.Cost.Units), Exact);
        Assert.Equal(result.Site.Lighting.KilowattHours, result.Lines.Sum(line => line.Energy.KilowattHours), Exact);
        Assert.Equal(result.Site.Connected.Watts, result.Lines.Sum(line => line.Connected.Watts), Exact);
    }

    [Theory, MemberData(nameof(Cases))]
    public void cost_is_the_bill_less_the_bill_of_the_base_load_less_fuel_saved(string which)
    {
        var (result, study) = Evaluate(which);
        var (unlit, _) = Evaluate("now", study with { Lines = [] });
        var fuel = result.Site.FuelTherms * study.Site.Plant.FuelPricePerTherm.Units;
        Assert.Equal(result.Bills.Sum(bill => bill.Total.Units) - unlit.Bills.Sum(bill => bill.Total.Units) - fuel, result.Site.Cost.Units, Exact);
    }

    private static (LightingCase Result, Study Study) Evaluate(string which, Study? study = null)
    {
        study ??= SampleStudy.Small;
        var measures = which == "now" ? new Dictionary<string, Measure>() : SampleStudy.MeasuresOf(study.Options[0]);
        return (CaseEvaluation.Evaluate(new(study), which, measures, null, Perturbation.None), study);
    }
}
