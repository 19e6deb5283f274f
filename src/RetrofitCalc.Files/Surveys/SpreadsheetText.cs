namespace RetrofitCalc.Files.Surveys;

/// <summary>
/// Guards text against being run as a formula when a spreadsheet opens the file: an apostrophe goes before
/// = + - @ tab and line end (the list OWASP gives for CSV injection), and before an apostrophe, so that it can be taken off again.
/// </summary>
public static class SpreadsheetText
{
    private const string Risky = "=+-@\t\r\n'";

    public static string Guard(string text) => text.Length > 0 && Risky.Contains(text[0]) ? "'" + text : text;

    /// <summary>Takes off the apostrophe that <see cref="Guard"/> put on.</summary>
    public static string Unguard(string text) => text.Length > 1 && text[0] == '\'' && Risky.Contains(text[1]) ? text[1..] : text;
}
