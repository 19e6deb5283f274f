using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Tracing;

namespace RetrofitCalc.Engine.Luminaires;

/// <summary>Power of lamps on one ballast.</summary>
public static class BallastPower
{
    /// <summary>Power the lamps take from the ballast: P = n · P_arc · BF (E-01).</summary>
    /// <param name="lamps">Lamps lit on the ballast. [count]</param>
    /// <param name="arcPower">Rated arc power of one lamp.</param>
    /// <param name="ballastFactor">Light relative to the reference ballast. [unitless, 0–2]</param>
    /// <param name="trace">Recorder; null when nobody asks.</param>
    /// <remarks>Takes light as proportional to arc power. Ballast factor: IES definition.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A negative count, or a ballast factor outside its range.</exception>
    public static Power Lamps(int lamps, Power arcPower, double ballastFactor, Trace? trace = null)
    {
        var power = arcPower * (Require.Count(lamps) * Require.InRange(ballastFactor, 0, 2));
        trace?.Add("Power of the lamps on one ballast", "P = n · P_arc · BF (E-01)",
            [new("n", lamps, ""), new("P_arc", arcPower.Watts, "W"), new("BF", ballastFactor, "")], new("P", power.Watts, "W"));
        return power;
    }

    /// <summary>Power drawn from the line: P_in = n · P_arc · BF / BLE (E-01).</summary>
    /// <param name="lampPower">Power the lamps take.</param>
    /// <param name="luminousEfficiency">Ballast luminous efficiency. [unitless, above 0 to 1]</param>
    /// <param name="trace">Recorder; null when nobody asks.</param>
    /// <remarks>Ballast luminous efficiency: 10 CFR 430 subpart B, appendix Q.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Efficiency outside its range.</exception>
    public static Power Input(Power lampPower, double luminousEfficiency, Trace? trace = null)
    {
        var input = lampPower / Require.InRange(luminousEfficiency, 0.01, 1);
        trace?.Add("Input of one ballast", "P_in = P / BLE (E-01)",
            [new("P", lampPower.Watts, "W"), new("BLE", luminousEfficiency, "")], new("P_in", input.Watts, "W"));
        return input;
    }

    /// <summary>Loss in the ballast: input less what the lamps take (E-02); null when the two contradict each other.</summary>
    /// <param name="input">Power drawn from the line.</param>
    /// <param name="lampPower">Power the lamps take.</param>
    public static Power? Loss(Power input, Power lampPower) => input >= lampPower ? input - lampPower : null;

    /// <summary>Ballast efficacy factor: BEF = 100 · BF / P_in. [1/W]</summary>
    /// <param name="ballastFactor">Light relative to the reference ballast. [unitless]</param>
    /// <param name="input">Power drawn from the line; above zero.</param>
    /// <remarks>Compare only for the same lamps and count. 42 USC 6295(g)(5).</remarks>
    public static double EfficacyFactor(double ballastFactor, Power input) => 100 * ballastFactor / input.Watts;

    /// <summary>Most a ballast may draw to reach a ballast efficacy factor: P_in = 100 · BF / BEF.</summary>
    /// <param name="ballastFactor">Light relative to the reference ballast. [unitless]</param>
    /// <param name="efficacyFactor">Least ballast efficacy factor. [1/W, above 0]</param>
    public static Power MaximumInput(double ballastFactor, double efficacyFactor) => Power.FromWatts(100 * ballastFactor / efficacyFactor);
}
