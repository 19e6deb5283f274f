using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Web.Features.Tariffs;

/// <summary>Twelve bills of the whole meter, now and proposed.</summary>
/// <param name="After">Null when no option is chosen.</param>
public sealed record BillYear(IReadOnlyList<BillMonth> Months)
{
    public Money Now => Sum(m => m.Now.Total);

    public Money? After => Months.Any(m => m.After is null) ? null : Sum(m => m.After!.Total);

    /// <summary>The billing month that is mostly in a calendar month; the first when there is none.</summary>
    public BillMonth InMonth(int month) => Months.FirstOrDefault(m => m.Now.Month.Month == month) ?? Months[0];

    public static BillYear Of(StudyResult result) =>
        new([.. result.Now.Bills.Select((bill, i) => new BillMonth(bill, result.Chosen?.After.Bills[i]))]);

    private Money Sum(Func<BillMonth, Money> part) => Months.Aggregate(Money.Zero, (sum, m) => sum + part(m));
}

/// <summary>The bill of a month, now and proposed.</summary>
public sealed record BillMonth(MonthlyBill Now, MonthlyBill? After)
{
    public Money? Saved => After is { } after ? Now.Total - after.Total : null;

    /// <summary>Lines side by side, in the order of the bill; a line one side lacks is null there.</summary>
    public IReadOnlyList<BillPair> Lines
    {
        get
        {
            var (now, after) = (Keyed(Now.Lines), Keyed(After?.Lines ?? []));
            return [.. now.Keys.Concat(after.Keys).Distinct().OrderBy(k => (k.Kind, k.Charge)).Select(k => new BillPair(k.Name, now.GetValueOrDefault(k), after.GetValueOrDefault(k)))];
        }
    }

    /// <summary>A season that changes within the month can put two lines of one name on a bill: the second is the second of its charge too.</summary>
    private static Dictionary<(BillLineKind Kind, int Charge, string Name, int Nth), BillLine> Keyed(IReadOnlyList<BillLine> lines) =>
        lines.GroupBy(l => (l.Kind, l.Charge, l.Name)).SelectMany(g => g.Select((line, nth) => (Key: (g.Key.Kind, g.Key.Charge, g.Key.Name, nth), line))).ToDictionary(l => l.Key, l => l.line);
}

/// <summary>One line of the bill, now and proposed.</summary>
public sealed record BillPair(string Name, BillLine? Now, BillLine? After)
{
    /// <summary>The side there is, for its unit and its price.</summary>
    public BillLine Any => (Now ?? After)!;
}
