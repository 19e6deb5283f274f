using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Meter;

/// <summary>Even steps of load, in round kilowatts, for at most seven shades.</summary>
public sealed record ShadeSteps(double LowKilowatts, double StepKilowatts, int Count)
{
    public static ShadeSteps Of(MeterHours hours)
    {
        var known = hours.Places().Select(p => hours.Cells[p.Day, p.Hour].Watts / 1000).OfType<double>().Where(kilowatts => kilowatts >= 0).ToList();
        return known.Count == 0 ? new(0, 1, 1) : Over(known.Min(), known.Max());
    }

    /// <summary>The finest round step with which seven shades reach from the lowest to the highest.</summary>
    public static ShadeSteps Over(double low, double high)
    {
        var (first, step, count) = EvenSteps.Over(low, high);
        return new(first, step, count);
    }

    public int IndexOf(double watts) => new EvenSteps(LowKilowatts, StepKilowatts, Count).IndexOf(watts / 1000);

    /// <summary>"20–30 kW".</summary>
    public string Name(int index, QuantityText text)
    {
        var decimals = StepKilowatts >= 1 && StepKilowatts == Math.Round(StepKilowatts) ? 0 : StepKilowatts >= 0.1 ? 1 : 3;
        return $"{text.Number(LowKilowatts + index * StepKilowatts, decimals)}–{text.Number(LowKilowatts + (index + 1) * StepKilowatts, decimals)} kW";
    }
}
