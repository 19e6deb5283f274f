using NodaTime;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.Billing;

/// <summary>Months by hours, weekdays and weekends apart. All tariffs invented; every expectation can be read off the windows by eye.</summary>
public class Hour_table
{
    private static readonly TariffWindow Afternoon = new(DayKind.Weekday, new(12, 0), new(18, 0));

    private static IReadOnlyList<EnergyCharge> TwoSeasons =>
    [
        Charge("Summer peak", 0.21, new(6, 1), new(9, 30), Afternoon), Charge("Summer rest", 0.12, new(6, 1), new(9, 30)), Charge("Winter", 0.10, new(10, 1), new(5, 31)),
    ];

    [Fact]
    public void shows_the_price_of_each_month_hour_and_kind_of_day()
    {
        var table = HourTable.Of(TwoSeasons)!;
        Assert.Equal([0], table.At(weekend: false, month: 6, hour: 12));
        Assert.Equal([0], table.At(weekend: false, month: 9, hour: 17));
        Assert.Equal([1], table.At(weekend: false, month: 9, hour: 18));
        Assert.Equal([1], table.At(weekend: true, month: 7, hour: 12));
        Assert.Equal([2], table.At(weekend: false, month: 10, hour: 12));
        Assert.Equal([2], table.At(weekend: true, month: 5, hour: 0));
    }

    [Fact]
    public void says_the_same_again_as_charges()
    {
        var again = HourTable.Of(HourTable.Of(TwoSeasons)!.ToCharges())!;
        AssertSame(HourTable.Of(TwoSeasons)!, again);
    }

    [Fact]
    public void a_painted_block_takes_its_hours_from_the_other_prices()
    {
        var charges = HourTable.Of(TwoSeasons)!.Paint(0, DayKind.Weekday, (6, 9), (18, 19)).ToCharges();
        Assert.Equal(new TariffWindow(DayKind.Weekday, new(12, 0), new(20, 0)), Assert.Single(charges[0].When.Windows));
        Assert.Equal((new AnnualDate(6, 1), new AnnualDate(9, 30)), (charges[0].When.Start!.Value, charges[0].When.End!.Value));
        Assert.Equal(
            [new(DayKind.Weekday, LocalTime.Midnight, new(12, 0)), new(DayKind.Weekday, new(20, 0), LocalTime.Midnight), new(DayKind.Weekend, LocalTime.Midnight, LocalTime.Midnight)],
            charges[1].When.Windows);
    }

    [Fact]
    public void months_and_hours_may_run_past_new_year_and_midnight()
    {
        var table = HourTable.Of(TwoSeasons)!.Paint(0, DayKind.All, (11, 2), (22, 5));
        Assert.Equal(4 * 8 * 2, (from weekend in new[] { false, true } from month in new[] { 11, 12, 1, 2 } from hour in new[] { 22, 23, 0, 1, 2, 3, 4, 5 } where table.At(weekend, month, hour).SequenceEqual([0]) select hour).Count());
        Assert.Equal([2], table.At(false, 11, 21));
        Assert.Equal([2], table.At(false, 3, 22));
        var night = table.ToCharges()[1];
        Assert.Equal((new AnnualDate(11, 1), new AnnualDate(2, 29)), (night.When.Start!.Value, night.When.End!.Value));
    }

    [Fact]
    public void one_price_with_other_hours_in_other_months_becomes_a_charge_for_each()
    {
        var charges = HourTable.Of(TwoSeasons)!.Paint(0, DayKind.Weekday, (7, 7), (8, 11)).ToCharges().Where(c => c.Name == "Summer peak").ToList();
        Assert.Equal([(6, 6), (7, 7), (8, 9)], charges.Select(c => (c.When.Start!.Value.Month, c.When.End!.Value.Month)));
        Assert.Equal([0], EnergyPeriod.Of(charges).Select(p => p.Charges[0]));
    }

    [Fact]
    public void a_price_painted_over_leaves_the_tariff()
    {
        var charges = HourTable.Of(TwoSeasons)!.Paint(1, DayKind.All, (1, 12), (0, 23)).ToCharges();
        var all = Assert.Single(charges);
        Assert.Equal(("Summer rest", null, 0), (all.Name, all.When.Start, all.When.Windows.Count));
    }

    [Fact]
    public void gaps_and_overlaps_are_shown_as_they_are()
    {
        var table = HourTable.Of([Charge("Day", 0.2, null, null, new TariffWindow(DayKind.All, new(8, 0), new(20, 0))), Charge("Evening", 0.3, null, null, new TariffWindow(DayKind.All, new(18, 0), new(22, 0)))])!;
        Assert.Empty(table.At(false, 1, 7));
        Assert.Equal([0, 1], table.At(true, 12, 18));
        Assert.Equal([1], table.At(true, 12, 20));
        AssertSame(table, HourTable.Of(table.ToCharges())!);
    }

    [Fact]
    public void changes_within_an_hour_or_a_month_have_no_table()
    {
        Assert.Null(HourTable.Of([Charge("Half past", 0.2, null, null, new TariffWindow(DayKind.All, new(8, 30), new(20, 0)))]));
        Assert.Null(HourTable.Of([Charge("From the 15th", 0.2, new(6, 15), new(9, 30))]));
        Assert.Null(HourTable.Of([Charge("To the 29th", 0.2, new(6, 1), new(9, 29))]));
        Assert.NotNull(HourTable.Of([Charge("To the end of February", 0.2, new(6, 1), new(2, 28))]));
    }

    [Fact]
    public void thousands_of_random_paintings_read_back_as_painted()
    {
        var random = new Random(3);
        var table = HourTable.Of(TwoSeasons)!;
        for (var i = 0; i < 2000; i++)
        {
            table = table.Paint(random.Next(3), (DayKind)random.Next(3), (random.Next(12) + 1, random.Next(12) + 1), (random.Next(24), random.Next(24)));
            var read = HourTable.Of(table.ToCharges())!;
            // A price painted over is gone from the charges, so cells are compared by name.
            AssertSame(table, read);
        }
    }

    private static void AssertSame(HourTable one, HourTable other) => Assert.Equal(Names(one), Names(other));

    private static IEnumerable<string> Names(HourTable table) =>
        from weekend in new[] { false, true }
        from month in Enumerable.Range(1, 12)
        from hour in Enumerable.Range(0, 24)
        select string.Join('+', table.At(weekend, month, hour).Select(p => table.Periods[p].Name));

    private static EnergyCharge Charge(string name, double price, AnnualDate? start, AnnualDate? end, params TariffWindow[] windows) => new()
    {
        Name = name,
        When = new() { Start = start, End = end, Windows = windows },
        Blocks = [new(null, EnergyPrice.FromPerKilowattHour(price))],
    };
}
