using System.Text.Json;
using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.Reference;

internal static class Figures_of_level_payments
{
    [ReferenceTopic("pmt")]
    private static double Payment(JsonElement i) => LevelPayments.Payment(i.Number("rate"), i.Number("nper"), i.Amount("pv")).Units;

    [ReferenceTopic("fv")]
    private static double Future(JsonElement i) => LevelPayments.Future(i.Number("rate"), i.Number("nper"), i.Amount("pmt"), i.Amount("pv")).Units;

    [ReferenceTopic("pv")]
    private static double Present(JsonElement i) => LevelPayments.Present(i.Number("rate"), i.Number("nper"), i.Amount("pmt")).Units;

    [ReferenceTopic("nper")]
    private static double Periods(JsonElement i) => LevelPayments.Periods(i.Number("rate"), i.Amount("pmt"), i.Amount("pv"));

    [ReferenceTopic("rate")]
    private static double Rate(JsonElement i) => LevelPayments.Rate(i.Number("nper"), i.Amount("pmt"), i.Amount("pv"), i.Amount("fv"))!.Value;

    /// <summary>A growth rate is the rate of a single amount paid in and taken out.</summary>
    [ReferenceTopic("rri")]
    private static double Growth(JsonElement i) => LevelPayments.Rate(i.Number("nper"), Money.Zero, -i.Amount("pv"), i.Amount("fv"))!.Value;

    [ReferenceTopic("ipmt")]
    private static double Interest(JsonElement i) =>
        LevelPayments.InterestPart(i.Number("rate"), i.Count("per"), i.Count("nper"), LoanOf(i)).Units;

    [ReferenceTopic("ppmt")]
    private static double Principal(JsonElement i) =>
        LevelPayments.PrincipalPart(i.Number("rate"), i.Count("per"), i.Count("nper"), LoanOf(i)).Units;

    [ReferenceTopic("ipmt_sum"), ReferenceTopic("cumipmt")]
    private static double InterestSum(JsonElement i) => Sum(i, LevelPayments.InterestPart);

    [ReferenceTopic("cumprinc")]
    private static double PrincipalSum(JsonElement i) => Sum(i, LevelPayments.PrincipalPart);

    private static double Sum(JsonElement i, Func<double, int, int, Loan, Money> part)
    {
        var first = Or(i, "s", 1);
        var last = Or(i, "e", i.Count("nper"));
        return Enumerable.Range(first, last - first + 1).Sum(period => part(i.Number("rate"), period, i.Count("nper"), LoanOf(i)).Units);
    }

    private static Loan LoanOf(JsonElement i) =>
        new(i.Amount("pv"), Money.FromUnits(Or(i, "fv", 0)), Or(i, "when", 0) == 1 ? PaymentDue.Beginning : PaymentDue.End);

    private static int Or(JsonElement i, string name, int otherwise) => i.TryGetProperty(name, out var value) ? value.GetInt32() : otherwise;
}
