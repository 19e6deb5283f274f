using System.Globalization;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Readings;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Files.Typing;
using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Shared.Fields;
using ReadingTable = RetrofitCalc.Files.Readings.ReadingGrid;

namespace RetrofitCalc.Web.Features.Light.Readings;

/// <summary>Readings as one types or pastes them. What cannot be read is kept as typed, and its place counts as not read.</summary>
public static class ReadingCells
{
    /// <summary>Brightest that can be typed, by unit: several times full sun. More is a slip of the hand or another unit.</summary>
    public static double Most(LightUnit unit) => unit switch { LightUnit.Micromoles => 10_000, LightUnit.Lux => 500_000, _ => 50_000 };

    public static string Sign(LightUnit unit) => unit switch { LightUnit.Micromoles => "µmol/m²·s", LightUnit.Lux => "lx", _ => "fc" };

    public static Parsed<double?> Read(string typed, LightUnit unit, CultureInfo culture)
    {
        var read = NumberText.Parse(typed, culture);
        if (read is not { Ok: true, Value: { } value }) return read;
        return value >= 0 && value <= Most(unit) ? read : Parsed.Bad<double?>($"\"{typed.Trim()}\" is out of range. Type 0 to {NumberText.Write(Most(unit), culture)} {Sign(unit)}, or nothing where nothing was read.");
    }

    public static EditState Write(EditState state, ReadingPlace at, (int Row, int Column) cell, string typed, CultureInfo culture)
    {
        var set = state.Study.Areas[at.Area].Light!.Readings[at.Index];
        var name = ReadingPlace.Cell(cell.Row, cell.Column);
        var read = Read(typed, set.Unit, culture);
        var study = LightEdits.Set(state.Study, at, old => Put(old, cell, read.Ok ? read.Value : null));
        return new EditState(study, read.Ok ? state.Drafts.Without(at.Path, name) : state.Drafts.With(new CellDraft(at.Path, name, typed.Trim(), read.Problems[0].Message)));
    }

    /// <summary>What pasting did.</summary>
    /// <param name="Filled">Readings taken.</param>
    /// <param name="Unread">Texts kept as typed because they are no reading.</param>
    /// <param name="Outside">Texts beyond the grid, left out.</param>
    public sealed record Outcome(EditState State, int Filled, int Unread, int Outside);

    /// <summary>A block from a spreadsheet fills right and down from a cell; what lies outside the grid is left out and counted.</summary>
    public static Outcome Paste(EditState state, ReadingPlace at, (int Row, int Column) from, IReadOnlyList<IReadOnlyList<string>> block, CultureInfo culture)
    {
        var set = state.Study.Areas[at.Area].Light!.Readings[at.Index];
        var (filled, unread, outside) = (0, 0, 0);
        foreach (var (row, cells) in block.Index())
        {
            foreach (var (column, text) in cells.Index().Where(cell => cell.Item.Trim().Length > 0))
            {
                var cell = (Row: from.Row + row, Column: from.Column + column);
                if (cell.Row >= set.Rows.Count || cell.Column >= set.Columns.Count)
                {
                    outside++;
                    continue;
                }
                state = Write(state, at, cell, AsTyped(text, culture), culture);
                if (state.Drafts.Of(at.Path, ReadingPlace.Cell(cell.Row, cell.Column)) is null) filled++;
                else unread++;
            }
        }
        return new(state, filled, unread, outside);
    }

    /// A number of another spreadsheet as it would be typed here.
    private static string AsTyped(string pasted, CultureInfo culture) =>
        !NumberText.Parse(pasted, culture).Ok && PastedNumber.Parse(pasted, culture).Value is { } value ? NumberText.Write(value, culture) : pasted;

    /// <summary>A pasted table as a set of its own; cells that are no reading keep what stood in them.</summary>
    public static EditState AddTable(EditState state, int area, ReadingSet set, ReadingTable table, CultureInfo culture)
    {
        var study = LightEdits.Add(state.Study, area, set);
        var at = new ReadingPlace(area, study.Areas[area].Light!.Readings.Count - 1);
        var unread = from row in table.Cells.Index() from cell in row.Item.Index() where cell.Item.Value is null && !Read(cell.Item.Typed, set.Unit, culture).Ok select (row.Index, Column: cell.Index, cell.Item.Typed);
        return unread.Aggregate(new EditState(study, state.Drafts), (after, cell) => Write(after, at, (cell.Index, cell.Column), cell.Typed, culture));
    }

    private static ReadingSet Put(ReadingSet set, (int Row, int Column) cell, double? value) => set with
    {
        Values = set.Values.At(cell.Row, row => row.At(cell.Column, _ => value)),
        Confirmed = [.. set.Confirmed.Where(index => index != cell.Row * set.Columns.Count + cell.Column)],
    };
}
