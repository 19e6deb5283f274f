using Bunit;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Crops;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Features.Light.Targets;
using RetrofitCalc.Web.Features.Schedules;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Light.Targets;

public class Targets_of_stages
{
    private static readonly StagePlace First = new(new(0, 0), 0);
    private static readonly QuantityText Text = QuantityText.For(SmallStudies.OneRack());

    private static LightTarget Target(OpenStudy open) => open.Study.Areas[0].Seasons[0].Stages[0].Target!;

    private static TargetRemarks Remarks(LightTarget target)
    {
        var study = TargetEdits.Use(new(SmallStudies.OneRack(), []), First, target).Study;
        var (area, season) = (study.Areas[0], study.Areas[0].Seasons[0]);
        return TargetRemarks.Of(study, (area, season, season.Stages[0]), null, Text);
    }

    private static IRenderedComponent<TargetEditor> Editor(OpenStudy open) => open.Part<TargetEditor>(p => p.Add(e => e.At, First).Add(e => e.Text, Text));

    [Fact]
    public async Task are_taken_from_the_table_with_their_source_by_one_edit()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        await Editor(open).Find("select").ChangeAsync(new() { Value = "Tomato, fruiting" });
        Assert.Equal(CropTargets.Find("Tomato, fruiting"), Target(open));
        var markup = Editor(open).Markup;
        Assert.Contains("weak source", markup, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"unsourced\"", markup, StringComparison.Ordinal);
        await open.Session.UndoAsync();
        Assert.Null(open.Study.Areas[0].Seasons[0].Stages[0].Target);
    }

    [Fact]
    public async Task with_a_bound_changed_by_hand_are_unsourced_and_say_from_what()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        await Editor(open).Find("select").ChangeAsync(new() { Value = "Bedding plants, plugs and seedlings" });
        await Editor(open).Find("[id$=leastdaily]").ChangeAsync(new() { Value = "9" });
        Assert.Equal(9, Target(open).LeastDaily!.Value.MolesPerSquareMetre);
        Assert.Equal(EvidenceKind.Unsourced, Target(open).Source.Kind);
        Assert.StartsWith("changed by hand from: Craver", Target(open).Source.Source, StringComparison.Ordinal);
        Assert.Equal(12, Target(open).MostDaily!.Value.MolesPerSquareMetre);
    }

    [Fact]
    public async Task of_ones_own_begin_unsourced()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        await Editor(open).Find("select").ChangeAsync(new() { Value = "own" });
        Assert.Equal(EvidenceKind.Unsourced, Target(open).Source.Kind);
        await Editor(open).Find("[id$=target-source]").ChangeAsync(new() { Value = "Our grower" });
        Assert.Equal(new(EvidenceKind.Tested, "Our grower"), Target(open).Source);
    }

    // 10 mol over 16 h: 10 / (16 · 0.0036) = 173.6 µmol; 12: 208.3.
    [Fact]
    public void tell_the_steady_light_they_need_in_the_hours_lit() => Assert.Equal(
        "In the 16 h lit this is a steady 174 to 208 µmol/m²·s.",
        Remarks(CropTargets.Find("Bedding plants, plugs and seedlings")!).Needs);

    // 50 µmol · 12 h · 0.0036 = 2.16 mol.
    [Fact]
    public void that_no_hours_can_give_are_unreachable_whatever_hangs_there() => Assert.StartsWith(
        "Unreachable: 50 µmol/m²·s, the most it bears, in 12 h give 2.2 mol/m² a day",
        Remarks(TargetEdits.Own("x") with
        {
            LeastDaily = DailyLight.FromMolesPerSquareMetre(5), MostLight = PhotonFluxDensity.FromMicromolesPerSquareMetre(50), MostHours = OperatingTime.FromHours(12),
        }).Reach);

    [Fact]
    public void of_short_day_crops_warn_beside_the_hours() =>
        Assert.Contains("Lit 16 h a day; it needs short days, 13 h at most.", Remarks(CropTargets.Find("Chrysanthemum, pot")!).Hours);

    [Fact]
    public void are_copied_to_stages_that_have_none()
    {
        var season = SmallStudies.OneRack().Areas[0].Seasons[0];
        var own = TargetEdits.Own("kept");
        var study = SmallStudies.OneRack() with
        {
            Areas = [SmallStudies.OneRack().Areas[0] with { Seasons = [season with { Stages = [season.Stages[0] with { Target = TargetEdits.Own("from") }, season.Stages[0], season.Stages[0] with { Target = own }] }] }],
        };
        Assert.Equal(["from", "from", "kept"], TargetEdits.CopyInArea(study, First).Areas[0].Seasons[0].Stages.Select(stage => stage.Target!.Crop));
    }

    [Fact]
    public void leave_no_text_of_the_old_one_behind()
    {
        var state = new Shared.EditState(SmallStudies.OneRack(), [new(TargetEdits.Path(First), "LeastDaily", "x", "no number"), new("Assumptions", "StudyYears", "y", "no number")]);
        Assert.Equal("Assumptions", Assert.Single(TargetEdits.Use(state, First, null).Drafts).Line);
    }

    [Fact]
    public void light_reaching_another_area_is_added_changed_and_deleted()
    {
        var added = TargetEdits.AddStray(SmallStudies.OneRack(), 0, "bench");
        var read = TargetEdits.Stray(added, 0, 0, stray => stray with { Light = PhotonFluxDensity.FromMicromolesPerSquareMetre(2.5) });
        Assert.Equal(new StrayLight("bench", PhotonFluxDensity.FromMicromolesPerSquareMetre(2.5)), Assert.Single(read.Areas[0].Light!.Stray));
        Assert.Empty(TargetEdits.RemoveStray(new(read, []), 0, 0).Study.Areas[0].Light!.Stray);
    }
}
