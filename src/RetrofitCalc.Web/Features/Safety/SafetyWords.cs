using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Safety;

/// <summary>Codes of the rule file in plain words.</summary>
public static class SafetyWords
{
    private const int MostLines = 6;

    public static string Role(SafetyRuleBook rules, string code) => rules.Roles.GetValueOrDefault(code, code);

    public static string Roles(SafetyRuleBook rules, IEnumerable<string> codes) => string.Join("; ", codes.Select(code => Role(rules, code)));

    /// <summary>A source as cited, with how it was read where that is less than seeing it.</summary>
    public static string Source(SafetyRuleBook rules, string key)
    {
        if (!rules.Sources.TryGetValue(key, out var source)) return $"{key} (unsourced)";
        return source.Citation + source.Status switch
        {
            "MEM" => " (from memory, not read again)",
            "SEEN2" => " (read in a copy)",
            "CP" => " (common practice, no document)",
            _ => "",
        };
    }

    /// <summary>Names of the lines a notice concerns.</summary>
    public static string Lines(Study study, IReadOnlyList<string> ids)
    {
        if (ids.Count == 0) return "the whole site";
        if (ids.Count == study.Lines.Count && ids.Count > 1) return "all lines";
        var names = ids.Take(MostLines).Select(id => LineName(study, id));
        return string.Join("; ", names) + (ids.Count > MostLines ? $" and {ids.Count - MostLines} more" : "");
    }

    public static string LineName(Study study, string id) =>
        study.Lines.FirstOrDefault(line => line.Id == id) is { Name.Length: > 0 } line ? line.Name : id;

    public static string Kind(NoticeSeverity severity) => severity switch
    {
        NoticeSeverity.Stop => "Stop",
        NoticeSeverity.Warn => "Warn",
        _ => "Note",
    };

    /// <summary>A word of the rule file's lists as people read it.</summary>
    public static string Value(string word) => word switch
    {
        "true" => "yes",
        "false" => "no",
        "us" => "United States",
        "ca" => "Canada",
        "eu" => "European Union",
        "gb" => "Great Britain",
        "au" => "Australia",
        _ => word.Replace('_', ' '),
    };
}
