namespace RetrofitCalc.Files.Photometry;

/// <summary>What stands above the numbers: version, labels and the TILT line.</summary>
internal sealed record Lm63Head(Lm63Edition Edition, IReadOnlyList<PhotometricLabel> Labels, string Tilt, int NumbersFrom)
{
    public bool TiltIncluded => Tilt.Equals("INCLUDE", StringComparison.OrdinalIgnoreCase);

    public static Parsed<Lm63Head> Of(string[] lines, List<string> notes)
    {
        var tilt = Array.FindIndex(lines, line => TiltOf(line) is not null);
        if (tilt < 0) return Parsed.Bad<Lm63Head>(new FileProblem(lines.Length, null, "", "No line with TILT= was found. This is not an IES LM-63 file, or it is cut off."));
        if (tilt > PhotometricLimits.Labels) return Parsed.Bad<Lm63Head>(new FileProblem(tilt + 1, null, "", $"More than {PhotometricLimits.Labels} lines stand above TILT=."));
        var above = lines[..tilt];
        if (above.Any(string.IsNullOrWhiteSpace)) notes.Add("There are empty lines among the labels.");
        string[] written = [.. above.Where(line => !string.IsNullOrWhiteSpace(line)).Select(line => line.Trim())];
        var named = written.Length > 0 ? Lm63Editions.Of(written[0]) : null;
        if (named is null) notes.Add(NoVersion(written));
        var edition = named ?? Lm63Edition.Of1986;
        PhotometricLabel[] labels = [.. written.Skip(named is null ? 0 : 1).Select(line => LabelOf(line, notes))];
        NoteMissing(edition, labels, notes);
        if (lines[tilt] is var line && line.TrimEnd() != "TILT=" + TiltOf(line)) notes.Add($"line {tilt + 1}: {CellText.Quote(line.Trim())} should be written TILT=, without spaces or small letters.");
        return Parsed.Good(new Lm63Head(edition, labels, TiltOf(lines[tilt])!, tilt + 1));
    }

    private static string NoVersion(string[] written) =>
        written.FirstOrDefault(line => line.Contains("LM-63", StringComparison.OrdinalIgnoreCase) || line.StartsWith("IES", StringComparison.OrdinalIgnoreCase)) is { } other
            ? $"{CellText.Quote(other)} names no known version: the file was read as the form of 1986."
            : "There is no version line: the file was read as the form of 1986, in which the ballast–lamp factor multiplies.";

    private static void NoteMissing(Lm63Edition edition, PhotometricLabel[] labels, List<string> notes)
    {
        string[] missing = [.. edition.RequiredKeywords().Where(word => !labels.Any(label => label.Keyword.Equals(word, StringComparison.OrdinalIgnoreCase)))];
        if (missing.Length > 0) notes.Add($"Keywords that this version requires are missing: {string.Join(", ", missing)}.");
    }

    /// <summary>[KEYWORD] text, and [KEYWORD=text] as some write it; anything else is free text.</summary>
    private static PhotometricLabel LabelOf(string line, List<string> notes)
    {
        var end = line.IndexOf(']');
        if (line[0] != '[' || end < 0) return new("", line);
        var (word, rest) = (line[1..end], line[(end + 1)..].Trim());
        var equals = word.IndexOf('=');
        if (equals < 0) return new(word.Trim(), rest);
        var keyword = word[..equals].Trim();
        if (notes.Count < MostNotes) notes.Add($"The label {CellText.Quote(line)} has its text within the brackets; the word before the sign is its keyword.");
        return new(keyword, $"{word[(equals + 1)..].Trim()} {rest}".Trim());
    }

    private const int MostNotes = 20;

    private static string? TiltOf(string line)
    {
        var text = line.TrimStart();
        if (!text.StartsWith("TILT", StringComparison.OrdinalIgnoreCase)) return null;
        var after = text[4..].TrimStart();
        return after.StartsWith('=') ? after[1..].Trim() : null;
    }
}
