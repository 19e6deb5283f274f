namespace RetrofitCalc.Files.Tariffs;

/// <summary>Text of a record as one line that a page and a bill can hold.</summary>
internal static class RecordText
{
    private const int Longest = 200;

    public static string Line(string text)
    {
        var line = string.Join(' ', new string([.. text.Select(c => char.IsControl(c) ? ' ' : c)]).Split(' ', StringSplitOptions.RemoveEmptyEntries));
        if (line.Length <= Longest)
            return line;
        var end = char.IsHighSurrogate(line[Longest - 1]) ? Longest - 1 : Longest;
        return line[..end].TrimEnd() + " …";
    }
}
