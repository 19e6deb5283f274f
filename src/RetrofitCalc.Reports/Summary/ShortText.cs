namespace RetrofitCalc.Reports;

/// <summary>Names cut to a length where the full name stands elsewhere.</summary>
internal static class ShortText
{
    public static string Of(string text, int longest) => text.Length <= longest ? text : text[..(longest - 1)].TrimEnd() + "…";
}
