using Bunit;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Features.Tariffs.Library;
using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Tariffs;

public class The_tariff_library
{
    [Fact]
    public async Task keeps_the_tariff_of_the_study_and_lists_it_as_own()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var page = open.Page<TariffLibraryPage>();
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll("tbody tr")));
        var shipped = page.FindAll("tbody tr").Count;
        await page.FindAll("button").Single(b => b.TextContent.StartsWith("Keep this study", StringComparison.Ordinal)).ClickAsync(new());
        page.WaitForAssertion(() => Assert.Equal(shipped + 1, page.FindAll("tbody tr").Count));
        Assert.Contains(page.FindAll("tbody tr"), r => r.TextContent.Contains("Flat price", StringComparison.Ordinal) && r.TextContent.Contains("by you", StringComparison.Ordinal));
    }

    [Fact]
    public async Task a_tariff_looked_at_is_used_by_one_edit_that_can_be_undone()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var other = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.3)) with { Name = "Another" };
        var preview = open.Part<TariffPreview>(p => p.Add(x => x.Session, open.Session).Add(x => x.Tariff, other));
        Assert.Contains("$0.3000/kWh", preview.Markup, StringComparison.Ordinal);
        await preview.Find("button.strong").ClickAsync(new());
        Assert.Equal("Another", open.Study.Tariff.Name);
        Assert.Equal("tariff Another", open.Session.CanUndo);
        await open.Session.UndoAsync();
        Assert.Equal("Flat price", open.Study.Tariff.Name);
    }

    [Fact]
    public void texts_typed_for_the_old_tariff_go_with_it_and_those_of_the_survey_stay()
    {
        var survey = new CellDraft("shelf", "Count", "x", "not a number");
        var state = new EditState(SmallStudies.TenWithTubes(), [survey, new("Tariff.Energy[0].Blocks[0]", "Price", "x", "not a number")]);
        Assert.Equal([survey], LibraryEdits.Use(state, Tariff.Flat(EnergyPrice.Zero)).Drafts);
    }

    [Theory, InlineData("time day", true), InlineData("EUR", false), InlineData("", true), InlineData("sheet", true)]
    public void is_narrowed_by_every_word_typed(string typed, bool found) =>
        Assert.Equal(found, LibraryEdits.Matches(new Tariff { Name = "Time of day", Source = new(Engine.Catalogue.EvidenceKind.Tested, "A town's sheet") }, "", typed));
}
