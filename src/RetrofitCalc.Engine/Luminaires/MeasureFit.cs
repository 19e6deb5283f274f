using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Luminaires;

/// <summary>Why a product cannot take the place of what is on a line.</summary>
public static class MeasureFit
{
    /// <summary>Nominal lengths closer than this are the same: 4 ft is sold as 1.2 m and as 1.219 m.</summary>
    private static readonly Length SameLength = Length.FromMetres(0.025);

    /// <summary>Why a tube does not fit; null when it does.</summary>
    /// <param name="line">The survey line.</param>
    /// <param name="old">What is fitted now.</param>
    /// <param name="tube">The tube.</param>
    /// <param name="tubes">Tubes in one luminaire. [count]</param>
    public static string? Refusal(SurveyLine line, BallastedFitting old, DirectWireTube tube, int tubes)
    {
        if (tube.Base != old.Lamp.Base)
            return $"{tube.Name} has base {tube.Base}, but the lampholders here take {old.Lamp.Base} ({old.Lamp.Name}). Choose a tube with base {old.Lamp.Base}.";
        if (!IsSame(tube.Length, old.Lamp.Length))
            return $"{tube.Name} is {Feet(tube.Length)} long, but the lamps here are {Feet(old.Lamp.Length)}. Choose a tube of {Feet(old.Lamp.Length)}.";
        if (tubes > old.SetUp.LampCount)
            return $"{tubes} tubes are asked for, but the luminaire has {old.SetUp.LampCount} lamp positions. Ask for {old.SetUp.LampCount} or fewer.";
        return VoltageRefusal(line, tube);
    }

    /// <summary>Why a product cannot be fed from a line's supply; null when it can, or when the voltage is not known.</summary>
    /// <param name="line">The survey line.</param>
    /// <param name="product">The product.</param>
    public static string? VoltageRefusal(SurveyLine line, Replacement product) =>
        line.SupplyVolts is { } volts && product.Voltage is { } range && (volts < range.Lowest || volts > range.Highest)
            ? $"{product.Name} takes {Plain(range.Lowest)} to {Plain(range.Highest)} V, but the supply here is {Plain(volts)} V. Choose a product for {Plain(volts)} V."
            : null;

    private static bool IsSame(Length one, Length other) => Math.Abs(one.Metres - other.Metres) < SameLength.Metres;

    private static string Feet(Length length) => $"{Plain(Math.Round(length.Feet, 1))} ft";

    private static string Plain(double value) => FormattableString.Invariant($"{value}");
}
