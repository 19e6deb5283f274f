using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using RetrofitCalc.Files.Surveys.Tables;

namespace RetrofitCalc.Files.Surveys.Workbooks;

/// <summary>Walks the rows of a sheet one by one; only one row is in memory at a time.</summary>
internal sealed class SheetReader
{
    private const int CellsNamed = 5;
    private readonly TableSink _sink;
    private readonly CellReader _cells;
    private readonly List<string> _formulas = [];
    private readonly List<string> _emptyFormulas = [];
    private readonly List<string> _merged = [];
    private int _row;

    private SheetReader(CellReader cells, TableSink sink) => (_cells, _sink) = (cells, sink);

    public static void Fill(WorksheetPart part, CellReader cells, TableSink sink)
    {
        var sheet = new SheetReader(cells, sink);
        using var reader = OpenXmlReader.Create(part);
        while (reader.Read())
        {
            if (!reader.IsStartElement) continue;
            if (reader.ElementType == typeof(MergeCell)) sheet._merged.Add(reader.Attributes.FirstOrDefault(a => a.LocalName == "ref").Value ?? "");
            if (reader.ElementType == typeof(Row) && !sheet.ReadRow(reader)) break;
        }
        sheet.AddNotes();
    }

    private bool ReadRow(OpenXmlReader reader)
    {
        var stated = reader.Attributes.FirstOrDefault(a => a.LocalName == "r").Value;
        _row = int.TryParse(stated, out var row) && row > _row ? row : _row + 1;
        var texts = new List<string>();
        if (!reader.ReadFirstChild()) return true;
        do
        {
            if (reader.ElementType != typeof(Cell)) continue;
            var cell = (Cell)reader.LoadCurrentElement()!;
            var column = CellPlace.ColumnOf(cell.CellReference?.Value) ?? texts.Count;
            if (column > TableLimits.Columns) column = TableLimits.Columns;
            while (texts.Count <= column) texts.Add("");
            texts[column] = Take(cell, column);
        }
        while (reader.ReadNextSibling());
        return _sink.Add(_row, texts);
    }

    private string Take(Cell cell, int column)
    {
        var text = _cells.TextOf(cell);
        if (cell.CellFormula is null) return text;
        var place = CellPlace.Name(column, _row);
        _formulas.Add(place);
        if (text.Length == 0) _emptyFormulas.Add(place);
        return text;
    }

    private void AddNotes()
    {
        if (_formulas.Count > 0) _sink.Notes.Add($"{Cells(_formulas)} a formula; the value stored with it was taken.");
        if (_emptyFormulas.Count > 0) _sink.Notes.Add($"{Cells(_emptyFormulas)} a formula without a stored value and was read as blank. Open and save the workbook in a spreadsheet to store the values.");
        if (_merged.Count > 0) _sink.Notes.Add($"Merged cells ({Named(_merged)}): the value counts for the first cell only, the others are read as blank.");
    }

    private static string Cells(List<string> places) => places.Count == 1 ? $"Cell {places[0]} holds" : $"{places.Count} cells ({Named(places)}) each hold";

    private static string Named(List<string> places) => string.Join(", ", places.Take(CellsNamed)) + (places.Count > CellsNamed ? ", …" : "");
}
