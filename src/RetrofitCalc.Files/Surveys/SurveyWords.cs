using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Surveys;

/// <summary>Words people write for the choices of a survey cell; the first of each row is the one we write.</summary>
public static class SurveyWords
{
    public static IReadOnlyList<(StartMethod Value, string[] Words)> StartMethods { get; } =
    [
        (StartMethod.Instant, ["instant", "instant start", "is"]),
        (StartMethod.Rapid, ["rapid", "rapid start", "rs"]),
        (StartMethod.Programmed, ["programmed", "programmed start", "programmed rapid start", "ps", "prs", "warm start"]),
        (StartMethod.Preheat, ["preheat", "preheat start", "starter", "switch start"]),
    ];

    public static IReadOnlyList<(LocationClass Value, string[] Words)> Locations { get; } =
    [
        (LocationClass.Dry, ["dry", "dry location"]),
        (LocationClass.Damp, ["damp", "damp location", "moist"]),
        (LocationClass.Wet, ["wet", "wet location"]),
    ];

    public static IReadOnlyList<(EmergencyRole Value, string[] Words)> EmergencyRoles { get; } =
    [
        (EmergencyRole.None, ["none", "no", "n"]),
        (EmergencyRole.ExitRoute, ["exit route", "exit", "escape route", "egress"]),
        (EmergencyRole.BatteryBallast, ["battery ballast", "battery", "battery pack"]),
        (EmergencyRole.EmergencyCircuit, ["emergency circuit", "circuit", "generator", "inverter"]),
    ];

    public static string Of<T>(IReadOnlyList<(T Value, string[] Words)> choices, T value) where T : struct =>
        choices.First(c => c.Value.Equals(value)).Words[0];

    internal static Parsed<T?> Parse<T>(string text, IReadOnlyList<(T Value, string[] Words)> choices) where T : struct
    {
        if (text.Length == 0) return Parsed.Good<T?>(null);
        var key = NameIndex.Key(text);
        foreach (var (value, words) in choices)
            if (words.Any(word => NameIndex.Key(word) == key)) return Parsed.Good<T?>(value);
        return Parsed.Bad<T?>($"{CellText.Quote(text)} is none of: {string.Join(", ", choices.Select(c => c.Words[0]))}. Leave it blank when not known.");
    }
}
