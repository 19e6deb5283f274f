using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Economics;

/// <summary>The money of an option under one set of inputs.</summary>
/// <param name="FirstCost">First cost.</param>
/// <param name="Saving">Bill and fuel saved.</param>
/// <param name="Flows">Net flows, year 0 first.</param>
internal sealed record OptionOutcome(FirstCost FirstCost, YearlySaving Saving, IReadOnlyList<CashFlowYear> Flows)
{
    /// <summary>Net flow of each year, year 0 first.</summary>
    public IReadOnlyList<Money> Net { get; } = [.. Flows.Select(flow => flow.Net)];

    /// <summary>Worth today of all net flows.</summary>
    public Money NetPresentValue => Flows[^1].CumulativeDiscounted;

    /// <summary>Years until the running sum of net flows reaches zero.</summary>
    public Payback SimplePayback => PaybackTime.Of(Net);

    /// <summary>The same with each flow discounted.</summary>
    /// <param name="assumptions">Discount rate.</param>
    public Payback DiscountedPayback(Assumptions assumptions) =>
        PaybackTime.Of([.. Net.Select((flow, year) => flow * DiscountFactors.Single(assumptions.DiscountRate, year))]);
}
