using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Files.Studies;
using RetrofitCalc.Files.Surveys;

namespace RetrofitCalc.Files.Catalogues;

/// <summary>Reads one row into an entry by way of the entry's JSON, so that one set of rules says what an entry may be.</summary>
internal static partial class CatalogueRowReader
{
    public static Parsed<T> Read<T>(SurveyRow row, MatchedColumns columns, CultureInfo culture) where T : CatalogueEntry
    {
        var entry = new JsonObject();
        var problems = new List<FileProblem>();
        for (var i = 0; i < columns.InOrder.Count; i++)
        {
            var (column, text) = (columns.InOrder[i], row.Cell(i));
            if (string.IsNullOrWhiteSpace(text)) continue;
            var read = column.Cell.Read(text, culture);
            problems.AddRange(read.Problems.Select(p => p with { Line = row.Line, Column = i + 1, Path = column.Heading }));
            if (read.Value is { } value) column.Put(entry, value);
        }
        if (row.Cells.Skip(columns.InOrder.Count).Any(c => !string.IsNullOrWhiteSpace(c)))
            problems.Add(new FileProblem(row.Line, columns.InOrder.Count + 1, "", "There are more cells than headings. Is a separator inside a text without quotation marks?"));
        problems.AddRange(Source(entry).Concat(Id(entry)).Concat(Missing<T>(entry, [.. problems])).Select(p => p with { Line = row.Line }));
        if (problems.Count > 0) return new Parsed<T>(null, problems);
        return Finish<T>(entry, row.Line, columns);
    }

    private static Parsed<T> Finish<T>(JsonObject entry, int line, MatchedColumns columns) where T : CatalogueEntry
    {
        var bytes = JsonSerializer.SerializeToUtf8Bytes(entry, RetrofitJson.Options);
        var misshapen = JsonShape.Check<T>(bytes, RetrofitJson.Options);
        if (misshapen.Count > 0) return new Parsed<T>(null, misshapen.Select(p => Placed(p, line, columns)).ToList());
        var read = JsonSerializer.Deserialize<T>(bytes, RetrofitJson.Options)!;
        var impossible = StudyEvaluation.Check(read).Select(p => Placed(new FileProblem(null, null, JsonPath(p.Path), p.Message), line, columns)).ToList();
        return impossible.Count == 0 ? Parsed.Good(read) : new Parsed<T>(null, impossible);
    }

    /// <summary>".LinePower" in the engine is "$.linePower" in the file.</summary>
    private static string JsonPath(string enginePath) => "$." + JsonNamingPolicy.CamelCase.ConvertName(enginePath.TrimStart('.'));

    private static FileProblem Placed(FileProblem problem, int line, MatchedColumns columns)
    {
        var at = columns.InOrder.ToList().FindIndex(c => problem.Path.StartsWith("$." + string.Join('.', c.Path), StringComparison.Ordinal));
        return new FileProblem(line, at < 0 ? null : at + 1, at < 0 ? "" : columns.InOrder[at].Heading, problem.Message);
    }

    /// <summary>Nothing said of a source means unsourced; a source without its kind of evidence is asked about.</summary>
    private static IEnumerable<FileProblem> Source(JsonObject entry)
    {
        var source = entry["source"]?.AsObject() ?? [];
        if (source["kind"] is null && source["source"] is not null)
            yield return new FileProblem(null, null, "evidence", $"Say what kind of evidence the source is: {string.Join(", ", JsonExpectation.EnumWords(typeof(EvidenceKind)))}.");
        if (entry["source"] is null) entry["source"] = source;
        source.TryAdd("kind", "unsourced");
        source.TryAdd("source", "");
    }

    private static IEnumerable<FileProblem> Missing<T>(JsonObject entry, IReadOnlyList<FileProblem> soFar) where T : CatalogueEntry
    {
        foreach (var property in RetrofitJson.Options.GetTypeInfo(typeof(T)).Properties.Where(p => p.IsRequired && entry[p.Name] is null))
        {
            var heading = CatalogueColumns.Of<T>().First(c => c.Path[0] == property.Name).Heading;
            if (soFar.All(p => p.Path != heading)) yield return new FileProblem(null, null, heading, "This may not be blank.");
        }
    }

    private static IEnumerable<FileProblem> Id(JsonObject entry)
    {
        if ((string?)entry["id"] is { } id && !Identifier().IsMatch(id))
            yield return new FileProblem(null, null, "id", $"{CellText.Quote(id)} cannot be an id. Use lower-case letters, digits and hyphens, such as 4ft-t8-2-lamp.");
    }

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*$")]
    private static partial Regex Identifier();
}
