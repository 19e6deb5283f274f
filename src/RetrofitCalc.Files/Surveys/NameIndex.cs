using System.Globalization;
using System.Text;

namespace RetrofitCalc.Files.Surveys;

/// <summary>Finds things by name or id whatever the case and spacing, and suggests what was meant.</summary>
internal sealed class NameIndex
{
    private readonly Dictionary<string, string> _exact = [];
    private readonly Dictionary<string, string?> _loose = [];
    private readonly List<(string Name, string Key)> _names = [];

    public NameIndex(IEnumerable<(string Id, string Name)> things)
    {
        foreach (var (id, name) in things)
        {
            foreach (var word in new[] { name, id })
            {
                _exact.TryAdd(word, id);
                if (!_loose.TryAdd(Key(word), id) && _loose[Key(word)] != id) _loose[Key(word)] = null;
            }
            _names.Add((name, Key(name)));
        }
    }

    /// <summary>Id of what a text names; null when nothing, or more than one thing, has that name.</summary>
    public string? Find(string text) => _exact.GetValueOrDefault(text) ?? _loose.GetValueOrDefault(Key(text));

    /// <summary>Up to three names that resemble a text, the closest first.</summary>
    public IReadOnlyList<string> Suggest(string text)
    {
        const int longestWorthwhile = 100;
        var key = Key(text);
        if (key.Length is 0 or > longestWorthwhile) return [];
        return _names.Select(n => (n.Name, Share: n.Key.StartsWith(key, StringComparison.Ordinal) ? 1 : Closeness.Of(key, n.Key)))
            .Where(n => n.Share >= 0.55)
            .OrderByDescending(n => n.Share)
            .Select(n => n.Name).Distinct().Take(3).ToList();
    }

    /// <summary>Letters and digits in lower case, × as x, and the mark inside a decimal number; all other marks only separate.</summary>
    public static string Key(string text)
    {
        var plain = Composed(text);
        var key = new StringBuilder(plain.Length);
        for (var i = 0; i < plain.Length; i++)
            if (char.IsLetterOrDigit(plain[i]) || char.IsSurrogate(plain[i]) || CharUnicodeInfo.GetUnicodeCategory(plain[i]) == UnicodeCategory.NonSpacingMark) key.Append(char.ToLowerInvariant(plain[i]));
            else if (plain[i] == '×') key.Append('x');
            else if (IsInsideNumber(plain, i)) key.Append('.');
        return key.ToString();
    }

    private static bool IsInsideNumber(string text, int at) =>
        text[at] is '.' or ',' && at > 0 && at + 1 < text.Length && char.IsDigit(text[at - 1]) && char.IsDigit(text[at + 1]);

    /// <summary>Half a character pair, as damaged files have, cannot be composed.</summary>
    private static string Composed(string text)
    {
        try
        {
            return text.Normalize(NormalizationForm.FormKC);
        }
        catch (ArgumentException)
        {
            return text;
        }
    }
}
