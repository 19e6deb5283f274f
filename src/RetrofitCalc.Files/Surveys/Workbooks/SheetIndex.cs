using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace RetrofitCalc.Files.Surveys.Workbooks;

/// <summary>The sheets of a workbook, in their order.</summary>
internal sealed class SheetIndex
{
    private readonly List<(string Name, WorksheetPart Part)> _sheets;

    private SheetIndex(List<(string, WorksheetPart)> sheets) => _sheets = sheets;

    public IReadOnlyList<string> Names => _sheets.Select(s => s.Name).ToList();

    public static SheetIndex Of(SpreadsheetDocument book)
    {
        var part = book.WorkbookPart!;
        var sheets = new List<(string, WorksheetPart)>();
        foreach (var sheet in part.Workbook?.Sheets?.Elements<Sheet>() ?? [])
            if (sheet.Id?.Value is { } id && part.TryGetPartById(id, out var found) && found is WorksheetPart cells)
                sheets.Add((sheet.Name?.Value ?? "", cells));
        return new SheetIndex(sheets);
    }

    public WorksheetPart? PartOf(string? name) => name is null
        ? _sheets.Select(s => s.Part).FirstOrDefault()
        : _sheets.Where(s => s.Name == name).Select(s => s.Part).FirstOrDefault();
}
