using System.Globalization;
using RetrofitCalc.Files.Surveys;

namespace RetrofitCalc.Web.Shared.Fields;

/// <summary>The texts that could not be read, by the place they were typed into.</summary>
public static class Drafts
{
    public static CellDraft? Of(this IReadOnlyList<CellDraft> drafts, string path, string name) =>
        drafts.FirstOrDefault(d => d.Line == path && d.Field == name);

    public static IReadOnlyList<CellDraft> With(this IReadOnlyList<CellDraft> drafts, CellDraft draft) =>
        [.. drafts.Without(draft.Line, draft.Field), draft];

    public static IReadOnlyList<CellDraft> Without(this IReadOnlyList<CellDraft> drafts, string path, string name) =>
        drafts.Of(path, name) is { } old ? [.. drafts.Where(d => d != old)] : drafts;

    /// <summary>After an item of a list was deleted: its texts go, those of later items move up with them.</summary>
    public static IReadOnlyList<CellDraft> AfterDeleting(this IReadOnlyList<CellDraft> drafts, string list, int index) =>
        [.. drafts.Where(d => IndexIn(d.Line, list) != index).Select(d => IndexIn(d.Line, list) > index ? Moved(d, list) : d)];

    /// <summary>After two items of a list changed places: their texts go with them.</summary>
    public static IReadOnlyList<CellDraft> AfterSwapping(this IReadOnlyList<CellDraft> drafts, string list, int one, int other) =>
        [.. drafts.Select(d => IndexIn(d.Line, list) switch
        {
            { } index when index == one => At(d, list, other),
            { } index when index == other => At(d, list, one),
            _ => d,
        })];

    public static int CountUnder(this IReadOnlyList<CellDraft> drafts, string path) =>
        drafts.Count(d => d.Line == path || d.Line.StartsWith(path + ".", StringComparison.Ordinal) || d.Line.StartsWith(path + "[", StringComparison.Ordinal));

    private static CellDraft Moved(CellDraft draft, string list) => At(draft, list, IndexIn(draft.Line, list)!.Value - 1);

    private static CellDraft At(CellDraft draft, string list, int index)
    {
        var old = IndexIn(draft.Line, list)!.Value;
        var rest = draft.Line[(list.Length + 1 + old.ToString(CultureInfo.InvariantCulture).Length)..];
        return draft with { Line = string.Create(CultureInfo.InvariantCulture, $"{list}[{index}{rest}") };
    }

    private static int? IndexIn(string path, string list)
    {
        if (!path.StartsWith(list + "[", StringComparison.Ordinal)) return null;
        var from = list.Length + 1;
        var to = path.IndexOf(']', from);
        return to > from && int.TryParse(path.AsSpan(from, to - from), NumberStyles.None, CultureInfo.InvariantCulture, out var index) ? index : null;
    }
}
