using NodaTime;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Cases;

/// <summary>What the surveyed lighting and its plant draw, interval by interval.</summary>
public static class PresentLoad
{
    /// <summary>Average of the present lighting and its plant in each interval of twelve months. [W]</summary>
    /// <param name="study">A study without problems; its own meter does not matter.</param>
    /// <param name="firstDay">First local day, on the 1st to 28th of a month.</param>
    /// <param name="intervalMinutes">Length of an interval. [min; 5, 15, 30 or 60]</param>
    public static IReadOnlyList<double> Watts(Study study, LocalDate firstDay, int intervalMinutes)
    {
        var reading = new MeterReading { Dates = [.. Enumerable.Range(0, BillingYear.Months + 1).Select(firstDay.PlusMonths)] };
        var context = new StudyContext(study with { Meter = null, Tariff = study.Tariff with { Reading = reading } });
        var states = context.PresentUnder(Perturbation.None).Lighting.StateKilowatts;
        return [.. IntervalLoads.Of(context, states, intervalMinutes * 60).Select(kilowatts => kilowatts * 1000)];
    }
}
