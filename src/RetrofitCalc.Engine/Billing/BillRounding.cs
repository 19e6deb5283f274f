using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>Rounding on bills: of amounts and of demand.</summary>
public static class BillRounding
{
    /// <summary>Rounds half away from zero, as printed: 3404.025 is half a cent although no binary number is exactly that.</summary>
    /// <param name="amount">The amount. [currency]</param>
    /// <param name="decimals">Decimals kept. [count, 0–4]</param>
    public static Money Amount(double amount, int decimals = 2) =>
        Money.FromUnits((double)Math.Round((decimal)amount, decimals, MidpointRounding.AwayFromZero));

    /// <summary>Rounds demand to whole steps; what lies less than a billionth of a step beside one is on it, since it is noise of the arithmetic.</summary>
    /// <param name="demand">The demand.</param>
    /// <param name="rounding">Step and direction; null leaves it as it is.</param>
    public static Power Demand(Power demand, DemandRounding? rounding)
    {
        if (rounding is null)
            return demand;
        var steps = WithoutNoise(demand / rounding.Step);
        return Power.FromKilowatts((double)((decimal)rounding.Step.Kilowatts * rounding.Direction switch
        {
            RoundingDirection.Up => Math.Ceiling(steps),
            RoundingDirection.Down => Math.Floor(steps),
            _ => Math.Round(steps, MidpointRounding.AwayFromZero),
        }));
    }

    /// <summary>Whole hours in a number of hours.</summary>
    /// <param name="hours">Hours. [h]</param>
    internal static double WholeHours(double hours) => (double)Math.Floor(WithoutNoise(hours));

    private static decimal WithoutNoise(double value) => Math.Round((decimal)value, 9);
}
