using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports.Tests;

public class Relamping_in_print
{
    [Theory]
    [InlineData(RelampPolicy.Spot, "one by one as they fail", "15 min")]
    [InlineData(RelampPolicy.Group, "together at 70 % of rated life", "3 min")]
    [InlineData(RelampPolicy.Light, "when their light has fallen to 80 % of that when new, or at rated life", "3 min")]
    public void says_when_lamps_are_changed_and_how_long_one_takes(RelampPolicy policy, string policyText, string minutes)
    {
        var study = Samples.Quillmere.Study;
        var result = Samples.Quillmere with { Study = study with { Assumptions = study.Assumptions with { RelampPolicy = policy } } };
        var rows = BudgetSummary.From(result, Samples.Request).Assumptions[0].Tables[0].Rows;
        Assert.Contains(policyText, rows.Single(row => row.Cells[0] == "Lamps are changed").Cells[1].Replace('\u00A0', ' '));
        Assert.StartsWith(minutes, rows.Single(row => row.Cells[0] == "Time for a lamp; for a ballast").Cells[1].Replace('\u00A0', ' '));
    }
}
