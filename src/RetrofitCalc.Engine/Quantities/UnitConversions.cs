namespace RetrofitCalc.Engine.Quantities;

/// <summary>Conversion constants, each derived from the smaller ones. Sources: docs/sources.md S-01 (unit definitions).</summary>
public static class UnitConversions
{
    /// <summary>Joules in one British thermal unit, International Table. [J/BTU]</summary>
    public const double JoulesPerBtu = 1055.05585262;

    /// <summary>Seconds in one hour. [s/h]</summary>
    public const double SecondsPerHour = 3600;

    /// <summary>Heat rate of one watt: 3.412142 BTU/h. [(BTU/h)/W]</summary>
    public const double BtuPerHourPerWatt = SecondsPerHour / JoulesPerBtu;

    /// <summary>One ton of refrigeration. [(BTU/h)/ton]</summary>
    public const double BtuPerHourPerTon = 12_000;

    /// <summary>One therm. [BTU/therm]</summary>
    public const double BtuPerTherm = 100_000;

    /// <summary>One international foot. [m/ft]</summary>
    public const double MetresPerFoot = 0.3048;

    /// <summary>One avoirdupois pound. [kg/lb]</summary>
    public const double KilogramsPerPound = 0.45359237;

    /// <summary>Watts in one kilowatt. [W/kW]</summary>
    public const double WattsPerKilowatt = 1000;

    /// <summary>Nanometres in one micrometre. [nm/µm]</summary>
    public const double NanometresPerMicrometre = 1000;

    /// <summary>Lux of one foot-candle: one lumen on a square foot, 10.76391. [lx/fc]</summary>
    public const double LuxPerFootCandle = 1 / (MetresPerFoot * MetresPerFoot);
}
