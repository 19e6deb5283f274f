using System.Globalization;
using System.Text.RegularExpressions;

namespace RetrofitCalc.Files.Typing;

/// <summary>The decimal mark and the grouping mark of a culture, and what follows from them.</summary>
internal sealed partial class NumberMarks
{
    private readonly string _decimal;
    private readonly string _group;
    private readonly string _examples;
    private readonly Regex _pattern;

    private NumberMarks(CultureInfo culture)
    {
        var format = culture.NumberFormat;
        _decimal = format.NumberDecimalSeparator;
        _group = NumberText.IsSpace(format.NumberGroupSeparator.FirstOrDefault(' ')) ? " " : format.NumberGroupSeparator;
        _examples = $"1{_decimal}5 for one and a half";
        var (mark, group) = (Regex.Escape(_decimal), GroupPattern());
        var groups = culture.NumberFormat.NumberGroupSizes is [3, 2]
            ? $@"[0-9]{{1,2}}(?:{group}[0-9]{{2}})*{group}[0-9]{{3}}"
            : $"[0-9]{{1,3}}(?:{group}[0-9]{{3}})+";
        _pattern = new Regex($@"^(?<sign>[-+−])?(?<whole>{groups}|[0-9]*)(?:{mark}(?<part>[0-9]*))?(?<power>[eE][-+]?[0-9]{{1,3}})?$", RegexOptions.CultureInvariant);
    }

    public static NumberMarks Of(CultureInfo culture) => new(culture);

    /// <summary>The same number with a point and no grouping, or why it cannot be told which number is meant.</summary>
    public Parsed<string> Plain(string typed)
    {
        var match = _pattern.Match(typed);
        var digits = match.Groups["whole"].Value + match.Groups["part"].Value;
        if (!match.Success || digits.Length == 0) return Parsed.Bad<string>(Refusal(typed));
        var whole = Digits().Replace(match.Groups["whole"].Value, "");
        var sign = match.Groups["sign"].Value is "-" or "−" ? "-" : "";
        return Parsed.Good($"{sign}{(whole.Length == 0 ? "0" : whole)}.{match.Groups["part"].Value}0{match.Groups["power"].Value}");
    }

    private string GroupPattern() => _group switch
    {
        " " => "[ \u00A0\u202F\u2009]",
        "'" or "’" => "['’]",
        _ => Regex.Escape(_group),
    };

    private string Refusal(string typed)
    {
        if (!LooksNumeric().IsMatch(typed)) return $"{CellText.Quote(typed)} is not a number. Type digits, such as {_examples}.";
        var foreign = _decimal == "," ? "." : ",";
        return typed.Contains(foreign) && !typed.Contains(_decimal)
            ? $"{CellText.Quote(typed)} could mean two things. Type {_examples}{GroupExample()}."
            : $"{CellText.Quote(typed)} is not a number as written here. Type {_examples}{GroupExample()}.";
    }

    private string GroupExample() => _group.Length == 0 ? "" : $", 1500 or 1{_group}500 for fifteen hundred";

    [GeneratedRegex("^[-+−]?[0-9.,'’ \u00A0\u202F\u2009]+$")]
    private static partial Regex LooksNumeric();

    [GeneratedRegex("[^0-9]")]
    private static partial Regex Digits();
}
