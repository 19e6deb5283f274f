namespace RetrofitCalc.Reports;

/// <summary>Keeps text that people typed from running as a formula when a spreadsheet opens it.</summary>
/// <remarks>A leading =, +, −, @, tab or line break gets an apostrophe before it (OWASP, CSV Injection, from memory). Plain numbers pass.</remarks>
internal static class FormulaGuard
{
    private static readonly System.Buffers.SearchValues<char> Dangerous = System.Buffers.SearchValues.Create("=+-@\t\r\n");

    public static string Text(string text)
    {
        var start = text.AsSpan().TrimStart(" \u00A0\uFEFF");
        return start.Length > 0 && Dangerous.Contains(start[0]) ? "'" + text : text;
    }
}
