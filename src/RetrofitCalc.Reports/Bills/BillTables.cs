using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>Tables of two years of bills.</summary>
internal static class BillTables
{
    public static ReportTable Charges(BillSaving bill, QuantityText text)
    {
        var delayed = IsDelayed(bill);
        ReportRow Row(string name, Money now, Money after, Money saved, Money first, bool strong = false) =>
            new([name, text.Cents(now), text.Cents(after), text.Cents(saved), .. delayed ? [text.Cents(first)] : Array.Empty<string>()], strong);
        var demand = bill.Charges.Where(BillSavings.IsDemand).ToList();
        return new ReportTable("Each charge over the year", Columns("Charge", delayed),
            [
                .. bill.Charges.Select(charge => Row(charge.Name, charge.Now, charge.After, charge.Saving, charge.Now - charge.FirstYear)),
                Row("Bill of the year", Sum(bill.Charges, c => c.Now), Sum(bill.Charges, c => c.After), bill.Total, bill.FirstYearTotal, strong: true),
                .. demand.Count > 1 || (demand.Count == 1 && delayed)
                    ? [Row("of it demand", Sum(demand, c => c.Now), Sum(demand, c => c.After), bill.Demand, bill.FirstYearDemand)] : Array.Empty<ReportRow>(),
            ]);
    }

    public static ReportTable Months(LightingCase now, OptionResult option, QuantityText text)
    {
        var delayed = IsDelayed(option.Bill);
        ReportRow Row(string name, Money before, Money after, Money first, bool strong = false) =>
            new([name, text.Cents(before), text.Cents(after), text.Cents(before - after), .. delayed ? [text.Cents(before - first)] : Array.Empty<string>()], strong);
        return new ReportTable("Each month’s bill", Columns("Month", delayed),
            [
                .. now.Bills.Select((bill, i) => Row(text.Month(bill.Month.OnDayOfMonth(1)), bill.Total, option.After.Bills[i].Total, option.Bill.FirstYear[i].Total)),
                Row("Year", Total(now.Bills), Total(option.After.Bills), Total(option.Bill.FirstYear), strong: true),
            ]);
    }

    public static ReportTable? Peaks(StudyResult result, OptionResult option, QuantityText text)
    {
        var peaks = BilledPeak.Of(result, option, text);
        return peaks.Count == 0 ? null : new ReportTable("The lights’ own part of each billed peak, their plant included",
            [.. BilledPeak.Heads.Select((head, i) => new ReportColumn(head, i == 0 ? 2 : 1, i > 0))],
            [.. peaks.Select(peak => new ReportRow([peak.Name, .. peak.Values.Select(power => power is { } known ? text.Number(known.Kilowatts, 1) : QuantityText.DoesNotApply)]))]);
    }

    /// <summary>A cent apart, not a rounding of sums.</summary>
    private static bool IsDelayed(BillSaving bill) => Math.Abs((bill.Total - bill.FirstYearTotal).Units) > 0.005;

    private static IReadOnlyList<ReportColumn> Columns(string first, bool delayed) =>
        [new(first, 2), new("Now", 1, true), new("After", 1, true), new(delayed ? "Saved, steady year" : "Saved", 1, true), .. delayed ? [new("Saved, first year", 1, true)] : Array.Empty<ReportColumn>()];

    private static Money Sum(IEnumerable<ChargeSaving> charges, Func<ChargeSaving, Money> side) => charges.Aggregate(Money.Zero, (sum, charge) => sum + side(charge));

    private static Money Total(IReadOnlyList<MonthlyBill> bills) => bills.Aggregate(Money.Zero, (sum, bill) => sum + bill.Total);
}
