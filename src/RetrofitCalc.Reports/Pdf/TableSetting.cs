using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;

namespace RetrofitCalc.Reports.Pdf;

/// <summary>Sets tables: heads repeat on every sheet, rows are never torn, numbers stand to the right.</summary>
internal sealed class TableSetting(Sheets sheets, ReportTable table, XRect column)
{
    private readonly double _unit = (column.Width - Typography.CellGap * (table.Columns.Count - 1)) / table.Columns.Sum(c => c.Weight);

    /// <summary>Sets a table over the whole width, on as many sheets as it takes.</summary>
    public static void Set(Sheets sheets, ReportTable table)
    {
        var setting = new TableSetting(sheets, table, new XRect(Sheets.Left, 0, sheets.Width, 0));
        for (var row = 0; row < table.Rows.Count;)
            row = setting.SetUntilFull(row);
    }

    /// <summary>Sets a whole table in a column at the sheet's place.</summary>
    public static void SetIn(Sheets sheets, ReportTable table, double x, double width, bool heads = true)
    {
        var setting = new TableSetting(sheets, table, new XRect(x, 0, width, 0));
        sheets.Tagged(PdfBlockLevelElementTag.Table, () =>
        {
            if (heads) setting.Heads();
            foreach (var row in table.Rows) setting.Row(row, PdfBlockLevelElementTag.TableDataCell);
        });
    }

    /// <summary>Height of a table in a column.</summary>
    public static double Height(Sheets sheets, ReportTable table, double width, bool heads = true)
    {
        var setting = new TableSetting(sheets, table, new XRect(0, 0, width, 0));
        return (heads ? setting.RowHeight(setting.HeadRow, sheets.Type.NoteStrong) : 0) + table.Rows.Sum(row => setting.RowHeight(row, setting.FontOf(row)));
    }

    private ReportRow HeadRow => new([.. table.Columns.Select(c => c.Head)]);

    private int SetUntilFull(int first)
    {
        var headHeight = RowHeight(HeadRow, sheets.Type.NoteStrong);
        sheets.Need(headHeight + RowHeight(table.Rows[first], FontOf(table.Rows[first])));
        var next = first;
        sheets.Tagged(PdfBlockLevelElementTag.Table, () =>
        {
            Heads();
            do Row(table.Rows[next], PdfBlockLevelElementTag.TableDataCell);
            while (++next < table.Rows.Count && sheets.Y + RowHeight(table.Rows[next], FontOf(table.Rows[next])) <= sheets.Floor);
        });
        if (next < table.Rows.Count) sheets.Y = sheets.Floor;
        return next;
    }

    private void Heads()
    {
        Ground(RowHeight(HeadRow, sheets.Type.NoteStrong));
        var top = sheets.Y;
        Cells(HeadRow, sheets.Type.NoteStrong, PdfBlockLevelElementTag.TableHeaderCell, Typography.Soft);
        for (var i = 0; i < table.Columns.Count; i++)
            if (table.Columns[i].Chosen) Line(X(i) - Typography.CellGap / 2, Width(i) + Typography.CellGap, top, Typography.Proposed, 2);
        Line(column.X, column.Width, sheets.Y, Typography.Ink, 0.7);
    }

    private void Row(ReportRow row, PdfBlockLevelElementTag cell)
    {
        Ground(RowHeight(row, FontOf(row)));
        if (row.Strong) Line(column.X, column.Width, sheets.Y, Typography.Ink, 0.5);
        Cells(row, FontOf(row), cell, row.Greyed ? Typography.Unknown : Typography.Ink);
        Line(column.X, column.Width, sheets.Y, row.Strong ? Typography.Ink : Typography.Hairline, 0.4);
    }

    private void Cells(ReportRow row, XFont font, PdfBlockLevelElementTag cell, XColor color)
    {
        var height = RowHeight(row, font);
        sheets.Tagged(PdfBlockLevelElementTag.TableRow, () =>
        {
            for (var i = 0; i < row.Cells.Count; i++)
            {
                var at = i;
                var tag = i == 0 && cell == PdfBlockLevelElementTag.TableDataCell ? PdfBlockLevelElementTag.TableHeaderCell : cell;
                sheets.Tagged(tag, () => Cell(row.Cells[at], at, font, table.Columns[at].Chosen && color == Typography.Soft ? Typography.Proposed : color));
            }
        });
        sheets.Y += height;
    }

    private void Cell(string text, int at, XFont font, XColor color)
    {
        var lines = sheets.Lines.Break(text, font, Width(at));
        for (var i = 0; i < lines.Count; i++)
        {
            var x = table.Columns[at].Numeric ? X(at) + Width(at) - sheets.Lines.Width(lines[i], font) : X(at);
            TextSetting.Draw(sheets, [lines[i]], x, sheets.Y + Typography.RowGap + i * Typography.LineHeight(font), font, color);
        }
    }

    private void Ground(double height)
    {
        for (var i = 0; i < table.Columns.Count; i++)
            if (table.Columns[i].Chosen)
            {
                var box = new XRect(X(i) - Typography.CellGap / 2, sheets.Y, Width(i) + Typography.CellGap, height);
                sheets.Artifact(() => sheets.Graphics.DrawRectangle(Typography.Brush(Typography.ProposedWash), box));
            }
    }

    private void Line(double x, double width, double y, XColor color, double weight) =>
        sheets.Artifact(() => sheets.Graphics.DrawLine(Typography.Pen(color, weight), x, y, x + width, y));

    private double RowHeight(ReportRow row, XFont font) =>
        row.Cells.Select((cell, i) => sheets.Lines.Break(cell, font, Width(i)).Count).Max() * Typography.LineHeight(font) + 2 * Typography.RowGap;

    /// <summary>Tables of many columns are set smaller.</summary>
    private XFont FontOf(ReportRow row) => table.Columns.Count > 6
        ? row.Strong ? sheets.Type.NoteStrong : sheets.Type.Note
        : row.Strong ? sheets.Type.Strong : sheets.Type.Text;

    private double Width(int i) => table.Columns[i].Weight * _unit;

    private double X(int i) => column.X + table.Columns.Take(i).Sum(c => c.Weight) * _unit + i * Typography.CellGap;
}
