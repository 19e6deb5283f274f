using System.Text;
using System.Text.Json;

namespace RetrofitCalc.Files.Studies;

/// <summary>Finds where in a JSON text something stands.</summary>
internal static class JsonPlace
{
    /// <summary>Line and column, from 1, of a byte.</summary>
    public static (int Line, int Column) At(ReadOnlySpan<byte> text, long offset)
    {
        var before = text[..(int)Math.Clamp(offset, 0, text.Length)];
        var lineStart = before.LastIndexOf((byte)'\n') + 1;
        return (before.Count((byte)'\n') + 1, Encoding.UTF8.GetCharCount(before[lineStart..]) + 1);
    }

    /// <summary>Line and column of many bytes, in one pass.</summary>
    public static Dictionary<long, (int Line, int Column)> At(ReadOnlySpan<byte> text, IEnumerable<long> offsets)
    {
        var places = new Dictionary<long, (int, int)>();
        var (at, line, column) = (0, 1, 1);
        foreach (var offset in offsets.Distinct().Order())
        {
            var step = text[at..(int)offset];
            var lineStart = step.LastIndexOf((byte)'\n') + 1;
            line += step.Count((byte)'\n');
            column = (lineStart > 0 ? 1 : column) + Encoding.UTF8.GetCharCount(step[lineStart..]);
            places[offset] = (line, column);
            at = (int)offset;
        }
        return places;
    }

    /// <summary>Byte offsets of the values at some paths; a path that is absent gets its nearest present ancestor.</summary>
    public static Dictionary<string, long> OffsetsOf(ReadOnlySpan<byte> text, IEnumerable<string> paths)
    {
        var offsets = new Dictionary<string, long>();
        var wanted = paths.SelectMany(SelfAndAncestors).ToHashSet();
        var reader = new Utf8JsonReader(text);
        reader.Read();
        Visit(ref reader, "$", wanted, offsets);
        return offsets;
    }

    public static IEnumerable<string> SelfAndAncestors(string path)
    {
        for (var end = path.Length; end > 0; end = path.AsSpan(0, end).LastIndexOfAny('.', '['))
            yield return path[..end];
    }

    private static void Visit(ref Utf8JsonReader reader, string path, HashSet<string> wanted, Dictionary<string, long> offsets)
    {
        offsets[path] = reader.TokenStartIndex;
        if (reader.TokenType == JsonTokenType.StartObject)
        {
            while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
            {
                var child = $"{path}.{reader.GetString()}";
                reader.Read();
                Step(ref reader, child, wanted, offsets);
            }
        }
        else if (reader.TokenType == JsonTokenType.StartArray)
        {
            for (var i = 0; reader.Read() && reader.TokenType != JsonTokenType.EndArray; i++)
                Step(ref reader, $"{path}[{i}]", wanted, offsets);
        }
    }

    private static void Step(ref Utf8JsonReader reader, string path, HashSet<string> wanted, Dictionary<string, long> offsets)
    {
        if (wanted.Contains(path)) Visit(ref reader, path, wanted, offsets);
        else reader.Skip();
    }
}
