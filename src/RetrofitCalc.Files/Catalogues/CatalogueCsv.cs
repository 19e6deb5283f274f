using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsvHelper;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Files.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Files.Surveys.Tables;

namespace RetrofitCalc.Files.Catalogues;

/// <summary>One kind of catalogue entry as CSV, with evidence and source beside the values. All rows are read, or none.</summary>
public static class CatalogueCsv
{
    public static byte[] Write<T>(IReadOnlyList<T> entries, CultureInfo culture) where T : CatalogueEntry
    {
        var columns = CatalogueColumns.Of<T>();
        using var file = new MemoryStream();
        using (var csv = CsvWriter.Create(file, SurveyCsv.Settings(culture), leaveOpen: true))
        {
            csv.WriteRecord(columns.Select(c => c.Heading).ToArray());
            foreach (var entry in entries)
            {
                var json = JsonSerializer.SerializeToNode(entry, RetrofitJson.Options)!.AsObject();
                csv.WriteRecord(columns.Select(c => SpreadsheetText.Guard(c.Write(json, culture))).ToArray());
            }
        }
        return file.ToArray();
    }

    public static Parsed<IReadOnlyList<T>> Read<T>(Stream stream, CultureInfo culture) where T : CatalogueEntry
    {
        var table = CsvTable.Read(stream);
        if (table.Value is not { } rows) return new Parsed<IReadOnlyList<T>>(null, table.Problems);
        var columns = MatchedColumns.Of(CatalogueColumns.Of<T>(), rows.Headers);
        if (columns.Value is not { } matched) return new Parsed<IReadOnlyList<T>>(null, columns.Problems);
        var problems = new List<FileProblem>();
        var entries = new List<T>();
        foreach (var row in rows.Rows)
        {
            var read = CatalogueRowReader.Read<T>(row, matched, culture);
            problems.AddRange(read.Problems);
            if (read.Value is { } entry) entries.Add(entry);
        }
        problems.AddRange(Repeated(rows, matched));
        return problems.Count > 0 ? new Parsed<IReadOnlyList<T>>(null, problems) : Parsed.Good<IReadOnlyList<T>>(entries);
    }

    private static IEnumerable<FileProblem> Repeated(SurveyTable table, MatchedColumns columns)
    {
        var seen = new Dictionary<string, int>();
        foreach (var row in table.Rows)
        {
            var id = row.Cell(columns.IdColumn).Trim();
            if (id.Length == 0 || seen.TryAdd(id, row.Line)) continue;
            yield return new FileProblem(row.Line, columns.IdColumn + 1, "id", $"{CellText.Quote(id)} is already on line {seen[id]}. Each entry needs its own id.");
        }
    }
}
