using CsCheck;
using NodaTime;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Billing;

/// <summary>The weekday and weekend rows of 12 months by 24 hours in which rate records hold periods.</summary>
public class Rows_of_hours
{
    private static readonly Gen<HourCells> Cells =
        Gen.Select(Gen.Int[0, 2], Gen.Select(Gen.Int[1, 12], Gen.Int[1, 12]), Gen.Select(Gen.Int[0, 23], Gen.Int[0, 23]), Gen.Int[0, 3]).Array[0, 8]
            .Select(strokes => strokes.Aggregate(Everywhere(0), (cells, s) => cells.Paint(s.Item4, (DayKind)s.Item1, s.Item2, s.Item3)));

    private static readonly EnergyCharge[] EnergyPeriods = [.. Enumerable.Range(0, 4).Select(i => new EnergyCharge
    {
        Name = $"Period {i}", Blocks = [new(Energy.FromKilowattHours(500), SampleTariff.Price(0.1 + i)), new(null, SampleTariff.Price(0.2 + i))],
    })];

    [Fact]
    public void come_back_the_same_from_energy_charges() => Cells.Sample(cells =>
    {
        var table = HourTable.Of(EnergyPeriods, cells);
        var back = HourTable.Of(table.ToCharges())!;
        foreach (var weekend in new[] { false, true })
            Assert.Equal(
                table.Rows(weekend)!.SelectMany(row => row).Select(place => table.Periods[place].Name),
                back.Rows(weekend)!.SelectMany(row => row).Select(place => back.Periods[place].Name));
    }, iter: 500);

    [Fact]
    public void come_back_the_same_from_demand_charges() => Cells.Sample(cells =>
    {
        DemandCharge[] charges = [.. from place in Enumerable.Range(0, 4) from when in cells.When(place) select Demand($"{place}", when)];
        var back = HourCells.Of(charges)!.Moved(i => int.Parse(charges[i].Name));
        foreach (var weekend in new[] { false, true })
            Assert.Equal(cells.Rows(weekend)!.SelectMany(row => row), back.Rows(weekend)!.SelectMany(row => row));
    }, iter: 500);

    // A year's hours under each charge by the tariff's calendar, against a look into the rows for every hour of 2028, a leap year; no clock changes.
    [Fact]
    public void give_each_charge_the_hours_that_a_look_into_the_rows_gives_its_period() => Cells.Sample(cells =>
    {
        var table = HourTable.Of(EnergyPeriods, cells);
        var tariff = new Tariff { Name = "T", Energy = table.ToCharges(), Holidays = [new FixedHoliday(new(7, 4))] };
        var calendar = new TariffCalendar(tariff, new SiteYear("UTC", 2028));
        var billed = from cell in calendar.Cells.Zip(calendar.CellHours)
                     group cell.Second by (Month: cell.First.Month + 1, tariff.Energy[cell.First.Charge].Name) into cell
                     select (cell.Key.Month, cell.Key.Name, cell.Sum());
        var looked = from day in calendar.Year.Days
                     from hour in Enumerable.Range(0, 24)
                     group hour by (day.Month, EnergyPeriods[table.At(TariffDay.IsWeekend(tariff, day), day.Month, hour)[0]].Name) into cell
                     select (cell.Key.Month, cell.Key.Name, (double)cell.Count());
        Assert.Equal(looked.Order(), billed.Order());
    }, iter: 30);

    // A demand charge without windows counts load beside the others; an energy charge without windows gives way.
    [Fact]
    public void show_a_demand_charge_for_all_hours_beside_the_others()
    {
        var onPeak = new TariffHours { Windows = [new(DayKind.Weekday, new(14, 0), new(18, 0))] };
        var cells = HourCells.Of([Demand("All hours", new()), Demand("On-peak", onPeak)])!;
        Assert.Equal([0, 1], cells.At(weekend: false, month: 7, hour: 14));
        Assert.Equal([0], cells.At(weekend: false, month: 7, hour: 18));
        Assert.Null(cells.Rows(weekend: false));
        Assert.Equal(1, HourCells.Of([new TariffHours(), onPeak])!.Rows(weekend: false)![6][14]);
    }

    [Fact]
    public void hold_a_gap_as_nothing()
    {
        var cells = HourCells.Of([new TariffHours { Windows = [new(DayKind.Weekend, new(5, 0), new(6, 0))] }])!;
        Assert.Equal((HourCells.Nothing, 0, HourCells.Nothing), (cells.Rows(true)![2][4], cells.Rows(true)![2][5], cells.Rows(false)![2][5]));
    }

    [Fact]
    public void say_why_charges_do_not_fit()
    {
        Assert.Contains("09:30 to 12:00", Reason(new() { Windows = [new(DayKind.All, new(9, 30), new(12, 0))] }));
        Assert.Contains("18:00 to 09:00", Reason(new() { Windows = [new(DayKind.All, new(18, 0), new(9, 0))] }));
        Assert.Contains("begins on 15 June", Reason(new() { Start = new(6, 15), End = new(9, 30) }));
        Assert.Contains("ends on 14 September", Reason(new() { Start = new(6, 1), End = new(9, 14) }));
        Assert.Contains("only one", Reason(new() { Start = new(6, 1) }));
        Assert.Empty(HourCells.Misfits("February", new() { Start = new(2, 1), End = new(2, 28) }));
    }

    // Each block is counted from zero in each charge, so two charges of one name in one month are two lines of the bill.
    [Fact]
    public void keep_charges_with_blocks_apart_when_they_hold_in_one_month()
    {
        var morning = EnergyPeriods[0] with { When = new() { Windows = [new(DayKind.All, new(0, 0), new(12, 0))] } };
        Assert.Equal(2, HourTable.Of([morning, morning with { When = new() }])!.Periods.Count);
        var summer = EnergyPeriods[0] with { When = new() { Start = new(6, 1), End = new(9, 30) } };
        Assert.Single(HourTable.Of([summer, summer with { When = new() { Start = new(10, 1), End = new(5, 31) } }])!.Periods);
    }

    [Fact]
    public void refuse_a_month_an_hour_a_price_or_a_shape_that_is_not_there()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Everywhere(0).At(false, 13, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Everywhere(0).At(false, 12, 24));
        Assert.Throws<ArgumentOutOfRangeException>(() => HourTable.Of([EnergyPeriods[0]], Everywhere(1)));
        Assert.Throws<ArgumentException>(() => HourCells.FromRows([[0]], [[0]]));
    }

    private static HourCells Everywhere(int place)
    {
        IReadOnlyList<IReadOnlyList<int>> rows = [.. Enumerable.Range(0, 12).Select(_ => (IReadOnlyList<int>)[.. Enumerable.Repeat(place, 24)])];
        return HourCells.FromRows(rows, rows);
    }

    private static DemandCharge Demand(string name, TariffHours when) => new() { Name = name, When = when, Price = DemandPrice.FromPerKilowatt(5) };

    private static string Reason(TariffHours when) => Assert.Single(HourTable.Misfits([EnergyPeriods[0] with { When = when }]));
}
