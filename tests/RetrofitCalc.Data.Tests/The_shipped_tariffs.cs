using NodaTime;
using RetrofitCalc.Data.Seed;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Data.Tests;

public sealed class The_shipped_tariffs
{
    private static readonly IReadOnlyList<ShippedTariff> All = Shipped.Tariffs();

    [Fact]
    public void can_all_be_billed() => Assert.All(All, t => Assert.Empty(StudyEvaluation.Check(t.Tariff)));

    [Fact]
    public void name_the_document_they_were_read_in_or_are_labelled_invented() => Assert.All(All, t =>
    {
        Assert.Contains(t.Tariff.Source.Kind, new[] { EvidenceKind.Tested, EvidenceKind.Invented });
        Assert.NotEmpty(t.Tariff.Source.Source);
        Assert.True(t.Tariff.Source.Kind != EvidenceKind.Invented || t.Note.StartsWith("Invented", StringComparison.Ordinal), t.Id);
    });

    [Fact]
    public void have_an_id_and_a_name_each()
    {
        Assert.All(All, t => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", t.Id));
        Assert.Equal(All.Count, All.Select(t => t.Id).Distinct().Count());
        Assert.Equal(All.Count, All.Select(t => t.Tariff.Name).Distinct().Count());
    }

    // A window of demand and a month of a season that nobody read are said to be assumed.
    [Fact]
    public void say_what_was_assumed() => Assert.All(All.Where(t => t.Tariff.Demand.Count > 0 && t.Tariff.Source.Kind != EvidenceKind.Invented), t =>
        Assert.Contains("averaging window", t.Note));

    // Bills printed in the sources (first two) or worked from their prices by hand:
    // handbook: 3.74 + 17,588 × 0.09444 − 17,588 × 0.017192 + 262.34; Seymour: 7.50 + 1,200 kWh in blocks and power cost, + 1 %;
    // Batavia: 100 + 400,000 × 0.04362 + 1,050 kW × 17.25; Columbia River: 100 kW at 0.93, 104 kW billed, 40,000 kWh;
    // South Whitley: 200 kVA now and 400 kVA at the peak, 80,000 kWh; Sioux Falls: 800 kW, 300,000 kWh.
    [Theory]
    [InlineData("general-service-demand", 17588, 30.0, null, null, 1624.72)]
    [InlineData("municipal-residential-blocks", 1200, null, null, null, 171.55)]
    [InlineData("municipal-large-power-factor", 400000, 1000.0, 0.85, null, 35660.50)]
    [InlineData("public-district-hours-of-use", 40000, 100.0, 0.93, null, 3895.80)]
    [InlineData("municipal-power-ratchet", 80000, 200.0, 1.0, 400.0, 2630.40)]
    [InlineData("municipal-primary", 300000, 800.0, null, null, 27139.29)]
    public void bill_what_their_source_bills(string id, double kilowattHours, double? kilowatts, double? powerFactor, double? earlier, double total)
    {
        var tariff = All.Single(t => t.Id == id).Tariff;
        var month = new MeteredMonth(new YearMonth(2027, 1), [Energy.FromKilowattHours(kilowattHours)], kilowatts is { } kw ? [Power.FromKilowatts(kw)] : [])
        {
            Adjustments = [.. tariff.Adjustments.Select(_ => (Energy?)Energy.FromKilowattHours(kilowattHours))],
        };
        var before = earlier is { } peak ? new[] { month with { Peaks = [Power.FromKilowatts(peak)] } } : null;
        Assert.Equal(total, BillCalculation.Year(tariff, [month], new(1, powerFactor, before))[0].Total.Units, 0.005);
    }
}
