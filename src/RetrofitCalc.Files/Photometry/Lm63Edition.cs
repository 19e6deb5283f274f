namespace RetrofitCalc.Files.Photometry;

/// <summary>Forms of IES LM-63.</summary>
public enum Lm63Edition
{
    /// <summary>No version line; labels are free text.</summary>
    Of1986,
    Of1991,
    Of1995,
    Of2002,
    Of2019,
}

internal static class Lm63Editions
{
    /// <summary>First lines, as the forms have them.</summary>
    private static readonly Dictionary<string, Lm63Edition> Lines = new(StringComparer.OrdinalIgnoreCase)
    {
        ["IESNA91"] = Lm63Edition.Of1991,
        ["IESNA:LM-63-1986"] = Lm63Edition.Of1986,
        ["IESNA:LM-63-1991"] = Lm63Edition.Of1991,
        ["IESNA:LM-63-1995"] = Lm63Edition.Of1995,
        ["IESNA:LM-63-2002"] = Lm63Edition.Of2002,
        ["IES:LM-63-2019"] = Lm63Edition.Of2019,
    };

    public static Lm63Edition? Of(string line) =>
        Lines.TryGetValue(string.Concat(line.Where(letter => !char.IsWhiteSpace(letter))), out var edition) ? edition : null;

    /// <summary>The first form, whose second factor still multiplies, ends with 1995 (LM-63-2002 made it a number for later use).</summary>
    public static bool SecondFactorMultiplies(this Lm63Edition edition) => edition <= Lm63Edition.Of1995;

    /// <summary>Keywords a file must have: those of 2002, kept in 2019.</summary>
    public static IReadOnlyList<string> RequiredKeywords(this Lm63Edition edition) =>
        edition >= Lm63Edition.Of2002 ? ["TEST", "TESTLAB", "ISSUEDATE", "MANUFAC"] : [];

    /// <summary>Longest line: 132 with numbers to 1995, 256 later (from memory).</summary>
    public static int LongestLine(this Lm63Edition edition) => edition <= Lm63Edition.Of1995 ? 132 : 256;
}
