using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Economics.Measures;

/// <summary>How far one input of an option may move until its net savings are nothing.</summary>
public static class OptionBreakEven
{
    /// <summary>Lowest factor looked at. [unitless]</summary>
    public const double Lowest = 0.1;

    /// <summary>Highest factor looked at. [unitless]</summary>
    public const double Highest = 10;

    /// <summary>Factors on one input at which net present value is zero, everything else as the study has it.</summary>
    /// <param name="now">The present lighting.</param>
    /// <param name="option">The option.</param>
    /// <param name="input">Name of the input in <see cref="Perturbation"/>, such as <see cref="Perturbation.ElectricityPrice"/>.</param>
    /// <returns>Points between a tenth and ten times the present value; hours stop at those of a year.</returns>
    /// <exception cref="ArgumentException">There is no such input.</exception>
    /// <remarks>
    /// The whole model runs some thirty times, bills and replacements included: ask for it when it is looked at, not on every edit.
    /// Break-even price = factor · price of today, and so on.
    /// </remarks>
    public static IReadOnlyList<BreakEvenPoint> Of(PresentCases now, RetrofitOption option, string input)
    {
        var moved = UncertainInput.All.FirstOrDefault(each => each.Key == input)
            ?? throw new ArgumentException($"There is no uncertain input {input}.", nameof(input));
        var model = new OptionModel(now, option);
        return BreakEven.All(factor => model.Under(moved.At(factor)).NetPresentValue.Units, Lowest, Highest);
    }
}
