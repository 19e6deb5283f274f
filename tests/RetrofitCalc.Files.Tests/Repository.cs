namespace RetrofitCalc.Files.Tests;

/// <summary>Finds files of the repository from wherever the tests were built.</summary>
internal static class Repository
{
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    public static string PathOf(string path) => Path.Combine(Root, path);

    private static string Find(string folder) => File.Exists(Path.Combine(folder, "RetrofitCalc.sln"))
        ? folder
        : Find(Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("RetrofitCalc.sln stands in no folder above the tests."));
}
