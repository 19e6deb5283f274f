using System.Text;

namespace RetrofitCalc.Data;

/// <summary>Text both databases can hold.</summary>
internal static class PlainText
{
    /// <summary>PostgreSQL stores no zero character and no half of a surrogate pair; nobody can type either on purpose.</summary>
    public static string Storable(string text) =>
        text.Contains('\0') || text.Any(char.IsSurrogate)
            ? Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(text.Replace("\0", "")))
            : text;
}
