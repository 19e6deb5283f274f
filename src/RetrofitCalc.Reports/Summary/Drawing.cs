using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>Makes the drawings: each titled with what it shows.</summary>
internal static class Drawing
{
    private const int MostRows = 6;

    public static SummaryDrawings Of(SummaryContext context) => new(CashFlow(context), Seasons(context), Watts(context), Calendar(context));

    private static CashFlowDrawing? CashFlow(SummaryContext context)
    {
        if (context.Asked is not { } option) return null;
        var text = context.Text;
        var sums = option.CashFlow.Select(year => PrintedCase.Whole(year.Cumulative.Units)).ToList();
        var title = option.SimplePayback.Years is { } back
            ? $"The money is back in {text.Number(back, 1)} years{(option.SimplePayback.LostAgain ? ", then lost again for a time" : "")}"
            : $"The money does not come back in {context.Years} years";
        return new CashFlowDrawing(title, $"Cumulative cash flow against keeping. {title}; {text.Money(Money.FromUnits(sums[^1]))} after {context.Years} years.",
            sums, [.. AxisTicks.For(sums.Min(), sums.Max()).Select(tick => (tick, text.Money(Money.FromUnits(tick))))])
        {
            PaybackYears = option.SimplePayback.Years,
            PaybackLabel = option.SimplePayback.Years is { } years ? text.Years(years) : "",
        };
    }

    private static BarDrawing Seasons(SummaryContext context)
    {
        var (text, after) = (context.Text, context.AskedFigures);
        var pairs = SeasonTable.Lit(context).OrderByDescending(pair => pair.Now.Cost).Take(MostRows)
            .Select(pair => new BarPair(pair.Now.Name, CostBar(pair.Now, text), pair.After is { } a ? CostBar(a, text) : null)).ToList();
        var title = after is null ? $"A year costs {text.Money(context.Now.Cost)}"
            : after.BillSaving > Money.Zero ? $"A year costs {text.Money(after.BillSaving)} less" : $"A year costs {text.Money(-after.BillSaving)} more";
        return new BarDrawing(title, $"Cost by season, now and proposed. {title}.", pairs);
    }

    private static BarDrawing Watts(SummaryContext context)
    {
        var (text, now) = (context.Text, context.Now);
        var least = now.LossIsPartial ? "at least " : "";
        var title = now.Connected > Power.Zero && now.BallastLoss > Power.Zero
            ? $"Ballasts take {least}{text.Percent(now.BallastLoss / now.Connected)} of the load and give no light"
            : $"The lights draw {text.Kilowatts(now.Connected)}";
        var pairs = context.Result.Now.Areas.OrderByDescending(area => area.Connected).Take(MostRows)
            .Select(area => new BarPair(area.Name, LoadBar(area, text), context.Asked?.After.Areas.FirstOrDefault(a => a.Id == area.Id) is { } a ? LoadBar(a, text) : null)).ToList();
        return new BarDrawing(title, $"Connected load by area with ballast loss, now and proposed. {title}.", pairs, LossIsHatched: true);
    }

    private static CalendarDrawing Calendar(SummaryContext context)
    {
        var early = context.Result.Now.Lines.Count(ClockTable.BallastFirst);
        var title = early > 0
            ? $"On {early} of {context.Result.Now.Lines.Count} lines the ballasts fail before the lamps"
            : "No ballast fails before its lamps";
        var rows = context.Study.Areas.Select(area => Row(context, area)).Where(row => row.Lamps.Count + row.Ballasts.Count + row.Tubes.Count > 0).Take(MostRows * 2).ToList();
        return new CalendarDrawing(title, $"Calendar of lamp, ballast and tube replacements by area. {title}.", context.Study.Assumptions.Start.Year, context.Years, rows);
    }

    private static CalendarRow Row(SummaryContext context, Engine.Studies.Area area)
    {
        IReadOnlyList<double> Due(LightingCase? lighting, params WearPart[] parts) => lighting is null ? [] :
            [.. lighting.Replacements.Where(due => parts.Contains(due.Part) && context.Line(due.Line)?.Area == area.Id).Select(due => Math.Round(due.YearsFromStart, 1)).Distinct().Order()];
        return new CalendarRow(area.Name, Due(context.Result.Now, WearPart.Lamp), Due(context.Result.Now, WearPart.Ballast), Due(context.Asked?.After, WearPart.Tube, WearPart.Luminaire));
    }

    private static Bar CostBar(ShareFigures season, QuantityText text) => new(PrintedCase.Whole(season.Cost.Units), text.Money(season.Cost));

    private static Bar LoadBar(ShareFigures area, QuantityText text) =>
        new(PrintedCase.Whole(area.Connected.Watts), text.Watts(area.Connected), PrintedCase.Whole(area.BallastLoss.Watts));
}
