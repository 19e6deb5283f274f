namespace RetrofitCalc.Files.Meters;

/// <summary>How much a meter file may hold: ten years of five-minute readings fit, and no file can exhaust the machine.</summary>
public static class MeterLimits
{
    public const int FileMegabytes = 200;
    public const int Readings = 2_000_000;

    internal const long FileBytes = FileMegabytes * 1024L * 1024;
    internal const int Entries = 200_000;
    internal const int XmlLevels = 64;
    internal const int ProblemsNamed = 100;

    public static string TooLarge { get; } =
        $"The file is larger than {FileMegabytes} MB, the most a meter file may have. Nothing was read. Export fewer years at a time.";

    internal static string TooManyReadings { get; } = FormattableString.Invariant(
        $"The file holds more than {Readings:N0} readings, the most that can be read at once. Nothing was read. Export fewer years at a time.");
}
