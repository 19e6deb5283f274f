using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Uncertainty.Simulation;

/// <summary>What an option brings at one price of electricity and one number of hours.</summary>
/// <param name="Payback">Simple payback.</param>
/// <param name="NetPresentValue">Net present value.</param>
public sealed record TwoWayCell(Payback Payback, Money NetPresentValue);

/// <summary>An option over price of electricity and hours lit, everything else likely (E-103).</summary>
/// <param name="Prices">Factors on every price of the tariff, by row. [unitless]</param>
/// <param name="Hours">Factors on hours lit, by column; a light that burns day and night burns no longer. [unitless]</param>
/// <param name="Cells">By row and column.</param>
public sealed record TwoWayTable(IReadOnlyList<double> Prices, IReadOnlyList<double> Hours, IReadOnlyList<IReadOnlyList<TwoWayCell>> Cells)
{
    /// <summary>Half to one and a half times as much, by tens of a hundred.</summary>
    public static IReadOnlyList<double> Usual { get; } = [.. Enumerable.Range(5, 11).Select(tenth => tenth / 10.0)];

    /// <summary>The table.</summary>
    /// <param name="now">The present lighting.</param>
    /// <param name="option">An option of the study.</param>
    /// <param name="prices">Factors on prices. [unitless, above 0 to 100]</param>
    /// <param name="hours">Factors on hours. [unitless, above 0 to 100]</param>
    /// <exception cref="ArgumentOutOfRangeException">A factor lies outside its range.</exception>
    /// <remarks>The whole model runs for each cell. Price = factor · price of today, and so on.</remarks>
    public static TwoWayTable Of(PresentCases now, RetrofitOption option, IReadOnlyList<double> prices, IReadOnlyList<double> hours)
    {
        foreach (var factor in prices.Concat(hours))
            Require.InRange(factor, double.Epsilon, 100);
        var model = new OptionModel(now, option);
        return new(prices, hours, [.. prices.Select(price => (IReadOnlyList<TwoWayCell>)[.. hours.Select(each => Cell(model, price, each))])]);
    }

    private static TwoWayCell Cell(OptionModel model, double price, double hours)
    {
        var outcome = model.Under(new() { ElectricityPrice = price, Hours = hours });
        return new(outcome.SimplePayback, outcome.NetPresentValue);
    }
}
