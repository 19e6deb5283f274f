using Bunit;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Tariffs;
using RetrofitCalc.Web.Features.Tariffs.Clauses;
using RetrofitCalc.Web.Features.Tariffs.Demands;
using RetrofitCalc.Web.Features.Tariffs.Periods;
using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Tariffs;

/// <summary>What few bills have, typed on the page. All prices invented.</summary>
public class Clauses_of_a_tariff
{
    [Fact]
    public async Task a_power_factor_clause_asks_for_the_power_factor_of_the_meter()
    {
        await using var open = await OpenStudy.Of(WithDemand());
        var page = open.Page<TariffPage>();
        Assert.Empty(page.FindAll("#f-site-powerfactor"));
        await page.Find("#f-tariff-powerfactor").ChangeAsync(new() { Value = ((int)PowerFactorKind.Target).ToString(System.Globalization.CultureInfo.InvariantCulture) });
        page.WaitForAssertion(() => Assert.NotNull(page.Find("#f-site-powerfactor")));
        await page.Find("#f-site-powerfactor").ChangeAsync(new() { Value = "0.8" });
        Assert.Equal(0.9, Assert.IsType<TargetPowerFactor>(open.Study.Tariff.PowerFactor).Target);
        Assert.Equal(0.8, open.Study.Site.PowerFactor);
        Assert.Empty(open.Session.Problems);
        Assert.Contains("kW times the target divided by the power factor", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task twelve_prices_pasted_become_one_for_each_month()
    {
        await using var open = await OpenStudy.Of(WithDemand() with { Tariff = ClauseEdits.AddAdjustment(WithDemand().Tariff) });
        var page = open.Page<TariffPage>();
        Assert.Equal("year", page.Find("#f-tariff-adjustments-0-by-month").GetAttribute("value"));
        await page.Find("#f-tariff-adjustments-0-prices").ChangeAsync(new() { Value = "0.01\t0.02\t0.03\t0.04\t0.05\t0.06\t0.07\t0.08\t0.09\t0.10\t0.11\t-0.12" });
        Assert.Equal(12, open.Study.Tariff.Adjustments[0].Prices.Count);
        page.WaitForAssertion(() => Assert.Equal("-0.12", page.Find("#f-tariff-adjustments-0-prices-11").GetAttribute("value")));
        Assert.Equal("month", page.Find("#f-tariff-adjustments-0-by-month").GetAttribute("value"));
        await page.Find("#f-tariff-adjustments-0-prices-6").ChangeAsync(new() { Value = "0.5" });
        Assert.Equal(0.5, open.Study.Tariff.Adjustments[0].Prices[6].PerKilowattHour);
    }

    [Fact]
    public async Task eleven_prices_are_kept_as_typed_and_explained()
    {
        await using var open = await OpenStudy.Of(WithDemand() with { Tariff = ClauseEdits.AddAdjustment(WithDemand().Tariff) });
        var page = open.Page<TariffPage>();
        await page.Find("#f-tariff-adjustments-0-prices").ChangeAsync(new() { Value = "1 2 3 4 5 6 7 8 9 10 11" });
        Assert.Equal("1 2 3 4 5 6 7 8 9 10 11", page.Find("#f-tariff-adjustments-0-prices").GetAttribute("value"));
        Assert.Contains("11 prices are typed here", page.Markup, StringComparison.Ordinal);
        Assert.Single(open.Study.Tariff.Adjustments[0].Prices);
    }

    [Fact]
    public async Task a_tax_falls_on_the_lines_that_are_ticked_and_follows_a_new_name()
    {
        await using var open = await OpenStudy.Of(WithDemand() with { Tariff = ClauseEdits.AddTax(WithDemand().Tariff) });
        var page = open.Page<TariffPage>();
        await page.FindAll("#f-tariff-taxes-0-on input")[0].ChangeAsync(new() { Value = false });
        Assert.Equal(["Demand"], open.Study.Tariff.Taxes[0].On);
        await page.Find("#f-tariff-demand-0-name").ChangeAsync(new() { Value = "Peak kW" });
        Assert.Equal(["Peak kW"], open.Study.Tariff.Taxes[0].On);
    }

    [Fact]
    public async Task twelve_reading_dates_are_refused_with_the_number_there_must_be()
    {
        await using var open = await OpenStudy.Of(WithDemand() with { Tariff = WithDemand().Tariff with { Reading = ReadingEdits.Start(ReadingKind.Dates, 2027) } });
        var page = open.Page<TariffPage>();
        await page.Find("#f-tariff-reading-dates").ChangeAsync(new() { Value = "2027-01-05\n2027-02-03" });
        Assert.Contains("2 dates are typed here; there must be 13.", page.Markup, StringComparison.Ordinal);
        Assert.Equal(13, open.Study.Tariff.Reading.Dates.Count);
    }

    [Fact]
    public async Task a_ratchet_can_look_at_peaks_of_some_months_only()
    {
        var study = WithDemand();
        await using var open = await OpenStudy.Of(study with { Tariff = study.Tariff with { Demand = [DemandEdits.WithRatchet(study.Tariff.Demand[0], 0.8) with { Minimum = Power.FromKilowatts(5) }] } });
        var page = open.Page<TariffPage>();
        foreach (var month in new[] { 0, 1, 2, 3, 4, 8, 9, 10, 11 })
            await page.FindAll("#f-tariff-demand-0-ratchet-peakmonths input")[month].ChangeAsync(new() { Value = false });
        Assert.Equal([6, 7, 8], open.Study.Tariff.Demand[0].Ratchet!.PeakMonths);
        Assert.Contains("ratchet 80", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void blocks_split_the_last_and_prices_change_places_without_their_ends()
    {
        var start = new EditState(SmallStudies.OneRack(), []);
        EditState Split(EditState s) => s with { Study = PeriodEdits.Change(s.Study, Only(s), PeriodEdits.AddBlock) };
        var two = Split(Split(start));
        Assert.Equal([1000, 2000, null], Only(two).Price.Blocks.Select(b => b.UpTo?.KilowattHours));
        var priced = two with { Study = PeriodEdits.Block(two.Study, Only(two), 2, b => b with { Price = EnergyPrice.FromPerKilowattHour(0.05) }) };
        var up = PeriodEdits.PriceUp(priced, Only(priced), 2);
        Assert.Equal([(0.12, 1000d), (0.05, 2000d), (0.12, (double?)null)], Only(up).Price.Blocks.Select(b => (b.Price.PerKilowattHour, b.UpTo?.KilowattHours)));
        Assert.Equal([1000, null], Only(PeriodEdits.RemoveBlock(up, Only(up), 2)).Price.Blocks.Select(b => b.UpTo?.KilowattHours));
    }

    private static RetrofitCalc.Engine.Billing.EnergyPeriod Only(EditState state) => RetrofitCalc.Engine.Billing.EnergyPeriod.Of(state.Study.Tariff.Energy).Single();

    private static Study WithDemand()
    {
        var study = SmallStudies.TenWithTubes();
        return study with { Tariff = study.Tariff with { Demand = [new DemandCharge { Name = "Demand", Price = DemandPrice.FromPerKilowatt(10) }] } };
    }
}
