namespace RetrofitCalc.Files.Surveys.Tables;

/// <summary>Finds the mark between the columns of a text table.</summary>
internal static class Separator
{
    private const int LinesLookedAt = 10;
    private static readonly char[] Candidates = [';', '\t', ',', '|'];

    /// <summary>The mark that parts most lines into as many cells as the first; a comma when nothing parts the first.</summary>
    public static char Of(string sample)
    {
        var lines = Lines(sample).Take(LinesLookedAt).ToList();
        var best = (Mark: ',', Agreeing: 0, Cells: 0);
        foreach (var mark in Candidates)
        {
            var counts = lines.Select(line => CountOutsideQuotes(line, mark)).ToList();
            if (counts.Count == 0 || counts[0] == 0) continue;
            var agreeing = counts.Count(c => c == counts[0]);
            if ((agreeing, counts[0]).CompareTo((best.Agreeing, best.Cells)) > 0) best = (mark, agreeing, counts[0]);
        }
        return best.Mark;
    }

    private static IEnumerable<string> Lines(string sample)
    {
        var start = 0;
        var quoted = false;
        for (var i = 0; i <= sample.Length; i++)
        {
            if (i < sample.Length && sample[i] == '"') quoted = !quoted;
            if (i < sample.Length && (quoted || sample[i] is not ('\n' or '\r'))) continue;
            if (i > start) yield return sample[start..i];
            start = i + 1;
        }
    }

    private static int CountOutsideQuotes(string line, char mark)
    {
        var (count, quoted) = (0, false);
        foreach (var letter in line)
            if (letter == '"') quoted = !quoted;
            else if (letter == mark && !quoted) count++;
        return count;
    }
}
