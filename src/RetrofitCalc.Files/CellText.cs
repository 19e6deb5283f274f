namespace RetrofitCalc.Files;

/// <summary>What typed text looks like inside a message.</summary>
internal static class CellText
{
    private const int Enough = 60;

    public static string Quote(string text)
    {
        var flat = text.ReplaceLineEndings(" ");
        return flat.Length <= Enough ? $"\"{flat}\"" : $"\"{flat[..Enough]} …\"";
    }
}
