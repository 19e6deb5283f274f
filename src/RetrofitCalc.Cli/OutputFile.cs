namespace RetrofitCalc.Cli;

/// <summary>Writes a new file and never over an old one: what is there may be the only copy.</summary>
internal static class OutputFile
{
    public static void Write(string path, byte[] content)
    {
        using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
        file.Write(content);
    }
}
