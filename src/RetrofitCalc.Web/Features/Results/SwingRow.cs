using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Results;

/// <summary>One missing certainty: what it does to the payback, and what would settle it.</summary>
public sealed record SwingRow(string Name, string Payback, string NetPresentValue, string Without, string Ask)
{
    private const int Most = 6;

    public static IReadOnlyList<SwingRow> Of(OptionResult option, QuantityText text)
    {
        var years = option.CashFlow.Count - 1;
        return [.. option.Ranges.Swings.Take(Most).Select(s => new SwingRow(
            s.Name, text.Range(s.Payback, years), text.Range(s.NetPresentValue), text.Range(s.PaybackWithout, years), s.Ask))];
    }
}
