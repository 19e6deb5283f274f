using System.Globalization;

namespace RetrofitCalc.Files.Spectra;

/// <summary>How much a spectrum file may hold: far above any instrument, low enough that no file can exhaust the machine.</summary>
public static class SpectrumLimits
{
    public const int FileMegabytes = 4;
    public const int Samples = 20_000;
    public const int Columns = 200;
    public const double ShortestNm = 100;
    public const double LongestNm = 5000;

    internal const int FileBytes = FileMegabytes * 1024 * 1024;

    internal static string TooLarge { get; } = $"The file is larger than {FileMegabytes} MB, far more than a spectrum. Nothing was read.";

    internal static string TooManySamples { get; } =
        string.Create(CultureInfo.InvariantCulture, $"The file has more than {Samples:N0} samples, far more than a spectrum. Nothing was read.");

    internal static string TooManyColumns { get; } = $"The table has more than {Columns} columns. Nothing was read.";
}
