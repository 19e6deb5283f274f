using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Economics;

/// <summary>Electrician's time for one luminaire where the study gives none.</summary>
/// <remarks>
/// Typical planning times, common practice without a published source; time one trial bay and replace them. Each holds
/// 3 min to box and log old lamps and ballast, and for conversions 4 min to label, test and record.
/// </remarks>
public static class MeasureLabour
{
    /// <summary>New lamps and ballast, whole room: 15 min ballast + 6 min lamps + 3 min boxing.</summary>
    public static OperatingTime Renewal { get; } = OperatingTime.FromMinutes(15 + 6 + 3);

    /// <summary>Direct-wire, holders kept: 20 min + 4 min label and test + 3 min boxing.</summary>
    public static OperatingTime DirectWire { get; } = OperatingTime.FromMinutes(20 + 4 + 3);

    /// <summary>Whole luminaire in the same place: 40 min + 4 min label and test + 3 min boxing.</summary>
    public static OperatingTime NewLuminaire { get; } = OperatingTime.FromMinutes(40 + 4 + 3);

    /// <summary>Time for one luminaire fitted under a measure.</summary>
    /// <param name="measure">The measure.</param>
    public static OperatingTime For(Measure measure) => measure switch
    {
        RenewLikeForLike => Renewal,
        Studies.DirectWire => DirectWire,
        ReplaceLuminaire => NewLuminaire,
        _ => OperatingTime.Zero,
    };
}
