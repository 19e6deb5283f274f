using System.Globalization;
using RetrofitCalc.Data;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Files.Catalogues;
using RetrofitCalc.Web.Features.Catalogue;

namespace RetrofitCalc.Web.Tests.Features.Catalogue;

/// <summary>The catalogue's addresses, searches and comparisons.</summary>
public class Catalogue_page_words
{
    private static readonly CultureInfo American = CultureInfo.GetCultureInfo("en-US");

    private static readonly DirectWireTube Tube = new()
    {
        Id = "trial-tube",
        Name = "Trial tube, 17 W",
        Source = new Provenance(EvidenceKind.Nameplate, "A sheet, 2026", FromMemory: true),
        FieldSources = new Dictionary<string, Provenance> { ["Price"] = Provenance.None },
        LinePower = Power.FromWatts(17),
        Length = Length.FromMetres(1.2),
        Base = "G13",
        Feed = TubeFeed.DoubleEnd,
    };

    private static readonly StoredEntry Stored = new(Tube, CatalogueKind.Tube, 1, Own: true);

    [Fact]
    public void an_address_keeps_kind_search_entry_and_comparison() =>
        Assert.Equal("/catalogue?kind=tubes&q=4%20ft&entry=trial-tube&with=a,b",
            new CatalogueAddress("/catalogue", "tubes") { Search = "4 ft", Entry = "trial-tube", Compared = ["a", "b"] }.ToString());

    [Fact]
    public void a_fourth_entry_to_compare_pushes_out_the_first() =>
        Assert.Equal(["b", "c", "d"], new CatalogueAddress("/catalogue", "tubes") { Compared = ["a", "b", "c"] }.With("d").Compared);

    [Fact]
    public void an_entry_compared_twice_is_taken_out() =>
        Assert.Equal(["a"], new CatalogueAddress("/catalogue", "tubes") { Compared = ["a", "b"] }.With("b").Compared);

    [Theory]
    [InlineData("", true), InlineData("trial 17", true), InlineData("g13", true), InlineData("sheet", true), InlineData("trial 18", false)]
    public void a_search_finds_entries_that_hold_every_word(string search, bool found) => Assert.Equal(found, EntryList.Matches(Stored, search, American));

    [Fact]
    public void evidence_from_memory_says_so() => Assert.Equal("nameplate, from memory", CatalogueWords.Evidence(Tube.Source));

    [Fact]
    public void words_of_a_list_are_written_apart() =>
        Assert.Equal("double end", CatalogueWords.Value(EntryCells.Of(Tube, American).Single(c => c.Heading == "feed")));

    [Fact]
    public void an_edit_names_each_value_before_and_after()
    {
        var edited = Tube with { LinePower = Power.FromWatts(16.5), Flux = LuminousFlux.FromLumens(2000) };
        Assert.Equal([new ValueChange("line power [W]", "17", "16.5"), new ValueChange("flux [lm]", "", "2000")],
            ValueChange.Between(EntryCells.Of(Tube, American), EntryCells.Of(edited, American)));
    }

    [Fact]
    public void cells_read_back_as_the_same_entry() =>
        Assert.Equal(Texts(Tube), Texts(EntryCells.Read<DirectWireTube>(EntryCells.Of(Tube, American), American).Value!));

    [Fact]
    public void a_cell_that_cannot_be_read_is_named_by_its_heading()
    {
        var cells = EntryCells.Of(Tube, American).Select(c => c.Heading == "line power [W]" ? c with { Text = "1,5" } : c).ToList();
        Assert.Equal("line power [W]", Assert.Single(EntryCells.Read<DirectWireTube>(cells, American).Problems).Path);
    }

    [Fact]
    public void a_blank_entry_asks_for_what_it_cannot_do_without() =>
        Assert.Superset(new HashSet<string> { "id", "name", "base", "line power [W]", "length [m]" },
            EntryCells.Read<DirectWireTube>(EntryCells.Blank<DirectWireTube>(), American).Problems.Select(p => p.Path).ToHashSet());

    [Fact]
    public async Task a_copy_takes_the_first_free_name()
    {
        HashSet<string> taken = ["tube-own", "tube-own-2"];
        Assert.Equal("tube-own-3", await CopyNames.FreeAsync("tube", id => Task.FromResult(taken.Contains(id))));
    }

    [Fact]
    public void every_kind_has_the_headings_it_lists() =>
        Assert.All(KindView.All, kind => Assert.Subset(kind.Blank().Select(c => c.Heading).ToHashSet(), kind.Listed.ToHashSet()));

    private static IEnumerable<(string, string)> Texts(CatalogueEntry entry) => EntryCells.Of(entry, American).Select(c => (c.Heading, c.Text));
}
