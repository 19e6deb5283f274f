using System.Globalization;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Spreadsheet;

namespace RetrofitCalc.Reports.Workbook;

/// <summary>One sheet, filled row by row from the top. Formulas carry no stored value: whoever opens the book computes it.</summary>
internal sealed class SheetBuilder(string name, IReadOnlyList<double> columnWidths, uint frozenRows)
{
    private const double LineHeight = 14;
    private readonly SheetData _rows = new();
    private Row _row = new();
    private int _column;

    public string Name { get; } = name;

    /// <summary>Number of the last row begun. [1-based]</summary>
    public uint RowNumber { get; private set; }

    public SheetBuilder NewRow()
    {
        _row = new Row { RowIndex = ++RowNumber };
        _column = 0;
        _rows.Append(_row);
        return this;
    }

    /// <summary>Sets one text in each cell of a new row.</summary>
    public SheetBuilder Texts(CellStyle style, params IEnumerable<string> texts)
    {
        NewRow();
        foreach (var text in texts) Text(text, style);
        return this;
    }

    public SheetBuilder Text(string text, CellStyle style = CellStyle.Text)
    {
        if (style is not (CellStyle.Title or CellStyle.Line or CellStyle.StrongLine)) Grow(text);
        var guarded = style == CellStyle.Text && FormulaGuard.Text(text) != text ? CellStyle.QuotedText : style;
        Add(new Cell(new InlineString(new Text(Printable(text)) { Space = SpaceProcessingModeValues.Preserve })) { DataType = CellValues.InlineString }, guarded);
        return this;
    }

    /// <summary>Sets a number and gives where it stands, absolute and with the sheet's name.</summary>
    public string Number(double value, CellStyle style) =>
        Add(new Cell(new CellValue(value.ToString("R", CultureInfo.InvariantCulture))), style);

    /// <summary>Sets a formula and gives where it stands.</summary>
    public string Formula(string formula, CellStyle style) => Add(new Cell(new CellFormula(formula)), style);

    public SheetBuilder Skip()
    {
        _column++;
        return this;
    }

    public Worksheet Build() => new(
        new SheetProperties(new PageSetupProperties { FitToPage = true }),
        new SheetViews(new SheetView(Frozen()) { WorkbookViewId = 0, ShowGridLines = false }),
        new SheetFormatProperties { DefaultRowHeight = LineHeight },
        new Columns(columnWidths.Select((width, i) => new Column { Min = (uint)i + 1, Max = (uint)i + 1, Width = width, CustomWidth = true })),
        _rows,
        new PageSetup { Orientation = OrientationValues.Landscape, FitToWidth = 1, FitToHeight = 0 });

    /// <summary>"C7" for column 2, row 7.</summary>
    public static string Reference(int column, uint row) => $"{(char)('A' + column)}{row}";

    private OpenXmlElement[] Frozen() => frozenRows == 0 ? [] :
    [
        new Pane { VerticalSplit = frozenRows, TopLeftCell = Reference(0, frozenRows + 1), ActivePane = PaneValues.BottomLeft, State = PaneStateValues.Frozen },
        new Selection { Pane = PaneValues.BottomLeft },
    ];

    private string Add(Cell cell, CellStyle style)
    {
        cell.CellReference = Reference(_column, RowNumber);
        cell.StyleIndex = (uint)style;
        _row.Append(cell);
        return $"'{Name}'!${(char)('A' + _column++)}${RowNumber}";
    }

    /// <summary>Makes the row high enough for text that wraps; a column's width is about its count of characters.</summary>
    private void Grow(string text)
    {
        var height = Math.Ceiling(text.Length / columnWidths[Math.Min(_column, columnWidths.Count - 1)]) * LineHeight;
        if (height <= (_row.Height?.Value ?? LineHeight)) return;
        _row.Height = height;
        _row.CustomHeight = true;
    }

    /// <summary>Leaves out what XML cannot hold.</summary>
    private static string Printable(string text) => string.Concat(text.Where(c => System.Xml.XmlConvert.IsXmlChar(c) || char.IsSurrogate(c)));
}
