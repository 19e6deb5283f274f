using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Lifetimes;

/// <summary>Rules of thumb and limits that turn a rated life into one to plan with.</summary>
public static class RatedLives
{
    /// <summary>Projections of light output are quoted up to this many times the hours tested.</summary>
    /// <remarks>IES TM-21, as restated in IES position statement PS-10-18 (2018).</remarks>
    public const double ProjectionLimit = 6;

    /// <summary>Ballast life at a case temperature.</summary>
    /// <param name="rated">Life at the rated case temperature.</param>
    /// <param name="ratedCelsius">Case temperature of the rated life. [°C]</param>
    /// <param name="caseCelsius">Case temperature expected here. [°C]</param>
    /// <remarks>L = L_r · 2^((T_r − T_c)/10), and never above L_r. Rule of thumb, from memory; no standard was read.</remarks>
    public static OperatingTime BallastAt(OperatingTime rated, double ratedCelsius, double caseCelsius) =>
        caseCelsius <= ratedCelsius ? rated : rated * Math.Pow(2, (ratedCelsius - caseCelsius) / 10);

    /// <summary>Life of a tube or luminaire as it may be quoted: six times the hours tested at most.</summary>
    /// <param name="rated">Life the sheet claims.</param>
    /// <param name="tested">Hours the light sources were tested; null when not known, and the claim then stands.</param>
    public static OperatingTime Quotable(OperatingTime rated, OperatingTime? tested) =>
        tested is { } hours && hours * ProjectionLimit < rated ? hours * ProjectionLimit : rated;

    /// <summary>Hours of test that a claimed life needs.</summary>
    /// <param name="claimed">Life claimed.</param>
    public static OperatingTime TestNeeded(OperatingTime claimed) => claimed / ProjectionLimit;

    /// <summary>Hours after which light has fallen to a share of its start, by an exponential fit.</summary>
    /// <param name="start">Fitted light at hour zero, relative to the measured start. [unitless, above 0]</param>
    /// <param name="decay">Fitted decay rate. [1/h, above 0]</param>
    /// <param name="share">Share of light at the end of life. [unitless, 0–1]</param>
    /// <remarks>t = ln(B/share)/α, IES TM-21, from memory. The limit of six times the hours tested is applied apart.</remarks>
    public static OperatingTime ToShareOfLight(double start, double decay, double share = 0.7) =>
        OperatingTime.FromHours(Math.Log(start / share) / decay);

    /// <summary>Hours between group relampings.</summary>
    /// <param name="rated">Rated life.</param>
    /// <param name="share">Share of it. [unitless, 0–1]</param>
    public static OperatingTime GroupRelamp(OperatingTime rated, double share) => rated * share;

    /// <summary>Years that hours last.</summary>
    /// <param name="life">Hours of life.</param>
    /// <param name="hoursPerYear">Hours burned in a year.</param>
    /// <returns>Years; null when nothing burns.</returns>
    public static double? Years(OperatingTime life, OperatingTime hoursPerYear) =>
        hoursPerYear > OperatingTime.Zero ? life / hoursPerYear : null;
}
