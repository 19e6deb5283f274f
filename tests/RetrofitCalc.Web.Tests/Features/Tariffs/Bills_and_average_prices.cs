using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Features.Tariffs;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Tariffs;

public class Bills_and_average_prices
{
    // 590 W × 16 h × 31 d = 292.64 kWh at 0.12 = 35.12; in months of 30 days 33.98. Five long and three short months: 277.54.
    // With 360 W: 21.43 and 20.74, together 169.37.
    [Fact]
    public async Task a_year_is_the_sum_of_rounded_bills_now_and_proposed()
    {
        var year = BillYear.Of(await ResultOf(SmallStudies.TenWithTubes()));
        Assert.Equal(35.12, year.Months[6].Now.Total.Units, 9);
        Assert.Equal(277.54, year.Now.Units, 9);
        Assert.Equal(169.37, year.After!.Value.Units, 9);
        Assert.Equal(13.69, year.Months[6].Saved!.Value.Units, 9);
    }

    [Fact]
    public async Task lines_of_both_bills_stand_side_by_side()
    {
        var study = SmallStudies.TenWithTubes();
        var year = BillYear.Of(await ResultOf(study with { Tariff = study.Tariff with { Fixed = [new FixedCharge("Customer charge", Money.FromUnits(45))] } }));
        var lines = year.Months[6].Lines;
        Assert.Equal(["Customer charge", "Energy"], lines.Select(l => l.Name).Order(StringComparer.Ordinal));
        var energy = lines.Single(l => l.Name == "Energy");
        Assert.Equal((292.64, 178.56), (Math.Round(energy.Now!.Quantity, 6), Math.Round(energy.After!.Quantity, 6)));
    }

    // Two charges of one name in one month, as when a season changes between two readings: both lines must be seen, or the table would not add up.
    [Fact]
    public void two_lines_of_one_name_both_stand_on_the_bill()
    {
        BillLine Line(int charge, double kilowattHours) => new(BillLineKind.Energy, "Peak", kilowattHours, "kWh", 0.1, Money.FromUnits(kilowattHours / 10)) { Charge = charge };
        var month = new BillMonth(new(new(2027, 6), [Line(0, 100), Line(1, 200), Line(1, 300)]), new(new(2027, 6), [Line(0, 50), Line(1, 60), Line(1, 70)]));
        Assert.Equal([(100d, 50d), (200d, 60d), (300d, 70d)], month.Lines.Select(l => (l.Now!.Quantity, l.After!.Quantity)));
    }

    // 7 % of 120.50; the days of a billing month are told when it is not the calendar's.
    [Fact]
    public void a_tax_is_a_percentage_of_an_amount_and_a_billing_month_names_its_days()
    {
        var text = Reports.QuantityText.For(SmallStudies.OneRack());
        var tax = new BillLine(BillLineKind.Tax, "City tax", 120.5, "USD", 0.07, Money.FromUnits(8.44));
        Assert.Equal(("7.00\u00A0%", "$120.50"), (BillLineText.UnitPrice(tax, text), BillLineText.Quantity(tax, text)));
        Assert.Equal("June, 2027-06-15 to 2027-07-14", BillLineText.Month(new MonthlyBill(new(2027, 6), []) { First = new(2027, 6, 15), Last = new(2027, 7, 14) }));
        Assert.Equal("June", BillLineText.Month(new MonthlyBill(new(2027, 6), []) { First = new(2027, 6, 1), Last = new(2027, 6, 30) }));
    }

    // 12 × 45 = 540 fixed beside 277.54 for 2,312.8 kWh: 817.54 / 2,312.8 = 0.353485 a kWh. 901.6 kWh saved × that = 318.70; the bills save 108.17.
    [Fact]
    public async Task an_average_price_counts_fixed_charges_as_if_they_could_be_saved()
    {
        var study = SmallStudies.TenWithTubes();
        var bill = (await ResultOf(study with { Tariff = study.Tariff with { Fixed = [new FixedCharge("Customer charge", Money.FromUnits(45))] } })).Chosen!.Bill;
        Assert.Equal(0.353485, bill.BlendedPrice!.Value.PerKilowattHour, 5);
        Assert.Equal(318.70, bill.BlendedTotal!.Value.Units, 2);
        Assert.Equal(108.17, bill.Total.Units, 2);
        // (318.70 − 108.17) / 108.17 = 195 %.
        Assert.EndsWith("one average price promises 195\u00A0% too much.", BillWords.Blended(bill, QuantityText.For(study)), StringComparison.Ordinal);
    }

    private static async Task<StudyResult> ResultOf(Study study)
    {
        await using var open = await OpenStudy.Of(study);
        return open.Session.Result!;
    }
}
