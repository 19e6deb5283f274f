using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Lifetimes;

/// <summary>What the policy makes of a rated life (E-71).</summary>
/// <remarks>
/// By light, tubes and luminaires are changed at the same share as lamps: otherwise lamps would pay for keeping their light and LED would
/// not. Nothing stays longer than its rated life, when half of the lamps have failed.
/// </remarks>
internal static class RelampRules
{
    /// <summary>Whether all lamps of a line are changed in one visit.</summary>
    public static bool Together(Assumptions assumptions) => assumptions.RelampPolicy is RelampPolicy.Group or RelampPolicy.Light;

    /// <summary>Hours between changes of the lamps of a line.</summary>
    public static OperatingTime OfLamps(FittedLine fitted, OperatingTime rated, Assumptions assumptions) => assumptions.RelampPolicy switch
    {
        RelampPolicy.Group => RatedLives.GroupRelamp(rated, assumptions.GroupRelampShare),
        RelampPolicy.Light => ByLight(fitted, rated, assumptions.LightRelampShare),
        _ => rated,
    };

    /// <summary>Hours between changes of tubes or luminaires.</summary>
    public static OperatingTime OfReplacements(FittedLine fitted, OperatingTime quotable, Assumptions assumptions) =>
        assumptions.RelampPolicy == RelampPolicy.Light ? ByLight(fitted, quotable, assumptions.LightRelampShare) : quotable;

    private static OperatingTime ByLight(FittedLine fitted, OperatingTime rated, double share) =>
        LumenMaintenance.Of(fitted).Until(share) is { } until && until < rated ? until : rated;
}
