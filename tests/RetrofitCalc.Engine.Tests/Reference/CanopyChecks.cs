using System.Reflection;
using System.Text.Json;

namespace RetrofitCalc.Engine.Tests.Reference;

/// <summary>Marks a static method from the inputs of a check of light and spectrum to the engine's answers, by name of the answer.</summary>
[AttributeUsage(AttributeTargets.Method, AllowMultiple = true)]
public sealed class CanopyAnswerAttribute(string topic, string kind) : Attribute
{
    public (string Topic, string Kind) Key { get; } = (topic, kind);
}

/// <summary>Answers by name; a check with a single number has one without a name.</summary>
public sealed class Answers : Dictionary<string, double>
{
    public static implicit operator Answers(double single) => new() { [""] = single };
}

/// <summary>One value of light or spectrum; fields as README.md says.</summary>
public sealed record CanopyCheck(JsonElement Json)
{
    public string Id => Json.GetProperty("id").GetString()!;
    public (string Topic, string Kind) Key => (Json.GetProperty("topic").GetString()!, Json.GetProperty("kind").GetString()!);
    public JsonElement Inputs => Json.GetProperty("inputs");

    public string DisplayName => $"{Id} [{Text("seen_or_memory")}] {Text("source")}{(Text("note") is { Length: > 0 } note ? " — " + note : "")}";

    /// <summary>What is expected, and how far off an answer may be; truths count as one and zero, a unit as its metres.</summary>
    public IEnumerable<(string Name, double Value, double Tolerance)> Expected()
    {
        var expected = Json.GetProperty("expected");
        if (expected.ValueKind != JsonValueKind.Object)
            return [("", Value(expected), ToleranceOf("", Value(expected)))];
        return expected.EnumerateObject().Select(part => (part.Name, Value(part.Value), ToleranceOf(part.Name, Value(part.Value))));
    }

    private double ToleranceOf(string name, double value)
    {
        var tolerance = Json.GetProperty("tolerance");
        if (tolerance.TryGetProperty("rel", out var relative)) return relative.GetDouble() * Math.Abs(value);
        if (tolerance.TryGetProperty("abs", out var absolute)) return absolute.GetDouble();
        if (!tolerance.TryGetProperty(name, out var named)) return 0;
        return named.ValueKind == JsonValueKind.Object ? named.GetProperty("rel").GetDouble() * Math.Abs(value) : named.GetDouble();
    }

    private static readonly Dictionary<string, double> Metres = new() { ["m"] = 1, ["ft"] = 0.3048 };

    private static double Value(JsonElement json) => json.ValueKind switch { JsonValueKind.True => 1, JsonValueKind.False => 0, JsonValueKind.String => Metres[json.GetString()!], _ => json.GetDouble() };

    private string Text(string field) => Json.TryGetProperty(field, out var value) ? value.GetString() ?? "" : "";
}

public static class CanopyChecks
{
    public static IReadOnlyList<CanopyCheck> All { get; } = Read();

    /// <summary>Topic and kind to the method that answers them.</summary>
    public static IReadOnlyDictionary<(string Topic, string Kind), MethodInfo> Answered { get; } = (
        from type in typeof(CanopyChecks).Assembly.GetTypes()
        from method in type.GetMethods(BindingFlags.Static | BindingFlags.NonPublic | BindingFlags.Public)
        from mark in method.GetCustomAttributes<CanopyAnswerAttribute>()
        select (mark.Key, method)).ToDictionary(pair => pair.Key, pair => pair.method);

    private static IReadOnlyList<CanopyCheck> Read()
    {
        using var stream = File.OpenRead(Path.Combine(AppContext.BaseDirectory, "Reference", "canopy_checks.json"));
        var root = JsonDocument.Parse(stream).RootElement.Clone();
        return [.. root.GetProperty("checks").EnumerateArray().Select(item => new CanopyCheck(item))];
    }
}
