namespace RetrofitCalc.Files.Surveys.Tables;

/// <summary>How much a table may hold. Far above any survey, low enough that no file can exhaust the machine.</summary>
public static class TableLimits
{
    public const int Rows = 20_000;
    public const int Columns = 200;
    public const int CellCharacters = 32_767;
    public const int Characters = 40_000_000;
    public const int FileMegabytes = 64;

    internal const int FileBytes = FileMegabytes * 1024 * 1024;

    internal static string TooManyRows { get; } = FormattableString.Invariant(
        $"The table has more than {Rows:N0} rows, the most that can be imported at once. Nothing was read. Split it, or leave out rows that are not survey lines.");

    internal static string TooManyColumns { get; } =
        $"The table has more than {Columns} columns. Nothing was read. Keep the columns of the survey and try again.";

    internal static string CellTooLong { get; } = FormattableString.Invariant(
        $"A cell has more than {CellCharacters:N0} characters. Nothing was read. Is a quotation mark left open?");

    public static string TooLarge { get; } =
        $"The file holds more than a survey can (the limit is {FileMegabytes} MB of file and {Characters / 1_000_000} million characters). Nothing was read.";
}
