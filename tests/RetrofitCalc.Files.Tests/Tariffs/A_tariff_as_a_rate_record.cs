using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using NodaTime;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Tariffs;

namespace RetrofitCalc.Files.Tests.Tariffs;

public class A_tariff_as_a_rate_record
{
    private static readonly Gen<double> Cents = Gen.Int[1, 5000].Select(n => n / 10000.0);

    private static readonly Gen<HourCells> Cells = Gen.Select(Gen.Int[0, 2], Gen.Select(Gen.Int[1, 12], Gen.Int[1, 12]), Gen.Select(Gen.Int[0, 23], Gen.Int[0, 23]), Gen.Int[0, 2]).Array[0, 5]
        .Select(strokes => strokes.Aggregate(Everywhere(), (cells, s) => cells.Paint(s.Item4, (DayKind)s.Item1, s.Item2, s.Item3)));

    private static readonly Gen<EnergyCharge> Prices = Gen.Select(Gen.Char['a', 'z'].Select(c => $"Price {c}"), Cents, Cents, Gen.Int[0, 2], Gen.Bool, (name, first, rest, unit, blocks) => new EnergyCharge
    {
        Name = name, BlockUnit = blocks ? (BlockUnit)unit : BlockUnit.PerMonth,
        Blocks = blocks ? [new(Energy.FromKilowattHours(100), Price(first)), new(null, Price(rest))] : [new(null, Price(first))],
    });

    private static readonly Gen<IReadOnlyList<DemandCharge>> Demands = Gen.Select(Cents, Cents, Gen.Int[0, 3], Gen.Int[1, 9], Gen.Bool, (one, two, kind, share, blocks) =>
    {
        var ratchet = share > 5 ? null : new Ratchet(share / 10.0);
        DemandCharge all = new() { Name = "All hours", Price = PerKilowatt(one * 100), Ratchet = ratchet, Blocks = blocks ? [new(Power.FromKilowatts(30), PerKilowatt(two * 100))] : [] };
        TariffHours summer = new() { Start = new(6, 1), End = new(9, 30) }, winter = new() { Start = new(10, 1), End = new(5, 31) };
        DemandCharge onPeak = new() { Name = "On-peak", Price = PerKilowatt(two * 100), When = summer with { Windows = [new(DayKind.Weekday, new(14, 0), new(18, 0))] } };
        var seasons = ratchet is null ? null : ratchet with { AcrossCharges = true };
        return (IReadOnlyList<DemandCharge>)(kind switch
        {
            0 => [],
            1 => [all],
            2 => [all, onPeak],
            _ => [all with { When = summer, Ratchet = seasons }, all with { Name = "Winter", When = winter, Price = PerKilowatt(two * 50), Ratchet = seasons }],
        });
    });

    private static readonly Gen<Tariff> Tariffs = Gen.Select(Cells, Prices.Array[3], Demands, Gen.Select(Cents, Cents, Gen.Bool, Gen.Bool), Gen.Int[0, 2], (cells, prices, demand, other, clause) => new Tariff
    {
        Name = "Generated",
        Energy = HourTable.Of([.. prices.Select((price, i) => price with { Name = $"{price.Name} {i}", BlockUnit = demand.Count == 0 && price.BlockUnit == BlockUnit.PerKilowatt ? BlockUnit.PerMonth : price.BlockUnit })], cells).ToCharges(),
        Demand = demand,
        Fixed = [new("Service", Money.FromUnits(other.Item1), other.Item3 ? ChargedPer.Day : ChargedPer.Month)],
        MinimumBill = other.Item4 ? Money.FromUnits(other.Item2 * 1000) : null,
        Adjustments = [new() { Name = "Fuel", Prices = [.. Enumerable.Range(1, 12).Select(month => Price(other.Item2 * (month % 3 - 1)))] }],
        PowerFactor = demand.Count == 0 ? null : clause switch { 0 => null, 1 => new BilledInKilovoltAmperes(), _ => new ReactiveAboveShare(0, PerKilowatt(other.Item1)) },
        ValidFrom = new(2027, 1, 1),
    });

    // What fits comes back: nothing is said to be lost, and a year's bills are the same to the cent.
    [Fact]
    public void comes_back_with_the_same_bills() => Tariffs.Sample(tariff =>
    {
        var written = RateRecordFile.Write(tariff).Value!;
        Assert.Empty(written.NotHeld);
        var back = RateRecordFile.Read(written.Json).Value![0].Read().Tariff;
        Assert.Empty(back.Problems);
        Assert.Equal(tariff.ValidFrom, back.Value!.ValidFrom);
        Assert.Equal(Totals(tariff), Totals(back.Value));
    }, iter: 200);

    [Fact]
    public void says_what_the_record_cannot_hold()
    {
        var tariff = Tariff.Flat(Price(0.1), "EUR") with
        {
            Taxes = [new("Sales tax", 0.05)],
            Holidays = [new FixedHoliday(new(7, 4))],
            AmountDecimals = 3,
            Reading = new() { DayOfMonth = 12 },
            LoadFactorCredit = new("Credit", 365, PerKilowatt(0.01)),
            PowerFactor = new TargetPowerFactor(0.9),
            Fixed = [new("Service", Money.FromUnits(5)), new("Daily", Money.FromUnits(1), ChargedPer.Day)],
            Adjustments = [new() { Name = "Evening rider", Prices = [Price(0.01)], When = new() { Windows = [new(DayKind.All, new(17, 0), new(20, 0))] } }],
            Demand =
            [
                new() { Name = "Demand", Price = PerKilowatt(5), Minimum = Power.FromKilowatts(50), Rounding = new(Power.FromKilowatts(1)), Ratchet = new(0.5, 6) },
                new() { Name = "Second", Price = PerKilowatt(1) },
            ],
        };
        var lost = string.Join('\n', RateRecordFile.Write(tariff).Value!.NotHeld);
        foreach (var words in new[] { "EUR", "Sales tax", "holidays", "3 decimals", "meter is read", "\"Credit\"", "poor power factor", "\"Daily\"", "\"Evening rider\"", "least demand", "rounded", "looks back", "\"Second\"" })
            Assert.Contains(words, lost);
    }

    [Fact]
    public void is_refused_where_no_record_can_hold_its_hours()
    {
        EnergyCharge Charge(TariffHours when) => new() { Name = "Energy", Blocks = [new(null, Price(0.1))], When = when };
        string Problem(params EnergyCharge[] charges) => RateRecordFile.Write(new() { Name = "T", Energy = charges }).Problems[0].Message;
        Assert.Contains("14:30", Problem(Charge(new() { Windows = [new(DayKind.All, new(14, 30), new(18, 0))] }), Charge(new())));
        Assert.Contains("15 June", Problem(Charge(new() { Start = new(6, 15), End = new(6, 14) })));
        Assert.Contains("no energy price", Problem(Charge(new() { Windows = [new(DayKind.All, new(14, 0), new(18, 0))] })));
        Assert.Contains("more than one", Problem(Charge(new()), Charge(new()) with { Name = "Twice" }));
    }

    // Weekdays 14–18 h from June to September: month 6 is the seventh row, hour 14 the fifteenth number.
    [Fact]
    public void holds_periods_counted_from_zero_in_rows_of_24_hours()
    {
        var record = JsonNode.Parse(RateRecordFile.Write(SampleRecord.Read(SampleRecord.TimeOfUse()).Tariff.Value!).Value!.Json)!["items"]![0]!;
        var weekday = record["energyweekdayschedule"]!;
        Assert.Equal([12, 24], new[] { weekday.AsArray().Count, weekday[6]!.AsArray().Count });
        Assert.Equal([0, 1, 1, 0], new[] { 13, 14, 17, 18 }.Select(hour => weekday[6]![hour]!.GetValue<int>()));
        Assert.Equal(0.30, record["energyratestructure"]![1]![0]!["rate"]!.GetValue<double>());
        Assert.Equal("Period 1: Energy, period 1; Period 2: Energy, period 2", record["energycomments"]!.GetValue<string>());
    }

    /// <summary>40 kW in January, 2 kW more each month, all hours, at a power factor of 0.9.</summary>
    private static IEnumerable<double> Totals(Tariff tariff)
    {
        var calendar = new TariffCalendar(tariff, new SiteYear("UTC", 2027));
        var months = Enumerable.Range(0, 12).Select(month =>
        {
            var load = Power.FromKilowatts(40 + 2 * month);
            double[] hours = [.. Enumerable.Range(0, tariff.Energy.Count).Select(charge => calendar.CellsOf[month].Where(cell => calendar.Cells[cell].Charge == charge).Sum(cell => calendar.CellHours[cell]))];
            return new MeteredMonth(
                new(2027, month + 1),
                [.. hours.Select(h => h > 0 ? Energy.FromKilowattHours(Math.Round(h * load.Kilowatts, 6)) : (Energy?)null)],
                [.. Enumerable.Range(0, tariff.Demand.Count).Select(charge => calendar.DemandSpans[charge][month].Count > 0 ? load : (Power?)null)])
            {
                Adjustments = [.. tariff.Adjustments.Select(_ => (Energy?)Energy.FromKilowattHours(hours.Sum() * load.Kilowatts))],
            };
        });
        return BillCalculation.Year(tariff, [.. months], new(1, 0.9)).Select(bill => Math.Round(bill.Total.Units, 2));
    }

    private static EnergyPrice Price(double price) => EnergyPrice.FromPerKilowattHour(price);

    private static DemandPrice PerKilowatt(double price) => DemandPrice.FromPerKilowatt(price);

    private static HourCells Everywhere()
    {
        IReadOnlyList<IReadOnlyList<int>> rows = [.. Enumerable.Repeat<IReadOnlyList<int>>(new int[24], 12)];
        return HourCells.FromRows(rows, rows);
    }
}
