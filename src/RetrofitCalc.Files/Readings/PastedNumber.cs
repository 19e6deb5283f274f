using System.Globalization;
using System.Text.RegularExpressions;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Readings;

/// <summary>
/// A reading pasted from a spreadsheet that may write numbers otherwise than the site does. A comma before one or two digits parts no
/// thousands, so 250,5 is taken as a decimal where the site's own way cannot read it; 1,234 is left to the site's way.
/// </summary>
public static partial class PastedNumber
{
    /// <summary>The number; null for a blank text.</summary>
    public static Parsed<double?> Parse(string? text, CultureInfo culture)
    {
        var own = NumberText.Parse(text, culture);
        return !own.Ok && DecimalComma().IsMatch(text!.Trim()) ? NumberText.Parse(text.Replace(',', '.'), CultureInfo.InvariantCulture) : own;
    }

    [GeneratedRegex("^[0-9]+,[0-9]{1,2}$")]
    private static partial Regex DecimalComma();
}
