using Bunit;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Components.Layout;
using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Sessions;

/// <summary>Places, saved mark and conflict follow each edit, though none of their own parameters changes.</summary>
public class What_stays_in_sight_of_a_study
{
    [Fact]
    public async Task counts_what_is_to_mend_beside_its_place_as_soon_as_it_is_typed()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        var places = open.Part<PlacesNav>(p => p.Add(n => n.Id, open.Id).Add(n => n.Address, $"http://localhost/studies/{open.Id}/tariff"));
        Assert.DoesNotContain("to mend", places.Markup, StringComparison.Ordinal);
        await open.Session.EditAsync("price", state => state with { Drafts = [new CellDraft("Tariff.Energy[0].Blocks[0]", "Price", "0,15", "")] });
        places.WaitForAssertion(() => Assert.Contains("1 to mend", places.Find("a[aria-current=page]").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task tells_of_someone_elses_save_and_keeps_both()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        var (mark, panel) = (open.Part<SavedMark>(_ => { }), open.Part<ConflictPanel>(_ => { }));
        await open.SaveElsewhereAsync(study => study with { Name = "Theirs" });
        await open.Session.EditAsync("name", study => study with { Name = "Mine" });
        mark.WaitForAssertion(() => Assert.Contains("Not saved: changed elsewhere", mark.Markup, StringComparison.Ordinal));
        panel.WaitForAssertion(() => Assert.Contains("Someone else saved this study", panel.Markup, StringComparison.Ordinal));
        Assert.Equal("Mine", open.Study.Name);
    }
}
