using Bunit;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Light.Layout;
using RetrofitCalc.Web.Shared.Fields;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Fields;

public class A_length_typed_into_a_study
{
    private static IRenderedComponent<LengthField> Field(OpenStudy open) => open.Part<LengthField>(p => p
        .Add(f => f.Label, "Length").Add(f => f.Path, "Areas[0].Light").Add(f => f.Name, "BenchLength").Add(f => f.Small, true).Add(f => f.MayBeBlank, true)
        .Add(f => f.Least, 0.05).Add(f => f.Most, 10.0).Add(f => f.Value, open.Study.Areas[0].Light?.BenchLength)
        .Add(f => f.Set, (study, v) => LayoutEdits.Light(study, 0, light => light with { BenchLength = v })));

    // 48 in · 25.4 mm; 4 ft the same; 35 cm.
    [Theory, InlineData("48", 1.2192), InlineData("4 ft", 1.2192), InlineData("1 ft 2 in", 0.3556), InlineData("35 cm", 0.35)]
    public async Task is_read_with_any_unit_and_a_plain_number_in_inches(string typed, double metres)
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        await Field(open).Find("input").ChangeAsync(new() { Value = typed });
        Assert.Equal(metres, open.Study.Areas[0].Light!.BenchLength!.Value.Metres, 1e-9);
    }

    [Fact]
    public async Task is_shown_in_inches_without_useless_digits()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        await Field(open).Find("input").ChangeAsync(new() { Value = "0.61 m" });
        Assert.Equal("24.02 in", Field(open).Find("input").GetAttribute("value"));
    }

    [Fact]
    public async Task out_of_its_range_is_kept_and_told_with_the_range()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        await Field(open).Find("input").ChangeAsync(new() { Value = "1 in" });
        Assert.Null(open.Study.Areas[0].Light?.BenchLength);
        Assert.StartsWith("\"1 in\" is out of range. Type 1.9685 in to", Field(open).Find(".field-message").TextContent, StringComparison.Ordinal);
    }

    [Theory, InlineData("-10", -0.254), InlineData("−10 cm", -0.1), InlineData("2 ft", 0.6096), InlineData("", 0)]
    public async Task lies_to_either_side_of_the_middle(string typed, double metres)
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack() with { Lines = [new() { Id = "shelf", Area = "rack" }], Areas = [SmallStudies.OneRack().Areas[0] with { Light = new() { Layout = [new("shelf", new(1, 0))] } }] });
        var field = open.Part<OffsetField>(p => p.Add(f => f.Label, "x").Add(f => f.Path, "Areas[0].Light.Layout[0].Centre").Add(f => f.Name, "X").Add(f => f.Value, 1.0)
            .Add(f => f.Set, (study, v) => LayoutEdits.Place(study, 0, 0, place => place with { Centre = place.Centre with { X = v!.Value } })));
        await field.Find("input").ChangeAsync(new() { Value = typed });
        Assert.Equal(metres, open.Study.Areas[0].Light!.Layout[0].Centre.X, 1e-9);
    }
}
