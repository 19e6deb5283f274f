using System.Text.RegularExpressions;

namespace RetrofitCalc.Files.Meters.Tables;

/// <summary>Words that utilities put above the columns of interval data.</summary>
internal static partial class MeterWords
{
    /// <summary>The unit a heading names or means.</summary>
    public static MeterUnit? UnitOf(string heading) =>
        KilowattHours().IsMatch(heading) ? MeterUnit.KilowattHours
        : WattHours().IsMatch(heading) ? MeterUnit.WattHours
        : Kilowatts().IsMatch(heading) ? MeterUnit.Kilowatts
        : Watts().IsMatch(heading) ? MeterUnit.Watts
        : EnergyWords().IsMatch(heading) ? MeterUnit.KilowattHours
        : PowerWords().IsMatch(heading) ? MeterUnit.Kilowatts
        : null;

    /// <summary>The unit a cell of a column of units names.</summary>
    public static MeterUnit? UnitAlone(string cell) => cell.Trim().ToUpperInvariant() switch
    {
        "KWH" => MeterUnit.KilowattHours, "WH" => MeterUnit.WattHours, "KW" => MeterUnit.Kilowatts, "W" => MeterUnit.Watts, _ => null,
    };

    /// <summary>How likely a heading stands above the load. [points]</summary>
    public static int ScoreOf(string heading) =>
        (KilowattHours().IsMatch(heading) ? 6 : WattHours().IsMatch(heading) || Kilowatts().IsMatch(heading) ? 5 : Watts().IsMatch(heading) ? 4 : 0)
        + (EnergyWords().IsMatch(heading) || PowerWords().IsMatch(heading) ? 2 : 0) - (OtherWords().IsMatch(heading) ? 8 : 0);

    public static StampMeaning? MeaningOf(string heading) =>
        StartWords().IsMatch(heading) ? StampMeaning.Start : EndWords().IsMatch(heading) ? StampMeaning.End : null;

    public static bool IsUtc(string heading) => UtcWords().IsMatch(heading);

    public static bool IsTime(string heading) => TimeWords().IsMatch(heading);

    private const RegexOptions Loose = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant;

    [GeneratedRegex(@"kwh|kilowatt[- ]?hours?", Loose)]
    private static partial Regex KilowattHours();

    [GeneratedRegex(@"\bwh\b|\bwatt[- ]?hours?", Loose)]
    private static partial Regex WattHours();

    [GeneratedRegex(@"\bkw\b|kilowatts?\b", Loose)]
    private static partial Regex Kilowatts();

    [GeneratedRegex(@"\bw\b|\bwatts?\b", Loose)]
    private static partial Regex Watts();

    [GeneratedRegex(@"usage|consum|energy|use\b|import|delivered|value|reading|verbrauch", Loose)]
    private static partial Regex EnergyWords();

    [GeneratedRegex(@"demand|power|load|leistung", Loose)]
    private static partial Regex PowerWords();

    [GeneratedRegex(@"kva|reactive|factor|volt|amp|temp|cost|price|amount|charge|generat|export|received|quality|status|\bid\b|meter\b|account|serial|multiplier", Loose)]
    private static partial Regex OtherWords();

    [GeneratedRegex(@"start|begin|from\b", Loose)]
    private static partial Regex StartWords();

    [GeneratedRegex(@"\bend|ending|\bto\b|until", Loose)]
    private static partial Regex EndWords();

    [GeneratedRegex(@"\butc\b|\bgmt\b|zulu", Loose)]
    private static partial Regex UtcWords();

    [GeneratedRegex(@"time|hour|clock|zeit", Loose)]
    private static partial Regex TimeWords();
}
