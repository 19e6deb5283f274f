namespace RetrofitCalc.Engine.Cases;

/// <summary>What was worked out lately, by what it follows from. Forgets everything once it holds many: thousands of draws never ask twice.</summary>
/// <remarks>Ranges of an option ask for some fifteen cases and every option for the same ones; break-even and waiting for a few more.</remarks>
internal sealed class Recent<TKey, TValue>(Func<TKey, TValue> work)
    where TKey : notnull
{
    private const int Most = 24;

    private readonly Dictionary<TKey, TValue> _known = new(Most);

    public TValue Of(TKey key)
    {
        if (_known.TryGetValue(key, out var known))
            return known;
        if (_known.Count == Most)
            _known.Clear();
        return _known[key] = work(key);
    }
}
