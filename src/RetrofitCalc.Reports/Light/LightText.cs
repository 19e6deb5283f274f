using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Reports;

/// <summary>Figures of light as a reader sees them.</summary>
public static class LightText
{
    public const string LightUnit = "µmol/m²·s";
    public const string DailyUnit = "mol/m² a day";
    private const string NoBreak = "\u00A0";

    /// <summary>"182 µmol/m²·s".</summary>
    public static string Light(this QuantityText text, PhotonFluxDensity light) => text.Number(light.MicromolesPerSquareMetre) + NoBreak + LightUnit;

    /// <summary>"10.5 mol/m² a day".</summary>
    public static string Daily(this QuantityText text, DailyLight light) => text.DailyNumber(light) + NoBreak + DailyUnit;

    /// <summary>"10.5", for table cells whose unit stands in the head.</summary>
    public static string DailyNumber(this QuantityText text, DailyLight light) => text.Number(light.MolesPerSquareMetre, 1);

    /// <summary>"300 lx", with foot-candles beside it where people count in them.</summary>
    public static string Illuminance(this QuantityText text, Illuminance light) =>
        text.Number(light.Lux) + NoBreak + "lx" + (text.Units == UnitSystem.UsCustomary ? $" ({text.Number(light.FootCandles)}{NoBreak}fc)" : "");

    /// <summary>"0.56": lowest over mean.</summary>
    public static string Evenness(this QuantityText text, double? ratio) => ratio is { } share ? text.Number(share, 2) : QuantityText.DoesNotApply;

    /// <summary>A place on a bench: tenths of an inch where people count in inches, else centimetres of a metre.</summary>
    public static string Place(this QuantityText text, double metres)
    {
        if (text.Units == UnitSystem.Metric) return text.Number(metres, 2);
        var inches = Math.Round(metres / UnitConversions.MetresPerFoot * 12, 1);
        return text.Number(inches, inches == Math.Round(inches) ? 0 : 1);
    }

    /// <summary>Unit of <see cref="Place"/>.</summary>
    public static string PlaceUnit(this QuantityText text) => text.Units == UnitSystem.Metric ? "m" : "in";

    /// <summary>"+5 %", "−3 %" or "0 %".</summary>
    public static string Change(this QuantityText text, double share) =>
        (Math.Round(share * 100, MidpointRounding.AwayFromZero) > 0 ? "+" : "") + text.Percent(share);

    /// <summary>" ± 4 %", or nothing where nobody knows how far it may be off.</summary>
    public static string GiveOrTake(this QuantityText text, double? share) => share is { } off ? $" ±{NoBreak}{text.Percent(off)}" : "";
}
