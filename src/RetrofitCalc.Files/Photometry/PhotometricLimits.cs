namespace RetrofitCalc.Files.Photometry;

/// <summary>How much a photometric file may hold: many times what any real one does, little enough to read at once.</summary>
public static class PhotometricLimits
{
    public const int FileMegabytes = 4;
    public const int FileBytes = FileMegabytes * 1024 * 1024;
    public const int Angles = 1000;
    public const int Intensities = 300_000;
    public const int Labels = 1000;

    /// <summary>Largest number of any kind; beyond it a file is broken.</summary>
    public const double LargestNumber = 1e9;
}
