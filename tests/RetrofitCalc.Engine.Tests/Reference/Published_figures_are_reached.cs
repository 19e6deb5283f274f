using System.Text.Json;

namespace RetrofitCalc.Engine.Tests.Reference;

public class Published_figures_are_reached
{
    public static IEnumerable<TheoryDataRow<string>> Covered() =>
        from check in ReferenceChecks.All
        where ReferenceChecks.Answers.ContainsKey(check.Topic)
        select new TheoryDataRow<string>(check.Id) { TestDisplayName = check.DisplayName };

    [Theory, MemberData(nameof(Covered))]
    public void by_the_engine(string id)
    {
        var check = ReferenceChecks.All.Single(c => c.Id == id);
        var answer = (double)ReferenceChecks.Answers[check.Topic].Invoke(null, [check.Inputs])!;
        Assert.Equal(check.Expected, answer, tolerance: check.Tolerance);
        if (check.Flagged)
            Assert.True(Math.Abs(answer - check.Published) > check.Tolerance, $"{check.Id} agrees after all: remove its flag.");
    }

    [Fact]
    public void and_every_answer_takes_the_inputs_and_gives_a_number() =>
        Assert.All(ReferenceChecks.Answers.Values, method =>
        {
            Assert.Equal(typeof(double), method.ReturnType);
            Assert.Equal([typeof(JsonElement)], method.GetParameters().Select(p => p.ParameterType));
        });
}
