using NodaTime;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Tests.Features.Results;

namespace RetrofitCalc.Web.Tests.Features.Safety;

/// <summary>An invented rule book of three rules, and notices it raises.</summary>
public static class SafetySamples
{
    public static SafetyRuleBook Rules { get; } = new()
    {
        Roles = new Dictionary<string, string> { ["E"] = "licensed electrician", ["M"] = "facility manager" },
        Sources = new Dictionary<string, SafetySource>
        {
            ["SEEN1"] = new("A notice, 2010", "SEEN"), ["MEM1"] = new("A code, article 1", "MEM"), ["CP1"] = new("Trade habit", "CP"),
        },
        Fields =
        [
            new("holder", "enum", ["joined", "separate", "unknown"], "Lampholder contacts"),
            new("building_year", "number", [], "Year the building was wired"),
            new("washdown", "bool", [], "Hosed or misted"),
            new("option", "enum", ["do_nothing", "type_b"], "Option"),
        ],
        Rules =
        [
            Rule("W1", NoticeSeverity.Warn, new Comparison("washdown", "not_true", [])),
            Rule("S1", NoticeSeverity.Stop, new AllOf([new Comparison("option", "eq", ["type_b"]), new Comparison("holder", "eq", ["joined"])])),
            Rule("S2", NoticeSeverity.Stop, new Comparison("building_year", "lt", ["1970"])),
        ],
        Checklist =
        [
            new("1 Before", [new("A1", "Opened and recorded", "E", "photos", true, []), new("A2", "Dust kept out", "M", "note", false, ["N9"])]),
            new("2 After", [new("B1", "Labels fixed", "M", "photo", true, [])]),
        ],
    };

    public static SafetyNotice Stop { get; } =
        new("S1", "Lampholders", NoticeSeverity.Stop, "Holders may be joined.", "Which holders are there?", ["E"], ["MEM1", "SEEN1", "lost"], ["l1", "l2"], []);

    public static SafetyNotice Warning { get; } = Stop with { Rule = "W1", Severity = NoticeSeverity.Warn, Lines = ["l2"] };

    public static NoticeAnswer Answer(string? line = null) => new("S1", line, "Separate", "E", "A. Sample", new LocalDate(2026, 11, 18));

    public static Study Study => SampleResult.Study;

    private static SafetyRule Rule(string id, NoticeSeverity severity, SafetyCondition when) =>
        new() { Id = id, Group = "Group", Severity = severity, When = when, Notice = "Notice", Question = "Question?" };
}
