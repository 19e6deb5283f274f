using System.Text.RegularExpressions;

namespace RetrofitCalc.Engine.Tests.Reference;

/// <summary>docs/reference-coverage-canopy.md: | topic | `kind` | n | covered by `Class` or waits for … |</summary>
public partial class The_coverage_table_of_light
{
    private static readonly Dictionary<(string Topic, string Kind), (int Checks, string State)> Rows =
        File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Reference", "reference-coverage-canopy.md"))
            .Select(line => Row().Match(line)).Where(match => match.Success)
            .ToDictionary(m => (m.Groups["topic"].Value, m.Groups["kind"].Value), m => (int.Parse(m.Groups["n"].Value), m.Groups["state"].Value.Trim()));

    [Fact]
    public void names_every_topic_and_kind_with_its_number_of_checks() =>
        Assert.Equal(
            CanopyChecks.All.CountBy(check => check.Key).ToDictionary(),
            Rows.ToDictionary(row => row.Key, row => row.Value.Checks));

    [Fact]
    public void says_covered_by_the_class_that_answers_and_waits_for_everything_else() =>
        Assert.All(Rows, row =>
        {
            if (CanopyChecks.Answered.TryGetValue(row.Key, out var method))
                Assert.Equal($"covered by `{method.DeclaringType!.Name}`", row.Value.State);
            else
                Assert.Matches("^waits for .+$", row.Value.State);
        });

    [GeneratedRegex(@"^\| (?<topic>[^|`]+) \| `(?<kind>\w+)` \| (?<n>\d+) \| (?<state>[^|]+) \|")]
    private static partial Regex Row();
}
