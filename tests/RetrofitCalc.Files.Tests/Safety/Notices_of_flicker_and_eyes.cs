using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Files.Examples;
using RetrofitCalc.Files.Safety;

namespace RetrofitCalc.Files.Tests.Safety;

/// <summary>IEEE 1789-2015, from memory: low risk up to 0.08 % a hertz, 8 % at 100 Hz and 9.6 % at 120 Hz.</summary>
public class Notices_of_flicker_and_eyes
{
    private static readonly RuleEvaluator Rules = new(SafetyRuleFile.Load());

    [Fact]
    public void come_up_where_people_work_under_converted_lights_and_nobody_knows_the_figures() =>
        Assert.Equal(["O03", "O10", "O12"], Raised(("people_work", "true"), ("option", "type_b")));

    [Fact]
    public void go_with_the_figures_given() =>
        Assert.Empty(Raised(("people_work", "true"), ("option", "type_b"), ("modulation_pct", "5"), ("supply_hz", "60"), ("risk_group", "RG0")));

    [Fact]
    public void leave_out_flicker_where_people_do_not_work_or_nothing_is_converted()
    {
        Assert.DoesNotContain("O10", Raised(("option", "type_b")));
        Assert.Empty(Raised(("people_work", "true"), ("option", "do_nothing")));
    }

    [Theory, InlineData("9", "60", ""), InlineData("10", "60", "O06"), InlineData("9", "50", "O07"), InlineData("9", null, "O11"), InlineData("7", null, "")]
    public void follow_the_low_risk_figure_at_the_mains_frequency(string percent, string? hertz, string rule)
    {
        (string, string)[] facts = [("people_work", "true"), ("option", "type_b"), ("risk_group", "RG0"), ("modulation_pct", percent)];
        Assert.Equal(rule.Length == 0 ? [] : [rule], Raised(hertz is null ? facts : [.. facts, ("supply_hz", hertz)]));
    }

    [Fact]
    public void reach_the_worked_example_where_it_asks_for_light_for_people()
    {
        var study = WorkedExample.Load();
        var notice = SafetyEvaluation.Run(study, SafetyRuleFile.Load()).Single(notice => notice.Rule == "O10");
        var people = study.Areas.Where(area => area.Light?.People is not null).Select(area => area.Id).ToHashSet();
        Assert.NotEmpty(notice.Lines);
        Assert.All(notice.Lines, line => Assert.Contains(study.Lines.Single(l => l.Id == line).Area, people));
    }

    private static IEnumerable<string> Raised(params (string Field, string Value)[] facts) =>
        Rules.Raised(facts.ToDictionary(fact => fact.Field, fact => fact.Value)).Select(rule => rule.Id).Where(id => id.StartsWith('O'));
}
