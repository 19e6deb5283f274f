namespace RetrofitCalc.Files.Photometry;

/// <summary>What a reader of the numbers should know.</summary>
internal static class Lm63Remarks
{
    /// <summary>Lengths of common luminaires. [m]</summary>
    private static readonly double[] CommonMetres = [0.6, 1.2, 1.5, 1.8, 2.4];

    /// <summary>What every intensity is multiplied by; the second factor only up to the form of 1995.</summary>
    public static double Factor(Lm63Edition edition, Lm63Sheet sheet, List<string> notes)
    {
        var factor = sheet.Multiplier * sheet.BallastFactor;
        if (!edition.SecondFactorMultiplies())
        {
            if (edition == Lm63Edition.Of2002 && sheet.Second != 1)
                notes.Add(FormattableString.Invariant($"The number after the ballast factor is {sheet.Second}; in this version it is kept for later use and was not multiplied with."));
            return factor;
        }
        if (sheet.Second > 0) return factor * sheet.Second;
        notes.Add("The ballast–lamp factor is 0, which would leave no light; it was taken as 1.");
        return factor;
    }

    public static void Of(Lm63Head head, Lm63Sheet sheet, Lm63Numbers numbers, List<string> notes)
    {
        if (!head.TiltIncluded && !head.Tilt.Equals("NONE", StringComparison.OrdinalIgnoreCase))
            notes.Add($"The effect of tilt lies in another file, {CellText.Quote(head.Tilt)}; the luminaire was read as not tilted.");
        if (sheet.LumensPerLamp < 0 && sheet.LumensPerLamp != -1)
            notes.Add(FormattableString.Invariant($"The lumens per lamp are {sheet.LumensPerLamp}; below zero means absolute photometry, written −1."));
        if (sheet.Lamps == 0) notes.Add("The file says that there are no lamps; its intensities were read as they are.");
        if (sheet.Watts == 0) notes.Add("The file gives no input watts.");
        if (sheet.Opening is { Width: < 0 } or { Length: < 0 } or { Height: < 0 }) notes.Add("A side below zero stands for a rounded luminous part.");
        if (numbers.OtherSeparators) notes.Add("Numbers are set apart with commas or semicolons; the format has spaces.");
        if (numbers.AnyLeft) notes.Add($"There is text below the last intensity, line {numbers.Line}; it was not read.");
        NoteUnits(sheet, notes);
    }

    public static void OfLines(Lm63Head head, string[] lines, List<string> notes)
    {
        var longest = head.Edition.LongestLine();
        var over = Array.FindIndex(lines, line => line.Length > longest);
        if (over >= 0) notes.Add($"line {over + 1}: the line is longer than the {longest} letters the format allows.");
        if (lines.Skip(head.NumbersFrom).SkipLast(1).Any(string.IsNullOrWhiteSpace)) notes.Add("There are empty lines among the numbers.");
    }

    /// <summary>A side of 1.2 in feet, or of 4 in metres, is more likely in the other unit. Nothing is changed: a person must say.</summary>
    private static void NoteUnits(Lm63Sheet sheet, List<string> notes)
    {
        var longest = Math.Max(Math.Abs(sheet.Opening.Width), Math.Abs(sheet.Opening.Length));
        if (sheet.Units == 1 && CommonMetres.Any(common => Math.Abs(longest - common) <= 0.02 * common))
            notes.Add(FormattableString.Invariant($"The luminous part is {longest} ft long; that would be a common length in metres. Check the unit."));
        if (sheet.Units == 2 && longest is > 2.9 and < 8.1 && Math.Abs(longest - Math.Round(longest)) <= 0.1)
            notes.Add(FormattableString.Invariant($"The luminous part is {longest} m long; that would be a common length in feet. Check the unit."));
    }
}
