using System.Diagnostics;
using System.Globalization;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace RetrofitCalc.Reports.Tests;

/// <summary>A workbook opened, computed and saved again by LibreOffice, read by its labels in the first column.</summary>
internal sealed class RecalculatedWorkbook : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("retrofit-book-").FullName;
    private readonly SpreadsheetDocument _book;

    public RecalculatedWorkbook(byte[] workbook)
    {
        var made = Path.Combine(_folder, "made.xlsx");
        File.WriteAllBytes(made, workbook);
        var start = new ProcessStartInfo("soffice") { RedirectStandardOutput = true, RedirectStandardError = true };
        string[] arguments = [$"-env:UserInstallation=file://{_folder}/profile", "--headless", "--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", Path.Combine(_folder, "out"), made];
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        using var process = Process.Start(start)!;
        process.WaitForExit();
        _book = SpreadsheetDocument.Open(Path.Combine(_folder, "out", "made.xlsx"), false);
    }

    /// <summary>The number beside a label, some columns to the right.</summary>
    public double Number(string sheet, string label, int column = 1) => double.Parse(Text(sheet, label, column), CultureInfo.InvariantCulture);

    public string Text(string sheet, string label, int column = 1) => Row(sheet, label).ElementAtOrDefault(column) ?? "";

    /// <summary>Every row of a sheet as text, computed values included.</summary>
    public IEnumerable<IReadOnlyList<string>> Rows(string sheet)
    {
        var id = _book.WorkbookPart!.Workbook!.Descendants<Sheet>().Single(s => s.Name == sheet).Id!;
        var part = (WorksheetPart)_book.WorkbookPart.GetPartById(id!);
        return part.Worksheet!.Descendants<Row>().Select(row => (IReadOnlyList<string>)Cells(row));
    }

    public void Dispose()
    {
        _book.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    private IReadOnlyList<string> Row(string sheet, string label) => Rows(sheet).First(row => row.Count > 0 && row[0] == label);

    private List<string> Cells(Row row)
    {
        var cells = new List<string>();
        foreach (var cell in row.Elements<Cell>())
        {
            var column = cell.CellReference!.Value![0] - 'A';
            while (cells.Count <= column) cells.Add("");
            cells[column] = Value(cell);
        }
        return cells;
    }

    private string Value(Cell cell) => cell.DataType?.Value == CellValues.SharedString
        ? _book.WorkbookPart!.SharedStringTablePart!.SharedStringTable!.ElementAt(int.Parse(cell.InnerText, CultureInfo.InvariantCulture)).InnerText
        : cell.CellValue?.Text ?? cell.InnerText;
}
