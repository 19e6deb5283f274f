using CsCheck;
using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Tests.Cases;

public class A_case_answers_to_its_study
{
    private static readonly Gen<Study> Studies = Gen.Select(Gen.Int[0, 60], Gen.Int[0, 60], Gen.Int[0, 60], Gen.Double[0, 1], Gen.Double[0, 1], (a, b, c, cooled, heated) =>
        SampleStudy.Small with
        {
            Site = SampleStudy.Small.Site with { Plant = SampleStudy.Plant with { CooledShare = cooled, HeatedShare = heated } },
            Lines = [.. SampleStudy.Small.Lines.Zip([a, b, c], (line, count) => line with { Count = count, LampsOut = Math.Min(count, line.LampsOut ?? 0) })],
        });

    [Fact]
    public void with_sums_that_agree_whatever_is_counted() => Studies.Sample(study =>
    {
        var result = Now(study);
        Assert.Equal(result.Site.Cost.Units, result.Areas.Sum(area => area.Cost.Units), 1e-6);
        Assert.Equal(result.Site.Cost.Units, result.Seasons.Sum(season => season.Cost.Units), 1e-6);
        Assert.Equal(result.Site.Cost.Units, result.Lines.Sum(line => line.Cost.Units), 1e-6);
        Assert.Equal(result.Site.Lighting.KilowattHours, result.Seasons.Sum(season => season.Lighting.KilowattHours), 1e-6);
    }, iter: 20, threads: 1);

    [Fact]
    public void with_twice_the_energy_for_twice_the_luminaires() => Studies.Sample(study =>
    {
        var twice = Now(study with { Lines = [.. study.Lines.Select(line => line with { Count = line.Count * 2 })] });
        Assert.Equal(2 * Now(study).Site.Lighting.KilowattHours, twice.Site.Lighting.KilowattHours, 1e-6);
    }, iter: 10, threads: 1);

    [Fact]
    public void with_the_same_figures_in_whatever_order_the_lines_stand() => Studies.Sample(study =>
    {
        var (straight, reversed) = (Now(study), Now(study with { Lines = [.. study.Lines.Reverse()] }));
        Assert.Equal(straight.Site.Cost.Units, reversed.Site.Cost.Units, 1e-6);
        Assert.Equal(straight.Lines.Select(line => line.Line), reversed.Lines.Select(line => line.Line).Reverse());
    }, iter: 10, threads: 1);

    [Fact]
    public void with_kilowatt_hours_but_not_kilowatts_for_longer_hours()
    {
        var (likely, longer) = (Now(SampleStudy.Small), Now(SampleStudy.Small, new() { Hours = 1.1 }));
        Assert.Equal(1.1 * likely.Site.Lighting.KilowattHours, longer.Site.Lighting.KilowattHours, 1e-6);
        Assert.Equal(Demand(likely), Demand(longer));
    }

    [Fact]
    public void with_totals_equal_to_the_full_evaluation_under_any_factors()
    {
        var factors = new Perturbation { ExistingWatts = 1.1, ProposedWatts = 0.9, ElectricityPrice = 1.2, Hours = 0.95, FluorescentLife = 0.8 };
        var plan = new CasePlan(new(SampleStudy.Small), "After", SampleStudy.MeasuresOf(SampleStudy.TubesEverywhere), new());
        var (totals, full) = (plan.Totals(factors), plan.Evaluate(factors));
        Assert.Equal(full.Site.Cost.Units, totals.Cost.Units, 1e-6);
        Assert.Equal(full.Site.Lighting.KilowattHours, totals.Lighting.KilowattHours, 1e-6);
        Assert.Equal(full.Replacements.Sum(due => due.Cost.Units), totals.Replacements.Sum(year => year.Units), 1e-6);
    }

    // A winter peak billed by an 80 % ratchet in April, when nothing is lit but the hall: dark months belong to no season.
    [Fact]
    public void with_demand_of_dark_months_between_the_seasons()
    {
        var roomOnly = SampleStudy.Small with { Lines = [SampleStudy.Small.Lines[0]] };
        var between = Now(roomOnly).Seasons.Single(season => season.Name == "Between seasons");
        Assert.Equal(0, between.Lighting.KilowattHours);
        Assert.True(between.Cost.Units > 0);
        Assert.Equal(0, Now(roomOnly with { Tariff = Tariff.Flat(SampleTariff.Price(0.2)) }).Seasons[^1].Cost.Units, 1e-9);
    }

    // 20 magnetic luminaires of 158 W: five lamps found out on series ballasts darken three luminaires, 4 W each.
    [Fact]
    public void with_lamps_out_left_out_only_when_the_baseline_is_as_found()
    {
        var found = SampleStudy.Small with { Assumptions = new() { Baseline = Baseline.AsFound } };
        Assert.Equal(20 * 158, Now(SampleStudy.Small).Lines[2].Connected.Watts, 1e-9);
        Assert.Equal(17 * 158 + 3 * 4, Now(found).Lines[2].Connected.Watts, 1e-9);
    }

    [Fact]
    public void with_unknown_lines_asked_about_and_not_counted()
    {
        var study = SampleStudy.Small with { Lines = [.. SampleStudy.Small.Lines, new() { Id = "new", Area = "hall" }] };
        var result = StudyEvaluation.Run(study, new());
        Assert.Equal(3, result.Now.Lines.Count);
        Assert.Equal(["SetUp", "Count"], result.Questions.Take(2).Select(question => question.Field));
    }

    private static IEnumerable<double> Demand(LightingCase lighting) =>
        lighting.Bills.SelectMany(bill => bill.Lines).Where(line => line.Kind == BillLineKind.Demand).Select(line => line.Quantity);

    private static LightingCase Now(Study study, Perturbation? perturbation = null) =>
        CaseEvaluation.Evaluate(new(study), "Now", new Dictionary<string, Measure>(), null, perturbation ?? Perturbation.None);
}
