using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Lifetimes;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>How the light of a lamp, tube or luminaire falls as it burns: exponentially, through one known point (E-66).</summary>
/// <remarks>
/// Fluorescent lamps: 1 after 100 h, when rated light is read (CIE e-ILV, NLPIP), and mean over initial at 40 % of rated life (trade
/// definition of mean lumens). LED: 1 when new and 0.70 at rated life, which is what such a life claims (IES TM-21, from memory). That
/// the fall between is exponential is the fit of TM-21 for LED and common practice for lamps; where a lamp falls faster at first, light is
/// counted too high for its first months.
/// </remarks>
public sealed record LumenMaintenance
{
    /// <summary>Share of rated life at which mean light is read. [unitless]</summary>
    public const double MeanLightAt = 0.4;

    /// <summary>Hours after which the light of a fluorescent lamp counts as initial. [h]</summary>
    public const double SeasoningHours = 100;

    /// <summary>Share of light that is left at the rated life of a tube or luminaire. [unitless]</summary>
    public const double EndOfLifeShare = 0.7;

    private LumenMaintenance(OperatingTime from, OperatingTime known, double share, string basis)
    {
        (From, Known, Share, Basis) = (from, known, share, basis);
    }

    /// <summary>Until here the light counts as new. [h]</summary>
    public OperatingTime From { get; }

    /// <summary>Hours of the known point. [h]</summary>
    public OperatingTime Known { get; }

    /// <summary>Light there, as a share of that when new. [unitless, above 0 to 1]</summary>
    public double Share { get; }

    /// <summary>Where the point comes from, in plain words.</summary>
    public string Basis { get; }

    /// <summary>A fall of light through a known point.</summary>
    /// <param name="from">Until here the light counts as new. [h]</param>
    /// <param name="known">Hours of the point, more than <paramref name="from"/>. [h]</param>
    /// <param name="share">Light there, as a share of that when new. [unitless, above 0 to 1]</param>
    /// <param name="basis">Where it comes from.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share outside, or a point too early.</exception>
    public static LumenMaintenance Through(OperatingTime from, OperatingTime known, double share, string basis = "") =>
        known > from
            ? new(from, known, Require.InRange(share, double.Epsilon, 1), basis)
            : throw new ArgumentOutOfRangeException(nameof(known), known, "Must be later than the hours that count as new.");

    /// <summary>The fall of what is fitted on a line. What the sheet leaves open is taken from its family and said in <see cref="Basis"/>.</summary>
    /// <param name="line">The line with what is fitted.</param>
    /// <exception cref="ArgumentOutOfRangeException">An unknown kind of fitting.</exception>
    public static LumenMaintenance Of(FittedLine line) => line.Fitting switch
    {
        BallastedFitting lamps => MaintainedLight.OfLamp(lamps.Lamp, line.Line.StartMethod ?? lamps.Ballasts.FirstOrDefault(ballast => ballast is not null)?.StartMethod),
        TubeFitting tubes => MaintainedLight.OfLed(tubes.Tube),
        LuminaireFitting luminaire => MaintainedLight.OfLed(luminaire.Luminaire),
        _ => throw new ArgumentOutOfRangeException(nameof(line), line.Fitting.GetType().Name, "Unknown kind of fitting."),
    };

    /// <summary>Mean light over mean initial light, as a sheet gives them. [unitless]</summary>
    /// <param name="initial">After 100 h. [lm, above 0]</param>
    /// <param name="mean">At 40 % of rated life. [lm]</param>
    public static double MeanOverInitial(LuminousFlux initial, LuminousFlux mean) => mean / initial;

    /// <summary>Light after some hours, as a share of that when new. [unitless, 0–1]</summary>
    /// <param name="burned">Hours burned since new. [h]</param>
    /// <remarks>s^((t − t₀)/(t₁ − t₀)), and 1 before t₀.</remarks>
    public double At(OperatingTime burned) =>
        burned <= From ? 1 : Math.Pow(Share, (burned.Hours - From.Hours) / (Known.Hours - From.Hours));

    /// <summary>Hours after which light has fallen to a share of that when new; null when it never does. [h]</summary>
    /// <param name="share">Share of the light. [unitless, above 0 to 1]</param>
    /// <exception cref="ArgumentOutOfRangeException">A share outside.</exception>
    public OperatingTime? Until(double share)
    {
        var fallen = Math.Log(Require.InRange(share, double.Epsilon, 1));
        if (Share == 1) return share < 1 ? null : From;
        return OperatingTime.FromHours(From.Hours + fallen / Math.Log(Share) * (Known.Hours - From.Hours));
    }
}
