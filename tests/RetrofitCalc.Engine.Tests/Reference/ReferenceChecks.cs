using System.Reflection;
using System.Text.Json;

namespace RetrofitCalc.Engine.Tests.Reference;

/// <summary>Marks a static method from a check's inputs to the engine's answer.</summary>
[AttributeUsage(AttributeTargets.Method, AllowMultiple = true)]
public sealed class ReferenceTopicAttribute(string topic) : Attribute
{
    public string Topic { get; } = topic;
}

/// <summary>One published or derived value; fields as README.md says.</summary>
public sealed record ReferenceCheck(JsonElement Json)
{
    public string Id => Json.GetProperty("id").GetString()!;
    public string Topic => Json.GetProperty("topic").GetString()!;
    public JsonElement Inputs => Json.GetProperty("inputs");
    public double Published => Json.GetProperty("expected").GetDouble();
    public double Tolerance => Json.GetProperty("tolerance").GetDouble();

    /// <summary>True where the published figure is wrong: the check then uses our own recomputation.</summary>
    public bool Flagged => Json.GetProperty("agrees").ValueKind == JsonValueKind.False;
    public double Expected => Flagged ? Json.GetProperty("recomputed").GetDouble() : Published;

    public string DisplayName =>
        $"{Id} [{Text("evidence")}, {Text("expected_origin")}] {Text("source")}{(Flagged ? " — PUBLISHED FIGURE DOES NOT RECOMPUTE: " + Text("note") : "")}";

    private string Text(string field) => Json.TryGetProperty(field, out var value) ? value.GetString() ?? "" : "";
}

public static class ReferenceChecks
{
    public static IReadOnlyList<ReferenceCheck> All { get; } = Read();

    /// <summary>Topic to the method that answers it.</summary>
    public static IReadOnlyDictionary<string, MethodInfo> Answers { get; } = (
        from type in typeof(ReferenceChecks).Assembly.GetTypes()
        from method in type.GetMethods(BindingFlags.Static | BindingFlags.NonPublic | BindingFlags.Public)
        from mark in method.GetCustomAttributes<ReferenceTopicAttribute>()
        select (mark.Topic, method)).ToDictionary(pair => pair.Topic, pair => pair.method);

    public static double Number(this JsonElement inputs, string name) => inputs.GetProperty(name).GetDouble();

    public static int Count(this JsonElement inputs, string name) => inputs.GetProperty(name).GetInt32();

    public static double[] Numbers(this JsonElement inputs, string name) =>
        [.. inputs.GetProperty(name).EnumerateArray().Select(item => item.GetDouble())];

    private static IReadOnlyList<ReferenceCheck> Read()
    {
        using var stream = File.OpenRead(Path.Combine(AppContext.BaseDirectory, "Reference", "energy_checks.json"));
        var root = JsonDocument.Parse(stream).RootElement.Clone();
        return [.. root.GetProperty("checks").EnumerateArray().Select(item => new ReferenceCheck(item))];
    }
}
