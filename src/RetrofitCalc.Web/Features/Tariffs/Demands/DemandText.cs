using System.Globalization;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Tariffs.Demands;

/// <summary>What a demand charge holds besides its price, in one line.</summary>
public static class DemandText
{
    public static string Details(DemandCharge charge, QuantityText text)
    {
        string?[] parts =
        [
            charge.Blocks.Count > 0 ? $"{charge.Blocks.Count + 1} prices by height" : null,
            charge.Ratchet is { } ratchet ? Ratchet(ratchet, text) : null,
            charge.Minimum is { } least ? $"at least {text.Kilowatts(least)}" : null,
            charge.Rounding is { } rounding ? $"rounded {Direction(rounding.Direction)} {text.Kilowatts(rounding.Step)}" : null,
        ];
        return parts.Any(p => p is not null) ? string.Join("; ", parts.OfType<string>()) : "none";
    }

    public static string Direction(RoundingDirection direction) => direction switch
    {
        RoundingDirection.Up => "up to the next",
        RoundingDirection.Down => "down to the last",
        _ => "to the nearest",
    };

    private static string Ratchet(Ratchet ratchet, QuantityText text)
    {
        var peaks = ratchet.PeakMonths.Count == 0 ? "" : $", peaks of {string.Join(", ", ratchet.PeakMonths.Select(CultureInfo.InvariantCulture.DateTimeFormat.GetAbbreviatedMonthName))}";
        return $"ratchet {text.Percent(ratchet.Share)} of {ratchet.Months} {(ratchet.Months == 1 ? "month" : "months")}{peaks}{(ratchet.AcrossCharges ? ", of all demand charges" : "")}";
    }
}
