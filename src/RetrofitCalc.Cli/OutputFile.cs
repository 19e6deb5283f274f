namespace RetrofitCalc.Cli;

/// <summary>Writes a new file, and over an old one only when asked to: what is there may be the only copy.</summary>
internal static class OutputFile
{
    public static void Write(string path, byte[] content, bool overwrite = false)
    {
        using var file = new FileStream(path, overwrite ? FileMode.Create : FileMode.CreateNew, FileAccess.Write);
        file.Write(content);
    }
}
