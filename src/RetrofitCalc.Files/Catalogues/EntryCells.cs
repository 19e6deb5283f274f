using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Files.Studies;
using RetrofitCalc.Files.Surveys;

namespace RetrofitCalc.Files.Catalogues;

/// <summary>One value of an entry as text.</summary>
/// <param name="Heading">Its heading in the CSV, unit included.</param>
/// <param name="Property">Name of the property it belongs to, as <see cref="CatalogueEntry.SourceOf"/> wants it.</param>
/// <param name="Text">The value; empty when not known.</param>
public sealed record EntryCell(string Heading, string Property, string Text)
{
    /// <summary>Words the value may take; empty when it is not one of a list.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>The text has one line for each part.</summary>
    public bool ManyLines { get; init; }
}

/// <summary>Entries as cells and back, by the columns and the rules of their CSV: one way to write a value and to read it.</summary>
public static partial class EntryCells
{
    public static IReadOnlyList<EntryCell> Of(CatalogueEntry entry, CultureInfo culture) => entry switch
    {
        SetUp setUp => Of(setUp, culture),
        Lamp lamp => Of(lamp, culture),
        Ballast ballast => Of(ballast, culture),
        DirectWireTube tube => Of(tube, culture),
        ReadyWiredLuminaire luminaire => Of(luminaire, culture),
        _ => throw new ArgumentException($"No columns are known for a {entry.GetType().Name}.", nameof(entry)),
    };

    /// <summary>Empty cells of a kind.</summary>
    public static IReadOnlyList<EntryCell> Blank<T>() where T : CatalogueEntry =>
        [.. CatalogueColumns.Of<T>().Select(column => Cell(column, ""))];

    /// <summary>The entry, or what is wrong under which heading.</summary>
    public static Parsed<T> Read<T>(IReadOnlyList<EntryCell> cells, CultureInfo culture) where T : CatalogueEntry
    {
        var columns = MatchedColumns.Of(CatalogueColumns.Of<T>(), [.. cells.Select(c => c.Heading)]);
        return columns.Value is { } matched
            ? CatalogueRowReader.Read<T>(new SurveyRow(1, [.. cells.Select(c => c.Text)]), matched, culture)
            : new Parsed<T>(null, columns.Problems);
    }

    private static IReadOnlyList<EntryCell> Of<T>(T entry, CultureInfo culture) where T : CatalogueEntry
    {
        var json = JsonSerializer.SerializeToNode(entry, RetrofitJson.Options)!.AsObject();
        return [.. CatalogueColumns.Of<T>().Select(column => Cell(column, column.Write(json, culture)))];
    }

    private static EntryCell Cell(CatalogueColumn column, string text) =>
        new(column.Heading, FirstLetter().Replace(column.Path[0], m => m.Value.ToUpperInvariant()), text)
        {
            Words = column.Cell switch { WordCell words => words.Words, YesNoCell => ["yes", "no"], _ => [] },
            ManyLines = column.Cell is not (WordCell or YesNoCell or TextCell or NumberCell),
        };

    [GeneratedRegex("^[a-z]")]
    private static partial Regex FirstLetter();
}
