using System.Diagnostics;
using System.Globalization;
using NodaTime;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Benchmarks.SideBySide;

/// <summary>
/// A year of 15-minute readings billed by the engine, by a NumPy script and by a LibreOffice sheet, in one run on one machine: only
/// the ratios are meant. All three must come to the same total.
/// </summary>
internal static class BillsSideBySide
{
    private const int Runs = 300;

    public static void Print()
    {
        var meter = SyntheticStudy.Meter;
        var tariff = SyntheticStudy.FullTariff with { Demand = [.. SyntheticStudy.FullTariff.Demand.Select(charge => charge with { Ratchet = null })] };
        var year = new SiteYear("America/New_York", meter.FirstDay.Year);
        var calendar = new TariffCalendar(tariff, year);
        var dark = new SiteTimeline([], [], year);
        var load = new MeterLoad(meter, year);
        var bill = CaseOf(calendar, meter, year);
        var engineTotal = Total(Bills(calendar, dark, load));
        var reading = Best(() => ReadOnce(bill));
        Console.WriteLine($"reading 35,040 values once through the period table {reading * 1e6,10:0} µs    1.0");
        Tell("engine, a year of bills", Best(() => Bills(calendar, dark, load)), reading, engineTotal);
        var folder = Directory.CreateTempSubdirectory("retrofit-side-by-side-").FullName;
        try
        {
            var (seconds, total) = Script(bill, folder);
            Tell("NumPy script", seconds, reading, total);
            (seconds, total) = BillSheet.Measure(bill, folder);
            Tell("LibreOffice sheet", seconds, reading, total);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Bills of the meter alone, the tariff already laid over the year.</summary>
    private static IReadOnlyList<MonthlyBill> Bills(TariffCalendar calendar, SiteTimeline dark, MeterLoad meter)
    {
        var cells = calendar.MeteredByCell(meter);
        double[] nothing = [.. dark.States.Select(_ => 0.0)];
        var months = calendar.Year.Months.Select((month, number) => new MeteredMonth(month.Name,
            [.. calendar.Tariff.Energy.Select((_, charge) => EnergyOf(calendar, number, charge, cells))],
            [.. calendar.Tariff.Demand.Select((charge, index) => PeakOf(new(charge.WindowMinutes, calendar.DemandSpans[index][number], dark, meter), nothing))]));
        return BillCalculation.Year(calendar.Tariff, [.. months], BillTerms.Steady);
    }

    private static Energy? EnergyOf(TariffCalendar calendar, int month, int charge, double[] cells)
    {
        int[] under = [.. calendar.CellsOf[month].Where(cell => calendar.Cells[cell].Charge == charge)];
        return under.Length > 0 ? Energy.FromKilowattHours(under.Sum(cell => cells[cell])) : null;
    }

    private static Power? PeakOf(DemandWindows windows, double[] nothing) =>
        windows.InForce ? Power.FromKilowatts(windows.Highest(nothing, nothing).Total) : null;

    private static double ReadOnce(BillCase bill)
    {
        var sums = new double[12 * bill.EnergyPrices.Count];
        foreach (var (kilowatts, cell) in bill.Plain)
            sums[cell] += kilowatts;
        return sums[0];
    }

    private static BillCase CaseOf(TariffCalendar calendar, MeterYear meter, SiteYear year)
    {
        var intervals = meter.Watts.Select((watts, index) =>
        {
            var at = year.Start + index * 900L;
            var cell = calendar.Cells[calendar.CellAt(at)];
            return new BillInterval(watts!.Value / 1000, cell.Month, cell.Charge, [.. calendar.DemandSpans.Select(spans => spans[cell.Month].Any(span => span.From <= at && at < span.To))]);
        });
        return new([.. intervals],
            [.. calendar.Tariff.Energy.Select(charge => charge.Blocks[0].Price.PerKilowattHour)],
            [.. calendar.Tariff.Demand.Select(charge => charge.Price.PerKilowatt)], calendar.Tariff.Fixed[0].Amount.Units);
    }

    private static (double Seconds, string Total) Script(BillCase bill, string folder)
    {
        static string row(IEnumerable<double> cells) => string.Join(",", cells.Select(cell => cell.ToString("R", CultureInfo.InvariantCulture)));
        File.WriteAllLines(Path.Combine(folder, "values.csv"), bill.Intervals.Select(interval =>
            row([interval.Kilowatts, interval.Month, interval.EnergyCharge, .. interval.Counts.Select(counts => counts ? 1.0 : 0)])));
        File.WriteAllLines(Path.Combine(folder, "prices.csv"), [row(bill.EnergyPrices), row(bill.DemandPrices), row([bill.Fixed])]);
        var start = new ProcessStartInfo("/usr/bin/python3") { RedirectStandardOutput = true };
        foreach (var argument in (string[])[Path.Combine(AppContext.BaseDirectory, "SideBySide", "bill.py"), folder, Runs.ToString(CultureInfo.InvariantCulture)])
            start.ArgumentList.Add(argument);
        using var process = Process.Start(start)!;
        var printed = process.StandardOutput.ReadToEnd().Split(' ', StringSplitOptions.TrimEntries);
        return (double.Parse(printed[0], CultureInfo.InvariantCulture), printed[1]);
    }

    private static double Best(Action work)
    {
        // The compiler improves hot code in the background: give it the time to.
        for (var warming = Stopwatch.StartNew(); warming.ElapsedMilliseconds < 500;)
            work();
        var best = double.PositiveInfinity;
        for (var run = 0; run < Runs; run++)
        {
            var clock = Stopwatch.StartNew();
            work();
            best = Math.Min(best, clock.Elapsed.TotalSeconds);
        }
        return best;
    }

    private static string Total(IReadOnlyList<MonthlyBill> bills) => bills.Sum(month => month.Total.Units).ToString("0.00", CultureInfo.InvariantCulture);

    private static void Tell(string what, double seconds, double reading, string total) =>
        Console.WriteLine($"{what,-51} {seconds * 1e6,10:0} µs {seconds / reading,7:0.0}    total {total}");
}
