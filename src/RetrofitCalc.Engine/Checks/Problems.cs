using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Checks;

/// <summary>Collects problems, each in words a facility manager understands: what it is, the value, what is allowed.</summary>
internal sealed class Problems
{
    /// <summary>More than any quantity of a site or price in any currency. Past it sums could leave what a bill can be rounded in.</summary>
    public const double Largest = 1e9;

    private readonly List<StudyProblem> _found = [];

    public IReadOnlyList<StudyProblem> Found => _found;

    public void Add(string path, string message) => _found.Add(new(path, message));

    public void InRange(string path, string what, double? value, double low, double high)
    {
        if (value is { } number && !(number >= low && number <= high))
            Add(path, $"{what} is {Text(number)}; it must be {Text(low)} to {Text(high)}.");
    }

    public void NotNegative(string path, string what, double? value)
    {
        if (value is { } number && !(number >= 0 && number <= Largest))
            Add(path, $"{what} is {Text(number)}; it must be zero or more{Limit(number)}.");
    }

    public void Positive(string path, string what, double? value)
    {
        if (value is { } number && !(number > 0 && number <= Largest))
            Add(path, $"{what} is {Text(number)}; it must be more than zero{Limit(number)}.");
    }

    /// <summary>A life shorter than this fills any calendar of replacements; a longer one than the highest is a slip of the keyboard.</summary>
    public void Life(string path, string what, OperatingTime? value) => InRange(path, $"{what} (hours)", value?.Hours, 100, 1e6);

    public void Unique(string path, string what, IEnumerable<string> ids)
    {
        var seen = new HashSet<string>();
        foreach (var (index, id) in ids.Index())
            if (string.IsNullOrWhiteSpace(id))
                Add($"{path}[{index}].Id", $"{what} has no id; give it one.");
            else if (!seen.Add(id))
                Add($"{path}[{index}].Id", $"{what} id \"{id}\" is used twice; each must be different.");
    }

    public static string Text(double value) =>
        Math.Abs(value) is 0 or (>= 1e-4 and < 1e15) ? FormattableString.Invariant($"{value:0.####}") : FormattableString.Invariant($"{value:0.####E+0}");

    public static string Limit(double number) => number > Largest ? $" and at most {Text(Largest)}" : "";
}
