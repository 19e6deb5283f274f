using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>Energy and cost by season, now and after the option asked for; the last row is the sum of the printed ones.</summary>
internal static class SeasonTable
{
    public static ReportTable Of(SummaryContext context)
    {
        var after = context.AskedFigures;
        var columns = new List<ReportColumn> { new("Season", 1.6), new("Lighting now, kWh", 1, true), new("Cost now", 1, true) };
        if (after is not null) columns.AddRange([new("Lighting after, kWh", 1, true), new("Cost after", 1, true), new("Saved", 1, true)]);
        return new ReportTable("Energy and cost by season", columns,
            [
                .. Lit(context).Select(pair => Row(context.Text, pair.Now, pair.After)),
                Total(context, after),
            ]);
    }

    /// <summary>Seasons with any energy or cost on either side.</summary>
    public static IEnumerable<(ShareFigures Now, ShareFigures? After)> Lit(SummaryContext context) =>
        context.Result.Now.Seasons
            .Select(now => (Now: now, After: context.Asked?.After.Seasons.FirstOrDefault(s => s.Name == now.Name)))
            .Where(pair => pair.Now.Lighting != Energy.Zero || pair.Now.Cost != Money.Zero || pair.After is { } a && a.Cost != Money.Zero);

    private static ReportRow Row(QuantityText text, ShareFigures now, ShareFigures? after)
    {
        List<string> cells = [now.Name, text.Number(now.Lighting.KilowattHours), text.Money(now.Cost)];
        if (after is not null)
            cells.AddRange([text.Number(after.Lighting.KilowattHours), text.Money(after.Cost),
                text.Money(Money.FromUnits(PrintedCase.Whole(now.Cost.Units) - PrintedCase.Whole(after.Cost.Units)))]);
        return new ReportRow(cells);
    }

    private static ReportRow Total(SummaryContext context, PrintedOption? after)
    {
        var (text, now) = (context.Text, context.Now);
        List<string> cells = ["Year", text.Number(now.Lighting.KilowattHours), text.Money(now.Cost)];
        if (after is not null)
            cells.AddRange([text.Number(after.After.Lighting.KilowattHours), text.Money(after.After.Cost), text.Money(after.BillSaving)]);
        return new ReportRow(cells, Strong: true);
    }
}
