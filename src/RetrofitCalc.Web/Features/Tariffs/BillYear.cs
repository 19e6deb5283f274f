using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Web.Features.Tariffs;

/// <summary>Twelve bills of the whole meter, now and proposed.</summary>
/// <param name="After">Null when no option is chosen.</param>
public sealed record BillYear(IReadOnlyList<BillMonth> Months)
{
    public Money Now => Sum(m => m.Now.Total);

    public Money? After => Months.Any(m => m.After is null) ? null : Sum(m => m.After!.Total);

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
            var after = After?.Lines ?? [];
            var keys = Now.Lines.Concat(after).Select(l => (l.Kind, l.Name)).Distinct();
            return [.. keys.Select(k => new BillPair(k.Name, Now.Lines.FirstOrDefault(l => (l.Kind, l.Name) == k), after.FirstOrDefault(l => (l.Kind, l.Name) == k)))];
        }
    }
}

/// <summary>One line of the bill, now and proposed.</summary>
public sealed record BillPair(string Name, BillLine? Now, BillLine? After)
{
    public string Unit => (Now ?? After)!.Unit;

    public double UnitPrice => (Now ?? After)!.UnitPrice;
}
