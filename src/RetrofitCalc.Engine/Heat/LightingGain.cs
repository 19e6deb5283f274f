using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Tracing;

namespace RetrofitCalc.Engine.Heat;

/// <summary>Heat that lights give to a space (E-04).</summary>
public static class LightingGain
{
    /// <summary>From input watts, ballast loss inside: no ballast allowance is added again.</summary>
    /// <param name="input">Input power of the lights.</param>
    /// <param name="shareInSpace">Share released in the conditioned space. [unitless, 0–1]</param>
    /// <param name="trace">Recorder; null when nobody asks.</param>
    public static Power FromInput(Power input, double shareInSpace, Trace? trace = null)
    {
        var heat = input * shareInSpace;
        trace?.Add("Heat in the space", "q = 3.412142 · P · f_space (E-04)",
            [new("P", input.Watts, "W"), new("f_space", shareInSpace, "")], new("q", heat.BtuPerHour, "BTU/h"));
        return heat;
    }

    /// <summary>From lamp watts by the handbook form: q = 3.41 · W · F_ul · F_sa. [BTU/h]</summary>
    /// <param name="lampPower">Sum of the lamps' nominal power.</param>
    /// <param name="useFactor">Share of lamps in use, F_ul. [unitless, 0–1]</param>
    /// <param name="ballastAllowance">Special allowance for ballasts, F_sa. [unitless, 1 or more]</param>
    /// <remarks>ASHRAE Handbook Fundamentals, chapter 18; the rounded 3.41 is the handbook's.</remarks>
    public static double BtuPerHourFromLamps(Power lampPower, double useFactor, double ballastAllowance) =>
        3.41 * lampPower.Watts * useFactor * ballastAllowance;
}
