namespace RetrofitCalc.Files.Surveys;

/// <summary>How alike two short texts are.</summary>
internal static class Closeness
{
    /// <summary>Twice the pairs of letters in common over all pairs (Dice 1945): 1 for the same text, 0 for nothing in common.</summary>
    public static double Of(string left, string right)
    {
        if (left == right) return 1;
        var (ours, theirs) = (Pairs(left), Pairs(right));
        if (ours.Count + theirs.Count == 0) return 0;
        var common = 0;
        foreach (var pair in ours)
            if (theirs.Remove(pair)) common++;
        return 2.0 * common / (Math.Max(left.Length - 1, 0) + Math.Max(right.Length - 1, 0));
    }

    private static List<string> Pairs(string text) => Enumerable.Range(0, Math.Max(0, text.Length - 1)).Select(i => text.Substring(i, 2)).ToList();
}
