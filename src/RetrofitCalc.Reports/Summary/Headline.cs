using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>Title sentence, lead and the four large figures.</summary>
internal static class Headline
{
    public static string Title(SummaryContext context)
    {
        var text = context.Text;
        if (context.AskedFigures is not { } option)
            return $"The lights cost {text.Money(context.Now.Cost)} a year; no change is proposed yet";
        var changed = Changed(context);
        if (changed.Count == 0) return $"{option.Result.Option.Name} changes no luminaire";
        var what = What(changed, context);
        return option.Result.SimplePayback.Years is null
            ? $"{text.Money(option.FirstCost)} to {what} never pays back in {context.Years} years"
            : $"Approve {text.Money(option.FirstCost)} to {what}{Condition(context)}";
    }

    /// <summary>A request never stands above an open stop without naming it.</summary>
    private static string Condition(SummaryContext context) => SafetyAnnex.OpenStops(context).Count switch
    {
        0 => "",
        1 => ", once one stop is answered",
        var many => $", once {many} stops are answered",
    };

    public static string Lead(SummaryContext context)
    {
        var text = context.Text;
        var now = $"The lights cost {text.Money(context.Now.Cost)} a year to run, the plant that answers to their heat included.";
        if (context.AskedFigures is not { } option) return now;
        return $"{now} After the change they would cost {text.Money(option.After.Cost)}. {BallastSentence(context)} {context.Bill?.ForTheBoard}".TrimEnd();
    }

    public static IReadOnlyList<KeyFigure> Figures(SummaryContext context) =>
        context.AskedFigures is { } option ? OfOption(context, option) : OfNow(context);

    private static KeyFigure[] OfNow(SummaryContext context)
    {
        var (now, text) = (context.Now, context.Text);
        return
        [
            new("Connected load", text.Watts(now.Connected), $"of it ballast loss {text.Watts(now.BallastLoss)}"),
            new("Energy a year", text.KilowattHours(now.Lighting), "lighting"),
            new("Cost a year", text.Money(now.Cost), "plant included"),
            new("Heat", text.BtuPerHour(now.Heat), text.Tons(now.Heat)),
        ];
    }

    /// <summary>What a ratchet keeps back at first.</summary>
    private static string FirstYear(OptionResult option, QuantityText text) =>
        (option.AnnualBillSaving - option.FirstYearBillSaving).Units >= 0.5 ? $"; first year {text.Money(option.FirstYearBillSaving)}" : "";

    private static bool HasFuel(SummaryContext context, PrintedOption option) =>
        context.Result.Now.Site.FuelTherms != 0 || option.Result.After.Site.FuelTherms != 0;

    private static KeyFigure[] OfOption(SummaryContext context, PrintedOption option)
    {
        var (text, ranges) = (context.Text, option.Result.Ranges);
        var share = context.Now.Cost.Units > 0 ? text.Percent(option.BillSaving / context.Now.Cost) : QuantityText.DoesNotApply;
        return
        [
            new("First cost after incentive", text.Money(option.FirstCost), text.Range(ranges.FirstCost)),
            new(HasFuel(context, option) ? "Bills saved a year, fuel counted" : "Bill saved a year", text.Money(option.BillSaving), $"{text.Range(ranges.AnnualBillSaving)}; {share}{FirstYear(option.Result, text)}"),
            new("Payback, upkeep counted", BigPayback(option.Result, context), PaybackNote(option.Result, context)),
            new($"Net present value, {context.Years} yr", text.Money(option.Result.NetPresentValue), text.Range(ranges.NetPresentValue)),
        ];
    }

    /// <summary>The range, and what the bill alone would give: a reader who divides first cost by the saving finds that one.</summary>
    private static string PaybackNote(OptionResult option, SummaryContext context)
    {
        var lost = option.SimplePayback.LostAgain ? "; then lost again" : "";
        return $"{context.Text.Range(option.Ranges.Payback, context.Years)}{lost}; by the bill alone {context.Text.Payback(option.PlainPayback, context.Years)}";
    }

    private static string BigPayback(OptionResult option, SummaryContext context) =>
        option.SimplePayback.Years is { } years ? context.Text.Number(years, 1) + " years" : "never";

    private static List<LineMeasure> Changed(SummaryContext context)
    {
        var refused = context.Asked!.Refused.Select(refusal => refusal.Line).ToHashSet();
        var counted = context.Result.Now.Lines.Select(line => line.Line).ToHashSet();
        return [.. context.Asked.Option.Measures.Where(m => m.Measure is not KeepAsIs && counted.Contains(m.Line) && !refused.Contains(m.Line))];
    }

    private static string What(List<LineMeasure> changed, SummaryContext context)
    {
        var count = context.Text.Count(changed.Sum(m => context.Line(m.Line)?.Count ?? 0));
        return changed switch
        {
            _ when changed.All(m => m.Measure is DirectWire) => $"convert {count} tube luminaires to direct-wire",
            _ when changed.All(m => m.Measure is RenewLikeForLike) => $"renew the lamps and ballasts of {count} luminaires",
            _ when changed.All(m => m.Measure is ReplaceLuminaire) => $"replace {count} tube luminaires by ready-wired ones",
            _ => $"change {count} tube luminaires, some direct-wire and some otherwise",
        };
    }

    private static string BallastSentence(SummaryContext context)
    {
        var early = context.Result.Now.Lines.Where(ClockTable.BallastFirst).Sum(line => line.Luminaires);
        return early > 0
            ? $"In {context.Text.Count(early)} luminaires the ballast wears out sooner than the lamps."
            : $"{context.Text.Watts(context.Now.BallastLoss)} of the present load is lost in ballasts.";
    }
}
