using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>How the light of a lamp depends on the air around it (E-67).</summary>
/// <remarks>
/// Rated light holds at the best temperature: 25 °C for T8 and T12, 35 °C for T5. Both lose about a tenth between 25 and 35 °C (NLPIP
/// Lighting Answers: T5, 2002, figure 10-1, read). T8 at 4.4 °C: a quarter lost (field note, read, weak). T8 at 10 °C 0.85, T5 at 15 °C
/// 0.70 and at 45 °C 0.95: sketched from memory. Beyond the last points the curves go on with their last slope (no source). The
/// temperature is that of the air at the lamp, not of the room.
/// </remarks>
public static class LampTemperature
{
    /// <summary>What to say of tubes and luminaires with LED, whose light is taken as the same at every temperature.</summary>
    public const string LedRemark = "LED: light taken as the same at every temperature; heat shortens its life and takes some light, see its sheet.";

    private static readonly (double Celsius, double Share)[] Thick = [(4.4, 0.75), (10, 0.85), (25, 1), (35, 0.90)];
    private static readonly (double Celsius, double Share)[] Thin = [(15, 0.70), (25, 0.90), (35, 1), (45, 0.95)];

    /// <summary>Light at an air temperature, as a share of rated light. [unitless, 0–1]</summary>
    /// <param name="family">Bulb family, such as T8, T12, T5HO; any other name stands for LED and gives 1.</param>
    /// <param name="airCelsius">Air at the lamp. [°C, −30 to 80]</param>
    /// <exception cref="ArgumentOutOfRangeException">A temperature outside.</exception>
    public static double Output(string family, double airCelsius)
    {
        Require.InRange(airCelsius, -30, 80);
        if (family.StartsWith("T5", StringComparison.Ordinal)) return At(Thin, airCelsius);
        return family.Length > 1 && family[0] == 'T' && char.IsAsciiDigit(family[1]) ? At(Thick, airCelsius) : 1;
    }

    /// <summary>Light at one temperature over light at another, from two readings of one lamp. [unitless]</summary>
    /// <param name="here">At the temperature asked about. [lm]</param>
    /// <param name="best">At the other, above 0. [lm]</param>
    public static double Ratio(LuminousFlux here, LuminousFlux best) => here / best;

    private static double At((double Celsius, double Share)[] curve, double celsius)
    {
        var warmer = Array.FindIndex(curve, 1, point => point.Celsius > celsius);
        var next = warmer < 0 ? curve.Length - 1 : warmer;
        var (low, high) = (curve[next - 1], curve[next]);
        return Math.Max(0, low.Share + (high.Share - low.Share) * (celsius - low.Celsius) / (high.Celsius - low.Celsius));
    }
}
