using System.Globalization;

namespace RetrofitCalc.Files.Meters.Espi;

/// <summary>What the numbers of a row of readings mean: the codes of REQ.21's ReadingType.</summary>
internal sealed class EspiReadingType
{
    private const int WattHours = 72;
    private const int Watts = 38;
    private const int LargestPower = 12;
    private const int Reverse = 19;

    private static readonly Dictionary<int, string> Units = new()
    {
        [WattHours] = "Wh", [Watts] = "W", [71] = "VAh", [61] = "VA", [73] = "varh", [63] = "var", [29] = "V", [5] = "A", [65] = "power factor", [33] = "Hz", [106] = "Ah",
        [169] = "therms", [119] = "cubic feet", [42] = "cubic metres", [132] = "BTU", [133] = "BTU/h", [128] = "US gallons", [80] = "money", [111] = "counts",
    };

    private readonly Dictionary<string, int> _codes = [];

    public void Set(string name, string text)
    {
        if (int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var code)) _codes[name] = code;
    }

    private int? Code(string name) => _codes.TryGetValue(name, out var code) ? code : null;

    public int? IntervalLength => Code("intervallength");

    public bool IsPower => Code("uom") == Watts;

    public bool IsReverse => Code("flowdirection") == Reverse;

    /// <summary>1 bulk quantity, 2 continuous cumulative, 3 cumulative, 9 summation: a register that only grows.</summary>
    public bool IsRegister => !IsPower && Code("accumulationbehaviour") is 1 or 2 or 3 or 9;

    /// <summary>Of one unit of value, in Wh or W.</summary>
    public double Scale => Math.Pow(10, Code("poweroftenmultiplier") ?? 0);

    /// <summary>Why readings of this type cannot be a load; null when they can.</summary>
    public string? Refusal => (Code("uom"), Code("poweroftenmultiplier")) switch
    {
        (null, _) => "The file does not say what unit its numbers are in.",
        (not (WattHours or Watts), _) => $"It measures {UnitName}; energy in Wh or power in W is needed.",
        (_, < -LargestPower or > LargestPower) => $"Its power-of-ten multiplier is {Code("poweroftenmultiplier")}; −{LargestPower} to {LargestPower} is possible.",
        _ => null,
    };

    public string About => $"{(IsPower ? "power" : "energy")}{(IsReverse ? " sent out" : Code("flowdirection") == 1 ? " taken in" : "")}, {UnitName}{Every}{(IsRegister ? ", register" : "")}";

    private string Every => IntervalLength is { } seconds and > 0 ? FormattableString.Invariant($", every {seconds / 60.0:0.##} min") : "";

    private string UnitName => Code("uom") is { } uom ? Units.GetValueOrDefault(uom, $"unit code {uom}") : "no unit";
}
