using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Meter;

/// <summary>Even steps of load, in round kilowatts, for at most seven shades.</summary>
public sealed record ShadeSteps(double LowKilowatts, double StepKilowatts, int Count)
{
    private const int Most = 7;
    private static readonly double[] Round = [1, 2, 2.5, 5, 10];

    public static ShadeSteps Of(MeterHours hours)
    {
        var known = hours.Places().Select(p => hours.Cells[p.Day, p.Hour].Watts / 1000).OfType<double>().Where(kilowatts => kilowatts >= 0).ToList();
        return known.Count == 0 ? new(0, 1, 1) : Over(known.Min(), known.Max());
    }

    /// <summary>The finest round step with which seven shades reach from the lowest to the highest.</summary>
    public static ShadeSteps Over(double low, double high)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(Math.Max((high - low) / Most, 1e-3))));
        foreach (var step in Round.Concat(Round.Select(round => round * 10)).Select(round => round * power))
        {
            var first = Math.Floor(low / step);
            if (Math.Floor(high / step) - first < Most) return new(first * step, step, (int)(Math.Floor(high / step) - first) + 1);
        }
        throw new ArgumentOutOfRangeException(nameof(high), high, "No step reaches it.");
    }

    public int IndexOf(double watts) => Math.Clamp((int)Math.Floor((watts / 1000 - LowKilowatts) / StepKilowatts + 1e-9), 0, Count - 1);

    /// <summary>"20–30 kW".</summary>
    public string Name(int index, QuantityText text)
    {
        var decimals = StepKilowatts >= 1 && StepKilowatts == Math.Round(StepKilowatts) ? 0 : StepKilowatts >= 0.1 ? 1 : 3;
        return $"{text.Number(LowKilowatts + index * StepKilowatts, decimals)}–{text.Number(LowKilowatts + (index + 1) * StepKilowatts, decimals)} kW";
    }
}
