using System.Globalization;
using NodaTime;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports.Tests;

/// <summary>Two invented years of bills small enough to add up by hand.</summary>
public class Bill_saving_line_by_line
{
    private const string S = "\u00A0";
    private static readonly QuantityText Text = new("en-US", "USD", UnitSystem.UsCustomary);

    // Now 100.10 + 50.05 a month; after 60.10 + 30.05; the first year 60.10 + 45.05, as the ratchet holds demand.
    private static readonly BillSaving Ratchet = BillSavings.Of(Year(100.10, 50.05), Year(60.10, 45.05), Year(60.10, 30.05),
        Energy.FromKilowattHours(12_000), Energy.FromKilowattHours(4_800));

    [Fact]
    public void is_found_in_one_sentence_with_demand_apart() =>
        Assert.Equal("The electricity bill falls by $720 a year, $240 of it on demand", BillWords.Finding(Ratchet, Text));

    [Fact]
    public void tells_what_the_ratchet_takes_off_the_first_year() =>
        Assert.Equal("Of this, $240 a year is demand; in the first year only $60, because the ratchet remembers earlier peaks.", BillWords.Demand(Ratchet, Text));

    // 12 × 150.15 = 1,801.80 over 12,000 kWh is 0.15015; × 4,800 = 720.72, the bills say 720: the same within half a percent.
    [Fact]
    public void keeps_silent_about_an_average_price_that_is_right() => Assert.Equal("", BillWords.Blended(Ratchet, Text));

    // The same bills, with 6,400 kWh saved: 960.96 promised, 33 % more than 720.
    [Fact]
    public void tells_how_far_an_average_price_is_off() =>
        Assert.Equal($"Averaged over the year this bill is $0.1502/kWh. At that price 6,400{S}kWh less would have promised $961 a year; the two bills differ by $720: one average price promises 33{S}% too much.",
            BillWords.Blended(BillSavings.Of(Year(100.10, 50.05), Year(60.10, 45.05), Year(60.10, 30.05), Energy.FromKilowattHours(12_000), Energy.FromKilowattHours(6_400)), Text));

    [Fact]
    public void of_a_dearer_bill_is_called_dearer() =>
        Assert.Equal("The electricity bill rises by $720 a year, $240 of it on demand",
            BillWords.Finding(BillSavings.Of(Year(60.10, 30.05), Year(100.10, 50.05), Year(100.10, 50.05), Energy.FromKilowattHours(1), Energy.Zero), Text));

    [Fact]
    public void prints_totals_that_are_the_sums_of_its_lines_to_the_cent()
    {
        var part = BillSavingPart.Of(Samples.Quillmere, Samples.Quillmere.Chosen!, Text);
        foreach (var table in new[] { part.Charges, part.Months })
        {
            var lines = table.Rows.TakeWhile(row => !row.Strong).ToList();
            for (var column = 1; column < table.Columns.Count; column++)
                Assert.Equal(Cents(table.Rows[lines.Count].Cells[column]), lines.Sum(row => Cents(row.Cells[column])));
        }
        Assert.Equal(part.Charges.Rows.First(row => row.Strong).Cells.Skip(1), part.Months.Rows.First(row => row.Strong).Cells.Skip(1));
    }

    [Fact]
    public void prints_first_year_columns_only_where_the_first_year_differs()
    {
        Assert.Equal("Saved, first year", BillTables.Charges(Ratchet, Text).Columns[^1].Head);
        Assert.Equal(["of it demand", "$600.60", "$360.60", "$240.00", "$60.00"], BillTables.Charges(Ratchet, Text).Rows[^1].Cells);
        var even = BillSavings.Of(Year(100, 50), Year(60, 30), Year(60, 30), Energy.FromKilowattHours(1), Energy.Zero);
        Assert.Equal("Saved", BillTables.Charges(even, Text).Columns[^1].Head);
    }

    [Fact]
    public void says_what_the_figures_rest_on()
    {
        var study = Samples.Quillmere.Study with { Meter = null };
        Assert.Contains("demand and block effects are estimates", BillWords.Basis(study, Text));
        Assert.Equal("", BillWords.Basis(study with { Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.1)) }, Text));
        var metered = study with { Meter = new MeterYear { Name = "North meter", FirstDay = new LocalDate(2026, 1, 1), IntervalMinutes = 60, Watts = [] } };
        Assert.StartsWith("The present bill is that of the meter’s own year: North meter", BillWords.Basis(metered, Text));
    }

    [Fact]
    public void reaches_the_board_where_demand_is_a_tenth_of_it()
    {
        Assert.StartsWith("Of the saving on the bill, $240 a year is demand", BillWords.ForTheBoard(Ratchet, Text));
        // 0.50 of 40.50 a month is demand.
        Assert.Equal("", BillWords.ForTheBoard(BillSavings.Of(Year(100, 50), Year(60, 49.5), Year(60, 49.5), Energy.Zero, Energy.Zero), Text));
    }

    private static IReadOnlyList<MonthlyBill> Year(double energy, double demand) =>
        [.. Enumerable.Range(1, 12).Select(month => new MonthlyBill(new YearMonth(2027, month),
        [
            new BillLine(BillLineKind.Energy, "Energy", 1000, "kWh", energy / 1000, Money.FromUnits(energy)),
            new BillLine(BillLineKind.Demand, "Demand", 5, "kW", demand / 5, Money.FromUnits(demand)),
        ]))];

    private static decimal Cents(string text) =>
        decimal.Parse(text.Replace("$", "").Replace(",", "").Replace("−", "-"), CultureInfo.InvariantCulture);
}
