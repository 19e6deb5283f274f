using CsCheck;
using NodaTime;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.Billing;

/// <summary>
/// Thousands of generated tariffs and metered loads, billed by the engine and by a loop over every minute (<see cref="SlowBill"/>):
/// every line must agree in name, quantity, unit, price and amount. Most "years" here are twelve billing months of two to four days, so that clock
/// changes, seasons that begin within a month, holidays and ratchets meet often; some are whole years. CsCheck prints the seed of a
/// failure.
/// </summary>
public class Any_tariff_billed_minute_by_minute
{
    private static readonly Gen<string> Zones = Gen.Int[0, 3].Select(i => new[] { "America/New_York", "Europe/Berlin", "Asia/Kolkata", "America/Phoenix" }[i]);

    internal static readonly Gen<LocalDate[]> ShortMonths = Gen.Select(Gen.Int[0, 1460], Gen.Int[2, 4].Array[12], (from, lengths) =>
        lengths.Aggregate(new[] { new LocalDate(2026, 1, 1).PlusDays(from) }, (dates, length) => [.. dates, dates[^1].PlusDays(length)]));

    private static readonly Gen<LocalDate[]> WholeMonths = Gen.Select(Gen.Int[2026, 2028], Gen.Int[1, 28], (year, day) =>
        Enumerable.Range(0, 13).Select(month => new LocalDate(year, 1, day).PlusMonths(month)).ToArray());

    [Fact]
    public void agrees_line_by_line_on_thousands_of_short_months() =>
        Gen.Select(AnyTariff.Generated, ShortMonths, Zones, Gen.Int[0, 2], Gen.Int[60, 100], Gen.UInt, Check).Sample(_ => { }, iter: 400);

    [Fact]
    public void agrees_line_by_line_on_whole_years() =>
        Gen.Select(AnyTariff.Generated, WholeMonths, Zones, Gen.Int[0, 2], Gen.Int[60, 100], Gen.UInt, Check).Sample(_ => { }, iter: 6);

    private static int Check(Tariff tariff, LocalDate[] dates, string zone, int interval, int powerFactor, uint seed)
    {
        var study = MeteredSite.Of(tariff with { Reading = new() { Dates = dates } }, zone, powerFactor / 100.0, MeteredSite.Meter(dates, zone, new[] { 15, 30, 60 }[interval], seed));
        var fast = MeteredSite.Bills(study);
        var slow = Slow(study);
        for (var month = 0; month < fast.Count; month++)
            // An amount half-way between two cents may go either way by the noise of the arithmetic, and taxes with it.
            if (slow.Lines(month) is var lines && !lines.Any(line => IsHalfWay(line.Quantity * line.UnitPrice, tariff.AmountDecimals)))
                Same(lines, fast[month].Lines);
        return fast.Count;
    }

    private static void Same(IReadOnlyList<SlowLine> slow, IReadOnlyList<BillLine> fast)
    {
        Assert.Equal(slow.Select(line => (line.Name, line.Unit)), fast.Select(line => (line.Name, line.Unit)));
        foreach (var (expected, line) in slow.Zip(fast))
        {
            Assert.Equal(expected.Quantity, line.Quantity, 1e-9 * Math.Max(1, Math.Abs(expected.Quantity)));
            Assert.Equal(expected.UnitPrice, line.UnitPrice, 1e-9);
            Assert.Equal(expected.Amount, line.Amount.Units, 1e-6);
        }
    }

    private static bool IsHalfWay(double amount, int decimals)
    {
        var steps = Math.Abs(amount) * Math.Pow(10, decimals);
        return Math.Abs(steps - Math.Floor(steps) - 0.5) < 1e-6;
    }

    private static SlowBill Slow(Study study)
    {
        var (year, meter) = (SiteYear.Of(study), study.Meter!);
        var start = year.Zone.AtStartOfDay(meter.FirstDay).ToInstant();
        return new(study.Tariff, study.Site.PowerFactor!.Value, [.. year.Months.Select(month => SlowMonth.Of(study.Tariff, month, year.Zone,
            at => meter.Watts[(int)((at - start).TotalMinutes / meter.IntervalMinutes)]!.Value / 1000))]);
    }
}
