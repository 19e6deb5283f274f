using System.Globalization;

namespace RetrofitCalc.Reports;

/// <summary>Number format of a culture with the sign of a given currency.</summary>
internal static class CurrencyFormat
{
    public static NumberFormatInfo For(CultureInfo culture, string currency)
    {
        var numbers = (NumberFormatInfo)culture.NumberFormat.Clone();
        if (IsHome(culture, currency)) return numbers;
        // A foreign dollar or krone printed with the home sign would be read as home money: show the code instead.
        numbers.CurrencySymbol = Unmistakable.GetValueOrDefault(currency, currency);
        if (numbers.CurrencySymbol == currency) numbers.CurrencyPositivePattern |= 2; // 0 "$n" and 1 "n$" become 2 "$ n" and 3 "n $"
        return numbers;
    }

    /// <summary>No-break spaces, and none of the direction marks some cultures add: English sentences run one way.</summary>
    public static string Clean(string amount) =>
        amount.Replace(' ', '\u00A0').Replace("\u200E", "", StringComparison.Ordinal).Replace("\u200F", "", StringComparison.Ordinal);

    private static readonly Dictionary<string, string> Unmistakable = new()
    {
        ["EUR"] = "€", ["GBP"] = "£", ["INR"] = "₹", ["ILS"] = "₪", ["UAH"] = "₴",
    };

    private static bool IsHome(CultureInfo culture, string currency) =>
        !culture.IsNeutralCulture && culture.Name.Length > 0 && new RegionInfo(culture.Name).ISOCurrencySymbol == currency;
}
