using NodaTime;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;

namespace RetrofitCalc.Engine.Tests.Safety;

public class Notices_of_a_survey
{
    private static readonly SafetyRuleBook Rules = new()
    {
        Rules =
        [
            Rule("note", NoticeSeverity.Note, new Comparison("lamp_type", "eq", ["T8"])),
            Rule("high", NoticeSeverity.Warn, new Comparison("supply_volts", "ge", ["260"])),
            Rule("stop", NoticeSeverity.Stop, new AllOf([new Comparison("option", "eq", ["type_b"]), new Comparison("supply_volts", "unknown", [])])),
            Rule("never", NoticeSeverity.Stop, new Comparison("lamp_type", "eq", ["T12"])),
        ],
        Checklist =
        [
            new("Before", [new("A", "always", "E", "", true, []), new("B", "linked", "M", "", false, ["never", "high"]), new("C", "not", "M", "", false, ["never"])]),
        ],
    };

    [Fact]
    public void name_the_lines_that_raise_them_stops_first()
    {
        var notices = Of(Lines((1, 277.0), (2, null), (3, 120.0), (4, 277.0)));
        Assert.Equal(["stop", "high", "note"], notices.Select(n => n.Rule));
        Assert.Equal([["2"], ["1", "4"], ["1", "2", "3", "4"]], notices.Select(n => n.Lines));
    }

    [Fact]
    public void follow_the_option_asked_for()
    {
        var study = Lines((1, null)) with { Options = [new() { Id = "keep", Name = "Keep" }, Lines((1, null)).Options[0]] };
        Assert.DoesNotContain(Of(study), n => n.Rule == "stop");
        Assert.Contains(Of(study with { ChosenOption = "tubes" }), n => n.Rule == "stop");
    }

    [Fact]
    public void stay_open_until_every_line_is_answered()
    {
        var study = Lines((1, 277.0), (2, 277.0));
        Assert.True(Of(study).Single(n => n.Rule == "high").Open);
        Assert.True(Answered(study, "1").Open);
        Assert.False(Answered(study, "1", "2").Open);
        Assert.False(Answered(study, [null]).Open);
    }

    [Fact]
    public void tell_lines_with_facts_of_their_own_apart()
    {
        var study = Lines((1, 277.0), (2, 277.0)) with { Safety = new() { Facts = [new("2", "supply_volts", "120")] } };
        Assert.Equal(["1"], Of(study).Single(n => n.Rule == "high").Lines);
    }

    [Fact]
    public void concern_the_site_while_there_are_no_lines()
    {
        var rules = new SafetyRuleBook { Rules = [Rule("us", NoticeSeverity.Warn, new Comparison("jurisdiction", "eq", ["us"]))] };
        var study = SmallRoom.Study with { Lines = [], Site = new() { Name = "Site", Jurisdiction = "us" } };
        Assert.Empty(Assert.Single(SafetyEvaluation.Run(study, rules)).Lines);
    }

    [Fact]
    public void mark_checklist_items_that_do_not_apply_with_the_reason_and_drop_none()
    {
        var study = Lines((1, 277.0)) with { Safety = new() { Checklist = [new("A", "E", "Invented Person", new LocalDate(2027, 1, 2))] } };
        var items = Assert.Single(ChecklistState.Of(study, Rules, Of(study))).Items;
        Assert.Equal([true, true, false], items.Select(item => item.Applies));
        Assert.Equal(["Applies to every conversion.", "Applies because of notice high.", "Does not apply: this survey does not raise notice never."], items.Select(item => item.Reason));
        Assert.Equal([true, false, false], items.Select(item => item.Answer is not null));
    }

    private static SafetyRule Rule(string id, NoticeSeverity severity, SafetyCondition when) =>
        new() { Id = id, Group = "", Severity = severity, When = when, Notice = "", Question = "" };

    private static Study Lines(params (int Id, double? Volts)[] lines) => SmallRoom.Study with
    {
        Lines = [.. lines.Select(line => SmallRoom.Line with { Id = $"{line.Id}", SupplyVolts = line.Volts })],
        Options = [SmallRoom.Tubes with { Measures = [.. lines.Select(line => new LineMeasure($"{line.Id}", new DirectWire("tube")))] }],
    };

    private static IReadOnlyList<SafetyNotice> Of(Study study) => SafetyEvaluation.Run(study, Rules);

    private static SafetyNotice Answered(Study study, params string?[] lines) => Of(study with
    {
        Safety = new() { Answers = [.. lines.Select(line => new NoticeAnswer("high", line, "done", "E", "Invented Person", new LocalDate(2027, 1, 2)))] },
    }).Single(notice => notice.Rule == "high");
}
