using System.Text.RegularExpressions;

namespace RetrofitCalc.Engine.Tests.Reference;

/// <summary>docs/reference-coverage.md: | `topic` | n | covered by `Class` or waits for … |</summary>
public partial class The_coverage_table
{
    private static readonly Dictionary<string, (int Checks, string State)> Rows =
        File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Reference", "reference-coverage.md"))
            .Select(line => Row().Match(line)).Where(match => match.Success)
            .ToDictionary(m => m.Groups["topic"].Value, m => (int.Parse(m.Groups["n"].Value), m.Groups["state"].Value.Trim()));

    [Fact]
    public void names_every_topic_with_its_number_of_checks() =>
        Assert.Equal(
            ReferenceChecks.All.CountBy(check => check.Topic).ToDictionary(),
            Rows.ToDictionary(row => row.Key, row => row.Value.Checks));

    [Fact]
    public void says_covered_by_the_class_that_answers_and_waits_for_everything_else() =>
        Assert.All(Rows, row =>
        {
            if (ReferenceChecks.Answers.TryGetValue(row.Key, out var method))
                Assert.Equal($"covered by `{method.DeclaringType!.Name}`", row.Value.State);
            else
                Assert.Matches("^(waits for .+|covered by `[A-Z]\\w+` in `RetrofitCalc\\.(Data|Files)\\.Tests`)$", row.Value.State);
        });

    [GeneratedRegex(@"^\| `(?<topic>[a-z0-9_]+)` \| (?<n>\d+) \| (?<state>[^|]+) \|")]
    private static partial Regex Row();
}
