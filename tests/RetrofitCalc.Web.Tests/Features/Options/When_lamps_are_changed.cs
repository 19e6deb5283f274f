using Bunit;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Options;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Options;

public class When_lamps_are_changed
{
    [Fact]
    public async Task can_be_chosen_by_light_with_its_share()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        var fields = open.Part<AssumptionFields>(p => p.Add(f => f.Session, open.Session));
        var choice = Labelled(fields, "Lamps are changed");
        Assert.Equal(["each when it fails", "all together, by hours", "all together, by light"], fields.FindAll($"#{choice} option").Select(option => option.TextContent));
        await fields.Find($"#{choice}").ChangeAsync(new() { Value = "2" });
        await fields.Find($"#{Labelled(fields, "By light, changed together at")}").ChangeAsync(new() { Value = "85" });
        Assert.Equal(RelampPolicy.Light, open.Study.Assumptions.RelampPolicy);
        Assert.Equal(0.85, open.Study.Assumptions.LightRelampShare, 12);
    }

    [Fact]
    public async Task refuses_a_share_out_of_range()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        var fields = open.Part<AssumptionFields>(p => p.Add(f => f.Session, open.Session));
        await fields.Find($"#{Labelled(fields, "By light, changed together at")}").ChangeAsync(new() { Value = "99" });
        Assert.Equal(0.80, open.Study.Assumptions.LightRelampShare, 12);
        Assert.Equal("\"99\" is out of range. Type 50 to 98.", open.Part<AssumptionFields>(p => p.Add(f => f.Session, open.Session)).Find(".field-message").TextContent);
    }

    private static string Labelled(IRenderedComponent<AssumptionFields> fields, string label) =>
        fields.FindAll("label").Single(l => l.TextContent.StartsWith(label, StringComparison.Ordinal)).GetAttribute("for")!;
}
