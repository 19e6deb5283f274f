namespace RetrofitCalc.Engine.Circuits;

/// <summary>The rule for loads that last three hours or more (E-30).</summary>
/// <remarks>
/// NEC 210.19(A)(1), 210.20(A), 215.2 and 215.3, read in summaries; section numbers move between editions. Equipment listed for its full
/// rating is an exception this does not look at. A calculation for talking to an electrician, not a design.
/// </remarks>
public static class ContinuousLoad
{
    /// <summary>Rating of a common branch circuit. [A]</summary>
    public const double CommonRating = 20;

    private const double Factor = 1.25;

    /// <summary>Least rating of conductors and overcurrent device: the rest + 125 % of what is continuous. [A]</summary>
    /// <param name="continuous">Current that lasts three hours or more. [A]</param>
    /// <param name="rest">Other current. [A]</param>
    public static double LeastRating(double continuous, double rest = 0) => rest + Factor * continuous;

    /// <summary>Most luminaires on one circuit: its rating / 1.25, over the current of one. [count]</summary>
    /// <param name="amperesEach">Current of one luminaire. [A, above 0]</param>
    /// <param name="rating">Rating of the circuit. [A]</param>
    public static int MostLuminaires(double amperesEach, double rating = CommonRating) =>
        // A thousandth of a luminaire more than a whole number is rounding, not a luminaire less.
        (int)Math.Floor(rating / Factor / amperesEach + 1e-9);

    /// <summary>Current at a power factor. [A]</summary>
    /// <param name="watts">Power. [W]</param>
    /// <param name="volts">Voltage at the luminaire, of two wires. [V]</param>
    /// <param name="powerFactor">Power factor. [unitless, above 0 to 1]</param>
    public static double Amperes(double watts, double volts, double powerFactor) => watts / (volts * powerFactor);
}
