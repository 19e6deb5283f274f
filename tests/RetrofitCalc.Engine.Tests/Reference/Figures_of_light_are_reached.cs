using System.Text.Json;

namespace RetrofitCalc.Engine.Tests.Reference;

public class Figures_of_light_are_reached
{
    public static IEnumerable<TheoryDataRow<string>> Covered() =>
        from check in CanopyChecks.All
        where CanopyChecks.Answered.ContainsKey(check.Key)
        select new TheoryDataRow<string>(check.Id) { TestDisplayName = check.DisplayName };

    [Theory, MemberData(nameof(Covered))]
    public void by_the_engine(string id)
    {
        var check = CanopyChecks.All.Single(c => c.Id == id);
        var answers = (Answers)CanopyChecks.Answered[check.Key].Invoke(null, [check.Inputs])!;
        Assert.All(check.Expected(), part => Assert.Equal(part.Value, answers[part.Name], tolerance: part.Tolerance));
    }

    // The paper calls 50 of 350 "15 %": rounded to a handy figure, 14.3 % is right.
    [Fact]
    public void even_where_the_paper_rounds_them_away()
    {
        var check = CanopyChecks.All.Single(c => c.Id == "CAN-226");
        var answers = (Answers)CanopyChecks.Answered[check.Key].Invoke(null, [check.Inputs])!;
        Assert.NotEqual(check.Json.GetProperty("published").GetDouble(), answers[""], 0.005);
    }

    [Fact]
    public void and_every_answer_takes_the_inputs_and_gives_answers() =>
        Assert.All(CanopyChecks.Answered.Values, method =>
        {
            Assert.Equal(typeof(Answers), method.ReturnType);
            Assert.Equal([typeof(JsonElement)], method.GetParameters().Select(p => p.ParameterType));
        });
}
