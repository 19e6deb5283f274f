using System.Text.Json;
using NodaTime.Text;
using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Reference;

internal static class Figures_of_money_over_time
{
    [ReferenceTopic("spv")]
    private static double Spv(JsonElement i) => DiscountFactors.Single(i.Number("d"), i.Number("n"));

    [ReferenceTopic("upv")]
    private static double Upv(JsonElement i) => DiscountFactors.Uniform(i.Number("d"), i.Count("n"));

    [ReferenceTopic("upv_star")]
    private static double UpvStar(JsonElement i) => DiscountFactors.UniformRising(i.Number("d"), i.Number("e"), i.Count("n"));

    [ReferenceTopic("real_escalation")]
    private static double RealEscalation(JsonElement i) => DiscountFactors.Real(i.Number("E"), i.Number("I"));

    [ReferenceTopic("npv_t0")]
    private static double Npv(JsonElement i) => PresentValue.Of(i.Number("rate"), Flows(i)).Units;

    /// <summary>A spreadsheet discounts the first amount one period too.</summary>
    [ReferenceTopic("npv_t1_spreadsheet")]
    private static double SpreadsheetNpv(JsonElement i) => PresentValue.Of(i.Number("rate"), [Money.Zero, .. Flows(i)]).Units;

    [ReferenceTopic("pv_of_flows")]
    private static double Level(JsonElement i) => (DiscountFactors.Uniform(i.Number("d"), i.Count("n")) * i.Number("flow"));

    [ReferenceTopic("fvschedule")]
    private static double Grown(JsonElement i) => PresentValue.Grown(i.Amount("principal"), i.Numbers("rates")).Units;

    [ReferenceTopic("xnpv"), ReferenceTopic("xnpv_as_printed")]
    private static double DatedNpv(JsonElement i) => PresentValue.OfDated(i.Number("rate"), Dated(i)).Units;

    [ReferenceTopic("xirr"), ReferenceTopic("xirr_as_printed")]
    private static double DatedRate(JsonElement i) => RateOfReturn.OfDated(Dated(i))!.Value;

    [ReferenceTopic("irr")]
    private static double Irr(JsonElement i) => RateOfReturn.All(Flows(i)).Single();

    [ReferenceTopic("mirr")]
    private static double Mirr(JsonElement i) => RateOfReturn.Modified(Flows(i), i.Number("finance"), i.Number("reinvest"))!.Value;

    [ReferenceTopic("discounted_payback"), ReferenceTopic("discounted_payback_correct")]
    private static double DiscountedPayback(JsonElement i)
    {
        Money[] flows = [-i.Amount("cost"), .. Flows(i)];
        return PaybackTime.Of([.. flows.Select((flow, year) => flow * DiscountFactors.Single(i.Number("d"), year))]).Years!.Value;
    }

    [ReferenceTopic("simple_roi_pct")]
    private static double SimpleReturn(JsonElement i) => 100 / PaybackTime.Plain(i.Amount("cost"), i.Amount("annual"), 40).Years!.Value;

    [ReferenceTopic("five_year_cash_flow")]
    private static double FiveYears(JsonElement i) =>
        PresentValue.Of(0, [-i.Amount("cost"), .. Enumerable.Repeat(i.Amount("annual"), 5)]).Units;

    [ReferenceTopic("simple_sir")]
    private static double UndiscountedSir(JsonElement i) =>
        LifeCycleMeasures.SavingsToInvestment(i.Amount("annual") * DiscountFactors.Uniform(0, i.Count("life")), i.Amount("cost"));

    [ReferenceTopic("sir")]
    private static double Sir(JsonElement i) => LifeCycleMeasures.SavingsToInvestment(SavingsWorth(i), i.Amount("cost"));

    [ReferenceTopic("airr")]
    private static double Airr(JsonElement i) => LifeCycleMeasures.AdjustedRateOfReturn(i.Number("sir"), i.Number("d"), i.Count("n"));

    [ReferenceTopic("net_savings")]
    private static double NetSavings(JsonElement i) => LifeCycleMeasures.NetSavings(SavingsWorth(i), i.Amount("cost")).Units;

    [ReferenceTopic("life_cycle_cost")]
    private static double LifeCycleCost(JsonElement i) => LifeCycleMeasures.LifeCycleCost(i.Amount("first"), [.. YearlyCosts(i)], i.Number("d")).Units;

    private static IEnumerable<Money> YearlyCosts(JsonElement i) =>
        from year in Enumerable.Range(1, i.Count("n"))
        let energy = i.Amount("energy") * Math.Pow(1 + i.Number("e"), year)
        let replaced = year == i.Count("repl_year") ? i.Amount("repl") : Money.Zero
        let left = year == i.Count("n") ? i.Amount("resid") : Money.Zero
        select energy + i.Amount("om") + replaced - left;

    private static Money SavingsWorth(JsonElement i) => i.Amount("annual") * DiscountFactors.Uniform(i.Number("d"), i.Count("n"));

    private static List<Money> Flows(JsonElement i) => [.. i.Numbers("flows").Select(Money.FromUnits)];

    private static List<DatedAmount> Dated(JsonElement i) =>
        [.. i.GetProperty("dates").EnumerateArray().Zip(Flows(i), (day, flow) => new DatedAmount(LocalDatePattern.Iso.Parse(day.GetString()!).Value, flow))];

    internal static Money Amount(this JsonElement inputs, string name) => Money.FromUnits(inputs.Number(name));
}
