using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace RetrofitCalc.Files.Studies;

/// <summary>
/// Compares a JSON text with the types it will be read into and names every difference by place.
/// The serializer stops at the first mistake and speaks of types; people mending a file want all mistakes and plain words.
/// </summary>
internal sealed class JsonShape(ReadOnlyMemory<byte> text, JsonSerializerOptions options)
{
    private readonly List<FileProblem> _problems = [];
    private readonly List<string> _path = ["$"];

    /// <summary>Problems of a text that should hold a <typeparamref name="T"/>; empty when the serializer will accept it.</summary>
    public static IReadOnlyList<FileProblem> Check<T>(ReadOnlyMemory<byte> text, JsonSerializerOptions options)
    {
        var shape = new JsonShape(text, options);
        try
        {
            var reader = new Utf8JsonReader(text.Span);
            reader.Read();
            shape.Walk(ref reader, options.GetTypeInfo(typeof(T)), mayBeNull: false);
            reader.Read();
        }
        catch (JsonException broken)
        {
            shape._problems.Add(BrokenText(broken));
        }
        return shape._problems;
    }

    public static FileProblem BrokenText(JsonException broken) =>
        new((int?)broken.LineNumber + 1, (int?)broken.BytePositionInLine + 1, "", $"This is not well-formed JSON: {FirstSentence(broken.Message)}");

    private static string FirstSentence(string message)
    {
        var end = message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        return end > 0 ? message[..end] : message;
    }

    private void Walk(ref Utf8JsonReader reader, JsonTypeInfo type, bool mayBeNull)
    {
        if (_problems.Count >= StudyFile.MostProblems) reader.Skip();
        else if (reader.TokenType == JsonTokenType.Null && mayBeNull) return;
        else if (type.PolymorphismOptions is not null) WalkKind(ref reader, type);
        else if (type.Kind == JsonTypeInfoKind.Object) WalkObject(ref reader, type, kindName: null);
        else if (type.Kind == JsonTypeInfoKind.Enumerable) WalkList(ref reader, type);
        else if (type.Kind == JsonTypeInfoKind.Dictionary) WalkDictionary(ref reader, type);
        else if (type.Type == typeof(IReadOnlyList<double>)) WalkNumbers(ref reader, mayBeNull: false);
        else if (type.Type == typeof(IReadOnlyList<double?>)) WalkNumbers(ref reader, mayBeNull: true);
        else WalkValue(ref reader, type);
    }

    private void WalkKind(ref Utf8JsonReader reader, JsonTypeInfo type)
    {
        var kindName = type.PolymorphismOptions!.TypeDiscriminatorPropertyName;
        var kinds = type.PolymorphismOptions.DerivedTypes;
        var kind = KindOf(reader, kindName);
        var match = kinds.FirstOrDefault(k => Equals(k.TypeDiscriminator, kind));
        if (match.DerivedType is not null)
        {
            WalkObject(ref reader, options.GetTypeInfo(match.DerivedType), kindName);
            return;
        }
        var allowed = string.Join(", ", kinds.Select(k => $"\"{k.TypeDiscriminator}\""));
        Add(reader.TokenStartIndex, $"Needs \"{kindName}\", one of {allowed}{(kind is null ? "" : $"; found \"{kind}\"")}.");
        reader.Skip();
    }

    /// <summary>Looks ahead: the reader is a copy, the caller's stays where it is.</summary>
    private static string? KindOf(Utf8JsonReader ahead, string kindName)
    {
        if (ahead.TokenType != JsonTokenType.StartObject) return null;
        while (ahead.Read() && ahead.TokenType == JsonTokenType.PropertyName)
        {
            var isKind = ahead.ValueTextEquals(kindName);
            ahead.Read();
            if (isKind) return ahead.TokenType == JsonTokenType.String ? ahead.GetString() : null;
            ahead.Skip();
        }
        return null;
    }

    private void WalkObject(ref Utf8JsonReader reader, JsonTypeInfo type, string? kindName)
    {
        if (!Expect(ref reader, JsonTokenType.StartObject, "an object in { }")) return;
        var start = reader.TokenStartIndex;
        var seen = new HashSet<string>();
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var name = reader.GetString()!;
            var place = reader.TokenStartIndex;
            reader.Read();
            _path.Add("." + name);
            if (!seen.Add(name)) Add(place, $"\"{name}\" is given twice.");
            if (name == kindName) reader.Skip();
            else WalkMember(ref reader, type, name, place);
            _path.RemoveAt(_path.Count - 1);
        }
        foreach (var missing in type.Properties.Where(p => p.IsRequired && !seen.Contains(p.Name)))
            Add(start, $"\"{missing.Name}\" is missing; it must be {JsonExpectation.Of(missing.PropertyType, options)}.");
    }

    private void WalkMember(ref Utf8JsonReader reader, JsonTypeInfo type, string name, long place)
    {
        if (type.Properties.FirstOrDefault(p => p.Name == name) is { } property)
        {
            Walk(ref reader, options.GetTypeInfo(property.PropertyType), property.IsSetNullable);
            return;
        }
        var known = string.Join(", ", type.Properties.Select(p => p.Name));
        Add(place, $"\"{name}\" is not known here. Known are: {known}.");
        reader.Skip();
    }

    private void WalkList(ref Utf8JsonReader reader, JsonTypeInfo type)
    {
        if (!Expect(ref reader, JsonTokenType.StartArray, "a list in [ ]")) return;
        var element = options.GetTypeInfo(type.ElementType!);
        for (var i = 0; reader.Read() && reader.TokenType != JsonTokenType.EndArray; i++)
        {
            _path.Add($"[{i}]");
            Walk(ref reader, element, mayBeNull: false);
            _path.RemoveAt(_path.Count - 1);
        }
    }

    /// <summary>A year of readings has tens of thousands of values: they are looked at one by one, but not read twice.</summary>
    private void WalkNumbers(ref Utf8JsonReader reader, bool mayBeNull)
    {
        if (!Expect(ref reader, JsonTokenType.StartArray, "a list of numbers in [ ]")) return;
        for (var i = 0; reader.Read() && reader.TokenType != JsonTokenType.EndArray; i++)
        {
            if (reader.TokenType == JsonTokenType.Number && double.IsFinite(reader.GetDouble())) continue;
            if (reader.TokenType == JsonTokenType.Null && mayBeNull) continue;
            var start = (int)reader.TokenStartIndex;
            reader.Skip();
            _path.Add($"[{i}]");
            Add(start, $"Must be {(mayBeNull ? "a number, or null where it is not known" : "a number")}; found {Shortened(text.Span[start..(int)reader.BytesConsumed])}.");
            _path.RemoveAt(_path.Count - 1);
        }
    }

    private void WalkDictionary(ref Utf8JsonReader reader, JsonTypeInfo type)
    {
        if (!Expect(ref reader, JsonTokenType.StartObject, "an object in { }")) return;
        var element = options.GetTypeInfo(type.ElementType!);
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            _path.Add("." + reader.GetString());
            reader.Read();
            Walk(ref reader, element, mayBeNull: false);
            _path.RemoveAt(_path.Count - 1);
        }
    }

    private void WalkValue(ref Utf8JsonReader reader, JsonTypeInfo type)
    {
        var start = (int)reader.TokenStartIndex;
        var possible = IsPossible(ref reader, Nullable.GetUnderlyingType(type.Type) ?? type.Type);
        reader.Skip();
        var value = text[start..(int)reader.BytesConsumed];
        if (possible && CanRead(value.Span, type)) return;
        Add(start, $"Must be {JsonExpectation.Of(type.Type, options)}; found {Shortened(value.Span)}.");
    }

    /// <summary>Stricter than the serializer: it takes 1e999 for infinity and words of any case.</summary>
    private static bool IsPossible(ref Utf8JsonReader reader, Type type) => reader.TokenType switch
    {
        JsonTokenType.Number => !type.IsEnum && double.IsFinite(reader.GetDouble()),
        JsonTokenType.String => !type.IsEnum || JsonExpectation.EnumWords(type).Contains(reader.GetString()),
        _ => true,
    };

    private static bool CanRead(ReadOnlySpan<byte> value, JsonTypeInfo type)
    {
        try
        {
            return JsonSerializer.Deserialize(value, type) is not null;
        }
        catch (Exception wrong) when (wrong is JsonException or FormatException or ArgumentException or InvalidOperationException)
        {
            return false;
        }
    }

    private bool Expect(ref Utf8JsonReader reader, JsonTokenType token, string words)
    {
        if (reader.TokenType == token) return true;
        var start = (int)reader.TokenStartIndex;
        reader.Skip();
        Add(start, $"Must be {words}; found {Shortened(text.Span[start..(int)reader.BytesConsumed])}.");
        return false;
    }

    private static string Shortened(ReadOnlySpan<byte> value)
    {
        const int enough = 40;
        var words = Encoding.UTF8.GetString(value.Length > 4 * enough ? value[..(4 * enough)] : value).ReplaceLineEndings(" ");
        return words.Length <= enough ? words : words[..enough] + " …";
    }

    private void Add(long offset, string message)
    {
        if (_problems.Count >= StudyFile.MostProblems) return;
        var (line, column) = JsonPlace.At(text.Span, offset);
        _problems.Add(new FileProblem(line, column, string.Concat(_path), message));
    }
}
