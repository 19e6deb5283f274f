using RetrofitCalc.Engine.CropLight;

namespace RetrofitCalc.Files.Photometry;

/// <summary>Angles in rising order, with the place each had in the file.</summary>
internal sealed record Lm63Angles(double[] Degrees, int[] Places)
{
    public static Lm63Angles Of(Lm63Numbers numbers, (int Count, string Name) wanted, PhotometricType type, List<string> notes)
    {
        var found = numbers.Many(wanted.Count, $"{wanted.Name} angle");
        var (low, high) = type != PhotometricType.C ? (-90, 90) : wanted.Name == "vertical" ? (0, 180) : (0, 360);
        foreach (var angle in found)
            if (angle.Value < low || angle.Value > high)
                numbers.Reject(angle, FormattableString.Invariant($"The {wanted.Name} angle {angle.Value} must lie between {low} and {high} degrees for type {type}."));
        int[] places = [.. Enumerable.Range(0, found.Length).OrderBy(i => found[i].Value)];
        for (var i = 1; i < places.Length; i++)
            if (found[places[i]].Value == found[places[i - 1]].Value)
                numbers.Reject(found[places[i]], FormattableString.Invariant($"The {wanted.Name} angle {found[places[i]].Value} stands here for the second time."));
        if (numbers.Problem is null && !places.SequenceEqual(Enumerable.Range(0, places.Length)))
            notes.Add($"line {found[0].Line}: the {wanted.Name} angles do not rise; they were sorted, each with its intensities.");
        return new([.. places.Select(place => found[place].Value)], places);
    }

    /// <summary>Whether the ends are those that the format knows for the type.</summary>
    public static void NoteEnds(PhotometricType type, Lm63Angles vertical, Lm63Angles horizontal, List<string> notes)
    {
        var (first, last) = (vertical.Degrees[0], vertical.Degrees[^1]);
        var verticalKnown = type == PhotometricType.C ? first is 0 or 90 && last is 90 or 180 : first is -90 or 0 && last == 90;
        if (!verticalKnown) notes.Add(FormattableString.Invariant($"The vertical angles run from {first} to {last} degrees; beyond them there is taken to be no light."));
        (first, last) = (horizontal.Degrees[0], horizontal.Degrees[^1]);
        var horizontalKnown = type != PhotometricType.C
            ? first is -90 or 0 && last == 90
            : horizontal.Degrees.Length == 1 ? first == 0 : (first, last) is (0, 90) or (0, 180) or (0, 360) or (90, 270);
        if (horizontalKnown) return;
        var rule = type != PhotometricType.C ? "beyond them the intensity of the last was taken"
            : horizontal.Degrees.Length == 1 ? "one plane was taken for all" : "between the last and the first a straight line was taken";
        notes.Add(FormattableString.Invariant($"The horizontal angles run from {first} to {last} degrees; {rule}."));
    }
}
