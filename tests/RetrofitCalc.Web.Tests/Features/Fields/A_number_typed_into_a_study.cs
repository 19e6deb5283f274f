using Bunit;
using NodaTime;
using RetrofitCalc.Web.Shared.Fields;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Fields;

public class A_number_typed_into_a_study
{
    [Fact]
    public async Task goes_into_the_study_when_it_can_be_read()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        var field = Years(open);
        await field.Find("input").ChangeAsync(new() { Value = "12" });
        Assert.Equal(12, open.Study.Assumptions.StudyYears);
        Assert.Empty(open.Session.State.Drafts);
    }

    [Fact]
    public async Task is_kept_as_typed_with_a_sentence_when_it_could_mean_two_things()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        await Years(open).Find("input").ChangeAsync(new() { Value = "1,5" });
        Assert.Equal(10, open.Study.Assumptions.StudyYears);
        var field = Years(open);
        Assert.Equal("1,5", field.Find("input").GetAttribute("value"));
        Assert.Equal("true", field.Find("input").GetAttribute("aria-invalid"));
        Assert.Contains("\"1,5\" could mean two things", field.Find(".field-message").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task out_of_its_range_is_refused_with_the_range()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        await Years(open).Find("input").ChangeAsync(new() { Value = "41" });
        Assert.Equal("\"41\" is out of range. Type 1 to 40.", Years(open).Find(".field-message").TextContent);
        Assert.Equal(10, open.Study.Assumptions.StudyYears);
    }

    [Fact]
    public async Task can_be_undone_with_the_text_that_could_not_be_read()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        await Years(open).Find("input").ChangeAsync(new() { Value = "ten" });
        await open.Session.UndoAsync();
        Assert.Empty(open.Session.State.Drafts);
        Assert.Equal("10", Years(open).Find("input").GetAttribute("value"));
    }

    [Fact]
    public async Task as_a_percentage_becomes_a_share()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        var field = open.Part<NumberField>(p => p.Add(f => f.Label, "Discount rate").Add(f => f.Path, "Assumptions").Add(f => f.Name, "DiscountRate")
            .Add(f => f.Value, 0.05).Add(f => f.Percent, true)
            .Add(f => f.Set, (study, rate) => study with { Assumptions = study.Assumptions with { DiscountRate = rate!.Value } }));
        Assert.Equal("5", field.Find("input").GetAttribute("value"));
        await field.Find("input").ChangeAsync(new() { Value = "6.5" });
        Assert.Equal(0.065, open.Study.Assumptions.DiscountRate, 12);
    }

    private static IRenderedComponent<NumberField> Years(OpenStudy open) =>
        open.Part<NumberField>(p => p.Add(f => f.Label, "Years compared").Add(f => f.Path, "Assumptions").Add(f => f.Name, "StudyYears")
            .Add(f => f.Value, open.Study.Assumptions.StudyYears).Add(f => f.Whole, true).Add(f => f.Least, 1).Add(f => f.Most, 40)
            .Add(f => f.Set, (study, years) => study with { Assumptions = study.Assumptions with { StudyYears = (int)years!.Value } }));
}
