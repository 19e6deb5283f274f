using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Charts;

namespace RetrofitCalc.Web.Features.Meter;

/// <summary>The load duration curve: all intervals of the year, highest first.</summary>
public static class LoadDuration
{
    private const int MostPoints = 240;
    private static readonly double[] Shown = [0, 0.1, 1, 5, 10, 25, 50, 75, 90, 100];

    public static ChartFigure Of(MeterYear year, QuantityText text)
    {
        double[] sorted = [.. year.Watts.OfType<double>().OrderDescending()];
        if (sorted.Length == 0) sorted = [0];
        var finding = Finding(sorted, year.IntervalMinutes, text);
        return new ChartFigure(finding,
            $"All {text.Number(sorted.Length)} intervals of {year.IntervalMinutes} minutes, highest first: the load that is reached or passed in a share of the year, in kW.",
            $"Load duration curve: {finding}. Chosen shares in the table below.",
            Spec(sorted, text), Twin(sorted, text));
    }

    private static string Finding(double[] sorted, int minutes, QuantityText text)
    {
        var (peak, rest) = (sorted[0], At(sorted, 1));
        var hours = sorted.Length * minutes / 60.0 / 100;
        return $"All but {text.Number(hours)} hours of the year stay below {Kilowatts(rest, text)}; the peak is {Kilowatts(peak, text)}";
    }

    private static ChartSpec Spec(double[] sorted, QuantityText text)
    {
        var points = Places(sorted.Length).Select(i => new ChartPoint(Share(i, sorted.Length), sorted[i] / 1000, i == 0 ? $"peak {Kilowatts(sorted[0], text)}" : null));
        return new ChartSpec(ChartKind.Line, [new ChartSeries("load", Ink.NowLine, [.. points])])
        {
            Across = new ChartAxis(0, 100, [.. new[] { 0, 25, 50, 75, 100 }.Select(share => new ChartTick(share, [$"{share} %"]))], "share of the year"),
            Up = AxisScale.Around(sorted[^1] / 1000, sorted[0] / 1000, kilowatts => text.Number(kilowatts), "kW"),
        };
    }

    /// <summary>Steep at the start, where the peaks are: half of the points lie in the first twentieth.</summary>
    private static IEnumerable<int> Places(int count)
    {
        var steep = Math.Min(count, count / 20 + 1);
        int[] places = [.. Even(0, steep), .. Even(steep, count), count - 1];
        return places.Distinct();

        static IEnumerable<int> Even(int from, int to) =>
            Enumerable.Range(0, Math.Min(MostPoints / 2, to - from)).Select(i => from + (int)((long)i * (to - from) / Math.Min(MostPoints / 2, to - from)));
    }

    private static ChartTable Twin(double[] sorted, QuantityText text) => new(
        ["Share of the year", "Load reached or passed, kW"],
        [.. Shown.Select(share => new[] { Name(share, text), text.Number(At(sorted, share) / 1000, 1) })]);

    private static string Name(double share, QuantityText text) => share switch
    {
        0 => "the peak",
        100 => "all of it",
        _ => text.Percent(share / 100, share < 1 ? 1 : 0),
    };

    private static double At(double[] sorted, double percent) => sorted[Math.Min(sorted.Length - 1, (int)(percent / 100 * sorted.Length))];

    private static double Share(int index, int count) => count < 2 ? 0 : 100.0 * index / (count - 1);

    private static string Kilowatts(double watts, QuantityText text) => text.Kilowatts(Power.FromWatts(watts));
}
