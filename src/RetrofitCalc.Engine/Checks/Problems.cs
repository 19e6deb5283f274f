namespace RetrofitCalc.Engine.Checks;

/// <summary>Collects problems, each in words a facility manager understands: what it is, the value, what is allowed.</summary>
internal sealed class Problems
{
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
        if (value is { } number && !(number >= 0 && double.IsFinite(number)))
            Add(path, $"{what} is {Text(number)}; it must be zero or more.");
    }

    public void Positive(string path, string what, double? value)
    {
        if (value is { } number && !(number > 0 && double.IsFinite(number)))
            Add(path, $"{what} is {Text(number)}; it must be more than zero.");
    }

    public void Unique(string path, string what, IEnumerable<string> ids)
    {
        var seen = new HashSet<string>();
        foreach (var (index, id) in ids.Index())
            if (string.IsNullOrWhiteSpace(id))
                Add($"{path}[{index}].Id", $"{what} has no id; give it one.");
            else if (!seen.Add(id))
                Add($"{path}[{index}].Id", $"{what} id \"{id}\" is used twice; each must be different.");
    }

    public static string Text(double value) => FormattableString.Invariant($"{value:0.####}");
}
