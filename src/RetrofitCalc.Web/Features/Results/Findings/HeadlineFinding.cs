using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Results.Findings;

/// <summary>Title of the results page: what the chosen option does, in one sentence.</summary>
public static class HeadlineFinding
{
    public static string Sentence(StudyResult result, QuantityText text)
    {
        if (result.Now.Lines.Count == 0) return "No luminaire is counted yet";
        return result.Chosen is { } option ? Of(option, text) : $"The lights cost {text.Money(PrintedSums.Cost(result.Now))} a year to run";
    }

    /// <summary>The sentence below the title: the bill, the first cost, and what still stands in the way.</summary>
    public static string Lead(StudyResult result, QuantityText text)
    {
        if (result.Chosen is not { } option) return "There is nothing to compare them with yet.";
        var (now, after) = (PrintedSums.Cost(result.Now), PrintedSums.Cost(option.After));
        var bill = after <= now
            ? $"It takes {text.Money(now - after)} a year off {BillsOf(result, option)}{FirstYear(option, text)}"
            : $"It adds {text.Money(after - now)} a year to {BillsOf(result, option)}";
        return $"{bill} and costs {text.Money(PrintedSums.Of(option.FirstCost))} to do. {BillAlone(option, text)}{LostAgain(option)}{Stops(result)}";
    }

    /// <summary>Where heat of the lights saves fuel, the figure is more than the electricity bill's.</summary>
    private static string BillsOf(StudyResult result, OptionResult option) =>
        result.Now.Site.FuelTherms == 0 && option.After.Site.FuelTherms == 0 ? "the bill" : "the bills for electricity and heating fuel";

    /// <summary>What a ratchet keeps back at first.</summary>
    private static string FirstYear(OptionResult option, QuantityText text) =>
        (option.AnnualBillSaving - option.FirstYearBillSaving).Units >= 0.5 ? $", {text.Money(option.FirstYearBillSaving)} in the first," : "";

    private static string Of(OptionResult option, QuantityText text)
    {
        var (name, years) = (option.Option.Name, option.CashFlow.Count - 1);
        return option.SimplePayback.Years switch
        {
            null => $"“{name}” never pays back in {years} years",
            0 when option.CashFlow.All(year => year.Net == Money.Zero) => $"“{name}” changes no figure: nothing on it is done",
            0 => $"“{name}” costs nothing more to do and pays from the first day",
            { } likely => $"With “{name}” the money is back in {text.Number(likely, 1)} years{Range(option, text, years)}",
        };
    }

    private static string Range(OptionResult option, QuantityText text, int years) => option.Ranges.Payback switch
    {
        { Low: { } low, High: { } high } when high > low => $"; the likely range is {text.Number(low, 1)} to {text.Number(high, 1)}",
        { Low: { } low, High: null } => $"; the likely range runs from {text.Number(low, 1)} to never in {years}",
        _ => "",
    };

    /// <summary>Replacements avoided pay back too: who divides first cost by the bill's saving must find that figure named.</summary>
    private static string BillAlone(OptionResult option, QuantityText text) =>
        option.PlainPayback.Years is { } plain && option.SimplePayback.Years is { } likely && plain - likely >= 0.1
            ? $"By the bill alone, without the lamps and ballasts no longer bought, it takes {text.Number(plain, 1)} years. "
            : "";

    private static string LostAgain(OptionResult option) =>
        option.SimplePayback.LostAgain ? "A later replacement takes the gain below zero once more. " : "";

    private static string Stops(StudyResult result) =>
        result.Notices.Count(n => n is { Severity: NoticeSeverity.Stop, Open: true }) switch
        {
            0 => "No safety stop is open.",
            1 => "One safety stop is open.",
            var open => $"{open} safety stops are open.",
        };
}
