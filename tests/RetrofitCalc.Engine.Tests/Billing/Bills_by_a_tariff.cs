using NodaTime;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Billing;

/// <summary>E-07 and E-08 with numbers anyone can redo.</summary>
public class Bills_by_a_tariff
{
    private static readonly Ratchet EightyPercent = new(0.8, 11);

    // 2,500 kWh: 2,000 at 0.14 and 500 at 0.10.
    [Fact]
    public void climb_through_the_blocks()
    {
        var tariff = new Tariff { Name = "Blocks", Energy = [SampleTariff.TimeOfUse.Energy[2]] };
        Assert.Equal([280.0, 50.0], OneMonth.Bill(tariff, [2500]).Lines.Select(line => line.Amount.Units));
        Assert.Equal([280.0], OneMonth.Bill(tariff, [2000]).Lines.Select(line => line.Amount.Units));
    }

    [Theory, InlineData(3404.025, 3404.03), InlineData(1.005, 1.01), InlineData(2.675, 2.68), InlineData(-1.005, -1.01), InlineData(0.0049, 0)]
    public void round_half_a_cent_away_from_zero(double amount, double printed) =>
        Assert.Equal(printed, BillRounding.Amount(amount).Units, 1e-12);

    // Peak 100 kW in August, 20 kW otherwise: every other month is billed 80 kW, January because the steady year wraps.
    [Fact]
    public void remember_the_highest_measured_peak_of_the_year()
    {
        var demand = Billed(EightyPercent, [20, 20, 20, 20, 20, 20, 20, 100, 20, 20, 20, 20]);
        Assert.Equal([80, 80, 80, 80, 80, 80, 80, 100, 80, 80, 80, 80], demand);
    }

    // Looking back two months only, and at measured peaks: October is billed 80 for August, but November is not billed 64 for October.
    [Fact]
    public void look_at_measured_peaks_and_no_further_back_than_the_tariff_says() =>
        Assert.Equal([20, 20, 20, 20, 20, 20, 20, 100, 80, 80, 20, 20], Billed(new(0.8, 2), [20, 20, 20, 20, 20, 20, 20, 100, 20, 20, 20, 20]));

    private static IEnumerable<double> Billed(Ratchet ratchet, double[] peaks)
    {
        var tariff = Tariff.Flat(SampleTariff.Price(0.1)) with
        {
            Demand = [new() { Name = "Demand", Price = DemandPrice.FromPerKilowatt(1), Ratchet = ratchet }],
        };
        var months = peaks.Select((peak, i) => new MeteredMonth(new YearMonth(2027, i + 1), [Energy.Zero], [Power.FromKilowatts(peak)]));
        return BillCalculation.Year(tariff, [.. months], BillTerms.Steady).Select(bill => Math.Round(bill.Lines[^1].Quantity, 9));
    }
}
