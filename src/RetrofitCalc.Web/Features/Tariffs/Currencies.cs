using System.Globalization;
using RetrofitCalc.Web.Shared.Fields;

namespace RetrofitCalc.Web.Features.Tariffs;

/// <summary>Currencies a tariff can be in.</summary>
public static class Currencies
{
    private static readonly IReadOnlyList<string> Known =
    [
        .. CultureInfo.GetCultures(CultureTypes.SpecificCultures).Select(c => new RegionInfo(c.Name).ISOCurrencySymbol).Where(c => c.Length == 3 && c.All(char.IsAsciiLetterUpper)).Distinct().Order(),
    ];

    public static IReadOnlyList<Choice<string>> All(string present) =>
        [.. Known.Append(present).Distinct().Order().Select(c => new Choice<string>(c, c))];
}
