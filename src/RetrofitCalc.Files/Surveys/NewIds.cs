namespace RetrofitCalc.Files.Surveys;

/// <summary>Ids nobody uses yet: line-1, line-2 and so on.</summary>
public sealed class NewIds(string stem, IEnumerable<string> taken)
{
    private readonly HashSet<string> _taken = [.. taken];
    private int _last;

    public string Next()
    {
        string id;
        do id = $"{stem}-{++_last}";
        while (!_taken.Add(id));
        return id;
    }
}
