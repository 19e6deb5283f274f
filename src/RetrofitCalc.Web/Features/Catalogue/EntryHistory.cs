using System.Globalization;
using RetrofitCalc.Data;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Files.Catalogues;

namespace RetrofitCalc.Web.Features.Catalogue;

/// <summary>One edit and what it changed, value by value.</summary>
public sealed record EntryHistory(CatalogueEdit Edit, IReadOnlyList<ValueChange> Changes)
{
    /// <summary>Newest first, each compared with the state before it.</summary>
    /// <param name="read">Reads the values kept with an edit.</param>
    public static IReadOnlyList<EntryHistory> Of(IReadOnlyList<CatalogueEdit> newestFirst, Func<string, CatalogueEntry> read, CultureInfo culture)
    {
        var cells = newestFirst.Select(edit => EntryCells.Of(read(edit.Json), culture)).ToList();
        return [.. newestFirst.Select((edit, i) => new EntryHistory(edit, i + 1 < cells.Count ? ValueChange.Between(cells[i + 1], cells[i]) : []))];
    }
}

/// <summary>A value before and after an edit; empty where it was not known.</summary>
public sealed record ValueChange(string Heading, string Before, string After)
{
    public static IReadOnlyList<ValueChange> Between(IReadOnlyList<EntryCell> before, IReadOnlyList<EntryCell> after) =>
        [.. before.Zip(after).Where(pair => pair.First.Text != pair.Second.Text)
            .Select(pair => new ValueChange(pair.First.Heading, pair.First.Text, pair.Second.Text))];
}
