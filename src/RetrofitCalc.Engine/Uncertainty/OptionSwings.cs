using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Uncertainty;

/// <summary>How sure an option is: each uncertain input moved alone to its low and its high end through the whole model.</summary>
/// <remarks>
/// E-18. Single differences are combined as the root of the sum of their squares, ups and downs apart: inputs are taken as
/// independent. Payback is combined on the share of first cost recovered a year, so that "never" has its place.
/// Inputs that change nothing are left out.
/// </remarks>
internal static class OptionSwings
{
    /// <summary>Ranges and swings.</summary>
    /// <param name="model">The option as a function of its inputs.</param>
    /// <param name="likely">Its likely outcome.</param>
    /// <param name="assumptions">How far each input may be off.</param>
    public static OptionRanges Of(OptionModel model, OptionOutcome likely, Assumptions assumptions)
    {
        var moves = (from input in UncertainInput.All
                     let width = input.Width(assumptions)
                     where width > 0
                     let move = Move.Of(input, width, model, likely)
                     where move.ChangesAnything
                     orderby move.ShareSpread descending, move.WorthSpread descending
                     select move).ToList();
        return new OptionRanges(
            PaybackRange(moves, likely),
            Combined(moves, likely, outcome => outcome.NetPresentValue),
            Combined(moves, likely, outcome => outcome.Saving.Steady),
            Combined(moves, likely, outcome => outcome.FirstCost.Total),
            [.. moves.Select(move => SwingOf(move, moves))]);
    }

    /// <summary>Whether an input changes any net flow when moved to the ends of its range.</summary>
    public static bool Changes(OptionModel model, UncertainInput input, OptionOutcome likely, Assumptions assumptions) =>
        Move.Of(input, input.Width(assumptions), model, likely).ChangesAnything;

    private static Swing SwingOf(Move move, List<Move> all) => new(
        move.Input.Key, move.Input.Name, move.Input.Ask,
        new Range<double?>(move.Low.SimplePayback.Years, move.Likely.SimplePayback.Years, move.High.SimplePayback.Years),
        new Range<Money>(move.Low.NetPresentValue, move.Likely.NetPresentValue, move.High.NetPresentValue),
        PaybackRange([.. all.Where(other => other != move)], move.Likely));

    private static Range<Money> Combined(List<Move> moves, OptionOutcome likely, Func<OptionOutcome, Money> figure)
    {
        var range = Spread(moves, figure(likely).Units, outcome => figure(outcome).Units);
        return new Range<Money>(Money.FromUnits(range.Low), figure(likely), Money.FromUnits(range.High));
    }

    private static Range<double?> PaybackRange(List<Move> moves, OptionOutcome likely)
    {
        var years = likely.SimplePayback.Years;
        if (PaybackTime.RecoveredShare(likely.Net) is not { } share) return new Range<double?>(years, years, years);
        var (least, most) = Spread(moves, share, outcome => PaybackTime.RecoveredShare(outcome.Net) ?? share);
        var studyYears = likely.Flows.Count - 1;
        return new Range<double?>(Years(most, studyYears), years, Years(least, studyYears));
    }

    private static double? Years(double share, int studyYears) => share * studyYears >= 1 - 1e-12 ? 1 / share : null;

    private static (double Low, double High) Spread(List<Move> moves, double likely, Func<OptionOutcome, double> figure)
    {
        var (down, up) = (0.0, 0.0);
        foreach (var move in moves)
        {
            var (low, high) = (figure(move.Low) - likely, figure(move.High) - likely);
            down += Square(Math.Min(0, Math.Min(low, high)));
            up += Square(Math.Max(0, Math.Max(low, high)));
        }
        return (likely - Math.Sqrt(down), likely + Math.Sqrt(up));
    }

    private static double Square(double value) => value * value;

    private sealed record Move(UncertainInput Input, OptionOutcome Low, OptionOutcome Likely, OptionOutcome High)
    {
        public static Move Of(UncertainInput input, double width, OptionModel model, OptionOutcome likely) =>
            new(input, model.Under(input.At(1 - width)), likely, model.Under(input.At(1 + width)));

        public double ShareSpread { get; } =
            Math.Abs((PaybackTime.RecoveredShare(High.Net) ?? 0) - (PaybackTime.RecoveredShare(Low.Net) ?? 0));

        public double WorthSpread { get; } = Math.Abs((High.NetPresentValue - Low.NetPresentValue).Units);

        public bool ChangesAnything => Low.Net.Concat(High.Net).Zip(Likely.Net.Concat(Likely.Net)).Any(pair => pair.First != pair.Second);
    }
}
