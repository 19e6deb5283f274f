using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty.Distributions;

namespace RetrofitCalc.Engine.Uncertainty.Simulation;

/// <summary>What many draws of one option say.</summary>
public sealed record SimulationResult
{
    /// <summary>Seed that the draws follow from: the same gives the same result.</summary>
    public required int Seed { get; init; }

    /// <summary>Simple payback; infinite for never within the study. [years]</summary>
    public required SampleStatistics Payback { get; init; }

    /// <summary>Net present value: net savings. [currency]</summary>
    public required SampleStatistics NetPresentValue { get; init; }

    /// <summary>First cost after the incentive. [currency]</summary>
    public required SampleStatistics FirstCost { get; init; }

    /// <summary>Bill and fuel saved in a steady year, at prices of the start. [currency]</summary>
    public required SampleStatistics AnnualSaving { get; init; }

    /// <summary>Running sum of net flows, year 0 first.</summary>
    public required IReadOnlyList<CashBand> Cumulative { get; init; }

    /// <summary>What knowing each input would bring, the most useful first; inputs that change nothing are left out.</summary>
    public required IReadOnlyList<ValueOfKnowing> Measurements { get; init; }

    /// <summary>Draws. [count]</summary>
    public int Draws => NetPresentValue.Count;

    /// <summary>Chance that net savings are above zero.</summary>
    public Probability NetSavingsPositive => NetPresentValue.Above(0);

    /// <summary>Chance that the money is back within a limit.</summary>
    /// <param name="years">The limit; one beyond the study's length adds nothing. [years]</param>
    public Probability PaybackWithin(double years) => Payback.AtMost(years);

    internal static SimulationResult Of(Assumptions assumptions, InputDraws inputs, DrawnFigures drawn, OptionModel model) => new()
    {
        Seed = assumptions.Seed,
        Payback = SampleStatistics.Of(drawn.Payback),
        NetPresentValue = SampleStatistics.Of(drawn.NetPresentValue),
        FirstCost = SampleStatistics.Of(drawn.FirstCost),
        AnnualSaving = SampleStatistics.Of(drawn.AnnualSaving),
        Cumulative = [.. drawn.Cumulative.Select((sums, year) => CashBand.Of(year, SampleStatistics.Of(sums)))],
        Measurements = Known(assumptions, inputs, drawn, model),
    };

    private static ValueOfKnowing[] Known(Assumptions assumptions, InputDraws inputs, DrawnFigures drawn, OptionModel model)
    {
        var likely = model.Under(Perturbation.None);
        return
        [
            .. from input in inputs.Inputs.Index()
               where OptionSwings.Changes(model, input.Item, likely, assumptions)
               let value = ValueOfKnowing.Of(input.Item, drawn.Inputs[input.Index], drawn)
               orderby value.BandOnceKnown, input.Index
               select value,
        ];
    }
}

/// <summary>Running sum of net flows at the end of a year.</summary>
/// <param name="Year">0 for the start, then 1, 2, … for the end of each year.</param>
/// <param name="P10">One in ten lies below.</param>
/// <param name="P50">Median.</param>
/// <param name="P90">One in ten lies above.</param>
/// <remarks>Each year for itself: the medians of all years need not belong to one draw.</remarks>
public sealed record CashBand(int Year, Money P10, Money P50, Money P90)
{
    internal static CashBand Of(int year, SampleStatistics sums) =>
        new(year, Money.FromUnits(sums.P10), Money.FromUnits(sums.P50), Money.FromUnits(sums.P90));
}
