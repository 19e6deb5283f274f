using NodaTime;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>One line of a month's bill: now, in the first year after the change, and in a steady year; null where that bill lacks it.</summary>
internal sealed record BillLineTriple(YearMonth Month, BillLine? Now, BillLine? FirstYear, BillLine? After)
{
    /// <summary>What the three have in common.</summary>
    public BillLine Any => (Now ?? After ?? FirstYear)!;

    /// <summary>Every line of the year, month by month in the order of the bill.</summary>
    public static IReadOnlyList<BillLineTriple> Of(LightingCase now, OptionResult option) =>
        [.. now.Bills.SelectMany((bill, i) => OfMonth(bill, option.Bill.FirstYear[i], option.After.Bills[i]))];

    private static IEnumerable<BillLineTriple> OfMonth(MonthlyBill now, MonthlyBill first, MonthlyBill after)
    {
        BillLine? Find(MonthlyBill bill, (BillLineKind, int, string) key) => bill.Lines.FirstOrDefault(line => Key(line) == key);
        return now.Lines.Concat(after.Lines).Concat(first.Lines).Select(Key).Distinct().OrderBy(key => key.Kind)
            .Select(key => new BillLineTriple(now.Month, Find(now, key), Find(first, key), Find(after, key)));
    }

    private static (BillLineKind Kind, int Charge, string Name) Key(BillLine line) => (line.Kind, line.Charge, line.Name);
}
