namespace RetrofitCalc.Reports;

/// <summary>Where the money goes, and how it comes back.</summary>
internal static class MoneyTables
{
    public static ReportTable? FirstCost(SummaryContext context)
    {
        if (context.AskedFigures is not { } o) return null;
        var (text, costs) = (context.Text, o.Result.Option.Costs);
        (string Name, Engine.Quantities.Money Amount)[] parts =
        [
            ("Tubes, luminaires, lamps, ballasts", o.Parts),
            ("Licensed electrician", o.Labour),
            ("Recycling", o.Disposal),
            ("Permits and other fixed sums", o.FixedSum),
            ($"Contingency, {text.Percent(costs.Contingency)}", o.Contingency),
            ("Incentive, applied for", -o.Incentive),
        ];
        return new ReportTable("Where the money goes", [new("Part", 2.4), new(context.Text.Currency, 1, true)],
            [
                .. parts.Where(part => part.Amount != default).Select(part => new ReportRow([part.Name, text.Money(part.Amount)])),
                new ReportRow(["First cost", text.Money(o.FirstCost)], Strong: true),
            ]);
    }

    public static ReportTable? CashFlow(SummaryContext context)
    {
        if (context.Asked is not { } option) return null;
        var text = context.Text;
        return new ReportTable("Cash flow against keeping, end of each year",
            [new("Year", 0.5), new("First cost", 1, true), new("Energy saved", 1, true), new("Replacements saved", 1.2, true), new("Sum so far", 1, true), new("Discounted sum", 1, true)],
            [.. option.CashFlow.Select(y => new ReportRow([
                text.Number(y.Year), text.Money(y.FirstCost), text.Money(y.EnergySaving), text.Money(y.MaintenanceSaving),
                text.Money(y.Cumulative), text.Money(y.CumulativeDiscounted)]))]);
    }
}
