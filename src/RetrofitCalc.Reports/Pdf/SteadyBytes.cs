using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using NodaTime;

namespace RetrofitCalc.Reports.Pdf;

/// <summary>Takes out what the writer draws from chance and the clock, so that the same request gives the same bytes. Lengths stay, and with them all offsets.</summary>
/// <remarks>Font subsets get six random letters, attachments the time of writing, and the metadata identifiers of its own.</remarks>
internal static partial class SteadyBytes
{
    public static byte[] Of(byte[] pdf, LocalDate day)
    {
        var names = new Dictionary<string, string>();
        var text = Encoding.Latin1.GetString(pdf);
        text = Subset().Replace(text, match => names.TryGetValue(match.Value, out var name) ? name : names[match.Value] = "RETRO" + (char)('A' + names.Count));
        text = Moment().Replace(text, $"{day.Year:D4}{day.Month:D2}{day.Day:D2}000000");
        text = Identifier().Replace(text, Guid.Empty.ToString());
        return Encoding.Latin1.GetBytes(text.Replace(Guid.Empty.ToString(), IdentifierOf(text).ToString(), StringComparison.Ordinal));
    }

    /// <summary>Documents that differ get identifiers that differ.</summary>
    private static Guid IdentifierOf(string text) => new(SHA256.HashData(Encoding.Latin1.GetBytes(text)).AsSpan(0, 16));

    [GeneratedRegex("(?<=uuid:)[0-9a-f-]{36}")]
    private static partial Regex Identifier();

    [GeneratedRegex(@"(?<=/)[A-Z]{6}(?=\+DejaVu)")]
    private static partial Regex Subset();

    [GeneratedRegex(@"(?<=/(?:Creation|Mod)Date\(D:)\d{14}")]
    private static partial Regex Moment();
}
