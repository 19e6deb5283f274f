using System.Globalization;
using PdfSharp.Drawing;

namespace RetrofitCalc.Reports.Pdf.Drawings;

/// <summary>Replacements by area: lamps hollow circles, ballasts filled squares, tubes after the change filled discs below.</summary>
internal static class CalendarChart
{
    private const double RowHeight = 26;
    private const double Mark = 5;

    public static double Height(CalendarDrawing drawing) => drawing.Rows.Count * RowHeight + 36;

    public static void Draw(Sheets s, CalendarDrawing drawing, XRect box)
    {
        var names = Math.Min(box.Width * 0.3, drawing.Rows.Select(row => s.Lines.Width(row.Name, s.Type.Note)).DefaultIfEmpty(0).Max() + 10);
        var plot = new XRect(box.X + names, box.Y + 4, box.Width - names - 6, drawing.Rows.Count * RowHeight);
        double X(double year) => plot.X + plot.Width * year / drawing.Years;
        for (var year = 0; year <= drawing.Years; year++)
        {
            s.Graphics.DrawLine(Typography.Pen(Typography.Hairline, 0.4), X(year), plot.Y, X(year), plot.Bottom);
            if (year < drawing.Years && (drawing.Years <= 12 || year % 5 == 0))
                Chart.Centre(s, (drawing.FirstYear + year).ToString(CultureInfo.InvariantCulture), X(year + 0.5), plot.Bottom + 11);
        }
        for (var i = 0; i < drawing.Rows.Count; i++) Row(s, drawing.Rows[i], box.X, plot.Y + i * RowHeight, X, names);
        Key(s, plot.X, plot.Bottom + 27);
    }

    private static void Row(Sheets s, CalendarRow row, double left, double top, Func<double, double> x, double names)
    {
        Chart.Left(s, s.Lines.Break(row.Name, s.Type.Note, names - 6)[0], left, top + 14);
        foreach (var due in row.Lamps) Lamp(s, x(due), top + 6);
        foreach (var due in row.Ballasts) Ballast(s, x(due), top + 13);
        foreach (var due in row.Tubes) Tube(s, x(due), top + 20);
        s.Graphics.DrawLine(Typography.Pen(Typography.Hairline, 0.4), left, top + RowHeight, x(0), top + RowHeight);
    }

    private static void Lamp(Sheets s, double x, double y) =>
        s.Graphics.DrawEllipse(Typography.Pen(Typography.Now, 1), XBrushes.White, x - Mark / 2, y - Mark / 2, Mark, Mark);

    private static void Ballast(Sheets s, double x, double y) =>
        s.Graphics.DrawRectangle(Typography.Brush(Typography.Now), x - Mark / 2, y - Mark / 2, Mark, Mark);

    private static void Tube(Sheets s, double x, double y) =>
        s.Graphics.DrawEllipse(Typography.Brush(Typography.Proposed), x - Mark / 2, y - Mark / 2, Mark, Mark);

    private static void Key(Sheets s, double x, double y)
    {
        Lamp(s, x + 3, y - 3);
        Chart.Left(s, "lamps, now", x + 9, y);
        Ballast(s, x + 73, y - 3);
        Chart.Left(s, "ballasts, now", x + 79, y);
        Tube(s, x + 153, y - 3);
        Chart.Left(s, "tubes or luminaires, proposed", x + 159, y);
    }
}
