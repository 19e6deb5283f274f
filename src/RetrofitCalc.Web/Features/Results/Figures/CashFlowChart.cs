using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Charts;
using RetrofitCalc.Web.Features.Results.Findings;

namespace RetrofitCalc.Web.Features.Results.Figures;

/// <summary>Cumulative net flows of an option against keeping, with the day the money is back.</summary>
public static class CashFlowChart
{
    public static ChartFigure Of(OptionResult option, QuantityText text)
    {
        var years = option.CashFlow.Count - 1;
        var end = text.Money(option.CashFlow[^1].Cumulative);
        return new ChartFigure(CashFlowFinding.Sentence(option, text),
            $"Net cash flow of {option.Option.Name} against keeping, summed over {years} years in money of each year; lamps and ballasts counted when they fall due.",
            $"Cumulative cash flow: payback {text.Payback(option.SimplePayback, years)}, {end} after {years} years. Each year in the table below.",
            Spec(option, text, years), Twin(option, text));
    }

    private static ChartSpec Spec(OptionResult option, QuantityText text, int years)
    {
        var flow = option.CashFlow;
        var points = flow.Select(y => new ChartPoint(y.Year, y.Cumulative.Units,
            y.Year == years ? $"likely {text.Money(y.Cumulative)} after {years} years" : null));
        var series = new List<ChartSeries> { new("cumulative", Ink.ProposedLine, [.. points]) };
        series.AddRange(Payback(option, text, years));
        return new ChartSpec(ChartKind.Line, series)
        {
            Across = new ChartAxis(0, years, [.. YearTicks(years, text)], "years from the start"),
            Up = AxisScale.Around(flow.Min(y => y.Cumulative.Units), flow.Max(y => y.Cumulative.Units),
                units => text.Money(Engine.Quantities.Money.FromUnits(units))),
        };
    }

    private static IEnumerable<ChartSeries> Payback(OptionResult option, QuantityText text, int years)
    {
        var range = option.Ranges.Payback;
        if (range.Low is { } low)
            yield return new("payback range", Ink.Span, [new(low, 0), new(range.High ?? years, 0)]);
        if (option.SimplePayback.Years is { } at and > 0)
            yield return new("payback", Ink.Ring, [new(at, 0, $"pays back at {text.Years(at)} ({text.Range(range, years)})")]);
    }

    private static IEnumerable<ChartTick> YearTicks(int years, QuantityText text)
    {
        var step = years switch { <= 12 => 1, <= 25 => 2, _ => 5 };
        for (var year = 0; year <= years; year += step) yield return new ChartTick(year, [text.Number(year)]);
    }

    private static ChartTable Twin(OptionResult option, QuantityText text) => new(
        ["End of", "Net flow", "Sum so far", "Sum, discounted to the start"],
        [.. option.CashFlow.Select(y => new[]
        {
            y.Year == 0 ? "Start" : $"Year {y.Year}", text.Money(y.Net), text.Money(y.Cumulative), text.Money(y.CumulativeDiscounted),
        })]);
}
