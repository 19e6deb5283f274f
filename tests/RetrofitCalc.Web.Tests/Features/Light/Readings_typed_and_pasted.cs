using System.Globalization;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys.Tables;
using RetrofitCalc.Web.Features.Light;
using RetrofitCalc.Web.Features.Light.Readings;
using RetrofitCalc.Web.Shared;
using static RetrofitCalc.Web.Tests.Features.Light.LightSamples;

namespace RetrofitCalc.Web.Tests.Features.Light;

public class Readings_typed_and_pasted
{
    private static readonly CultureInfo American = CultureInfo.GetCultureInfo("en-US");
    private static readonly CultureInfo German = CultureInfo.GetCultureInfo("de-DE");

    private static ReadingSet Set(EditState state) => state.Study.Areas[0].Light!.Readings[0];

    [Fact]
    public void fill_their_own_place()
    {
        var after = ReadingCells.Write(new EditState(Bench(), []), First, (1, 2), "182.5", American);
        Assert.Equal([[null, null, null], [null, null, 182.5]], Set(after).Values);
    }

    [Fact]
    public void take_the_decimal_mark_of_the_site()
    {
        var after = ReadingCells.Write(new EditState(Bench(), []), First, (0, 0), "182,5", German);
        Assert.Equal(182.5, Set(after).Values[0][0]);
    }

    [Theory]
    [InlineData("1,5", "1,5")]
    [InlineData("about 90", "about 90")]
    [InlineData("-4", "out of range")]
    [InlineData("10001", "out of range")]
    public void stay_as_typed_where_they_cannot_be_read_and_count_as_not_read(string typed, string said)
    {
        var before = ReadingCells.Write(new EditState(Bench(), []), First, (0, 1), "90", American);
        var after = ReadingCells.Write(before, First, (0, 1), typed, American);
        Assert.Null(Set(after).Values[0][1]);
        var draft = Assert.Single(after.Drafts);
        Assert.Equal(("Areas[0].Light.Readings[0]", "Values[0][1]", typed), (draft.Line, draft.Field, draft.Text));
        Assert.Contains(said, draft.Message, StringComparison.Ordinal);
        Assert.Empty(ReadingCells.Write(after, First, (0, 1), "91", American).Drafts);
    }

    [Theory]
    [InlineData(LightUnit.Lux, "14000")]
    [InlineData(LightUnit.FootCandles, "1300")]
    public void may_be_as_bright_as_the_unit_of_the_meter_allows(LightUnit unit, string typed)
    {
        Assert.True(ReadingCells.Read(typed, unit, American).Ok);
        Assert.Equal(unit == LightUnit.FootCandles, ReadingCells.Read(typed, LightUnit.Micromoles, American).Ok);
    }

    [Fact]
    public void pasted_as_a_block_fill_right_and_down_and_leave_the_rest_alone()
    {
        var before = ReadingCells.Write(new EditState(Bench(), []), First, (0, 0), "240", American);
        var block = PastedTable.Cells("230\t220\t210\n180\tdim\t\n9\t9\t9\n").Value!;
        var pasted = ReadingCells.Paste(before, First, (0, 1), block, American);
        Assert.Equal([[240, 230, 220], [null, 180, null]], Set(pasted.State).Values);
        // 210 lies beyond the last column, the third row beyond the last row: four texts left out. "dim" is kept and marked.
        Assert.Equal((3, 1, 4), (pasted.Filled, pasted.Unread, pasted.Outside));
        Assert.Equal("dim", Assert.Single(pasted.State.Drafts).Text);
    }

    [Fact]
    public void pasted_with_a_decimal_comma_are_taken_where_the_comma_cannot_part_thousands()
    {
        var block = PastedTable.Cells("250,5\t1,234\t7,25\n").Value!;
        var pasted = ReadingCells.Paste(new EditState(Bench(), []), First, (0, 0), block, American);
        Assert.Equal([[250.5, 1234, 7.25], [null, null, null]], Set(pasted.State).Values);
        Assert.Equal("3 cells filled. One undo takes it all back.", ReadingGrid.Said(pasted));
    }

    [Fact]
    public void pasted_are_counted_as_filled_only_where_they_could_be_read()
    {
        var block = PastedTable.Cells("a\t250\tb\nc\td\t240\n").Value!;
        var pasted = ReadingCells.Paste(new EditState(Bench(), []), First, (0, 0), block, American);
        Assert.StartsWith("2 cells filled. 4 could not be read and are kept as typed and marked.", ReadingGrid.Said(pasted), StringComparison.Ordinal);
        var again = ReadingCells.Paste(pasted.State, First, (0, 0), block, American);
        Assert.Equal((2, 4), (again.Filled, again.Unread));
    }

    [Fact]
    public void typed_anew_are_no_longer_vouched_for()
    {
        var stands = LightEdits.Confirm(LightEdits.Confirm(Bench(), First, 4, stands: true), First, 1, stands: true);
        Assert.Equal([1, 4], stands.Areas[0].Light!.Readings[0].Confirmed);
        var after = ReadingCells.Write(new EditState(stands, []), First, (1, 1), "300", American);
        Assert.Equal([1], Set(after).Confirmed);
    }

    [Fact]
    public void copied_to_another_height_are_a_blank_grid_of_their_own()
    {
        var read = ReadingCells.Write(new EditState(Bench(), []), First, (0, 0), "240", American).Study;
        var sets = LightEdits.CopyTo(read, First, Engine.Quantities.Length.FromMetres(0.45)).Areas[0].Light!.Readings;
        Assert.Equal(["readings-1", "readings-2"], sets.Select(set => set.Id));
        Assert.Equal(0.45, sets[1].Height.Metres);
        Assert.Equal(sets[0].Columns, sets[1].Columns);
        Assert.Equal([1, 0], sets.Select(ReadingGrids.Taken));
    }

    [Fact]
    public void removed_take_the_texts_that_could_not_be_read_with_them()
    {
        var two = LightEdits.CopyTo(Bench(), First, Engine.Quantities.Length.FromMetres(0.45));
        var typed = ReadingCells.Write(ReadingCells.Write(new EditState(two, []), First, (0, 0), "x", American), new(0, 1), (0, 0), "y", American);
        var left = LightEdits.Remove(typed, First);
        Assert.Equal("readings-2", Assert.Single(left.Study.Areas[0].Light!.Readings).Id);
        Assert.Equal(("Areas[0].Light.Readings[0]", "y"), (left.Drafts.Single().Line, left.Drafts.Single().Text));
    }
}
