using Bunit;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Features.Light.People;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Light.People;

public class Light_for_people
{
    private static readonly QuantityText Text = QuantityText.For(SmallStudies.OneRack());

    private static Study Hall() => SmallStudies.TenLuminaires() with { Areas = [new() { Id = "rack", Name = "Hall" }] };

    private static TaskLight Light(double? now, double? after) => new()
    {
        Area = "rack", Task = "Packing", Wanted = Illuminance.FromLux(300), Source = Provenance.None, Basis = "",
        Now = now is { } a ? Illuminance.FromLux(a) : null, After = after is { } b ? Illuminance.FromLux(b) : null,
    };

    [Fact]
    public async Task is_asked_about_by_choosing_what_people_do()
    {
        await using var open = await OpenStudy.Of(Hall());
        var page = open.Page<PeoplePage>();
        await page.Find("#f-areas-0-light-people-task").ChangeAsync(new() { Value = "1" });
        Assert.Equal("packing", open.Study.Areas[0].Light!.People!.Task);
        page.WaitForAssertion(() => Assert.Contains("practice, from memory", page.Markup, StringComparison.Ordinal));
        await page.Find("#f-areas-0-light-people-illuminance").ChangeAsync(new() { Value = "400" });
        Assert.Equal(400, open.Study.Areas[0].Light!.People!.Illuminance!.Value.Lux);
    }

    [Fact]
    public void of_an_own_value_has_no_task_and_none_at_all_can_be_chosen_again()
    {
        var own = PeopleEdits.UseTask(Hall(), 0, PeopleEdits.Own);
        Assert.Equal(new PeopleLight(null, Illuminance.FromLux(200)), own.Areas[0].Light!.People);
        Assert.Null(PeopleEdits.UseTask(own, 0, PeopleEdits.NotAsked).Areas[0].Light!.People);
    }

    [Theory]
    [InlineData(320.0, null, "320 lx now, 300 lx wanted: enough.")]
    [InlineData(320.0, 280.0, "320 lx now, 280 lx after the change, 300 lx wanted: too little.")]
    [InlineData(null, null, "Light for people is not known here; 300 lx wanted.")]
    public void is_told_in_one_sentence(double? now, double? after, string told) =>
        Assert.Equal(told, PeopleSentences.Finding(Light(now, null), after is null ? null : Light(now, after), Text));

    [Fact]
    public void is_not_called_enough_where_the_light_after_is_not_known() =>
        Assert.Equal("320 lx now, 300 lx wanted; light after the change is not known.", PeopleSentences.Finding(Light(320, null), Light(320, null), Text));

    [Fact]
    public async Task among_crops_is_asked_about_when_wanted()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenLuminaires());
        var page = open.Page<PeoplePage>();
        Assert.Empty(page.FindAll("#f-areas-0-light-people-task"));
        await page.FindAll("button").Single(button => button.TextContent == "Rack").ClickAsync(new());
        Assert.Equal("potting", open.Study.Areas[0].Light!.People!.Task);
        page.WaitForAssertion(() => Assert.Single(page.FindAll("#f-areas-0-light-people-task")));
    }
}
