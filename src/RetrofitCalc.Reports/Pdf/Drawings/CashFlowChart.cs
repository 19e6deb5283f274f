using PdfSharp.Drawing;

namespace RetrofitCalc.Reports.Pdf.Drawings;

/// <summary>Cumulative cash flow: a line from the first cost up, a ring where the money is back.</summary>
internal static class CashFlowChart
{
    public static void Draw(Sheets s, CashFlowDrawing drawing, XRect box)
    {
        var font = s.Type.Note;
        var labels = drawing.Ticks.Max(tick => s.Lines.Width(tick.Label, font)) + 6;
        var plot = new XRect(box.X + labels, box.Y + 6, box.Width - labels - 8, box.Height - 2.4 * font.Size - 10);
        var (low, high) = (drawing.Ticks[0].Value, drawing.Ticks[^1].Value);
        var years = drawing.Cumulative.Count - 1;
        double X(double year) => plot.X + plot.Width * year / years;
        double Y(double money) => high == low ? plot.Bottom : plot.Bottom - plot.Height * (money - low) / (high - low);
        foreach (var (value, label) in drawing.Ticks)
        {
            s.Graphics.DrawLine(value == 0 ? Typography.Pen(Typography.Ink, 0.9) : Typography.Pen(Typography.Hairline, 0.5), plot.X, Y(value), plot.Right, Y(value));
            Chart.Right(s, label, plot.X - 4, Y(value) + 3);
        }
        for (var year = 0; year <= years; year += years > 12 ? 5 : 2) Chart.Centre(s, year.ToString(System.Globalization.CultureInfo.InvariantCulture), X(year), plot.Bottom + 12);
        Chart.Right(s, "years", plot.Right + 4, plot.Bottom + 21);
        s.Graphics.DrawLines(Typography.Pen(Typography.Proposed, 1.8), [.. drawing.Cumulative.Select((money, year) => new XPoint(X(year), Y(money)))]);
        if (drawing.PaybackYears is { } back) Ring(s, X(Math.Min(back, years)), Y(0), drawing.PaybackLabel);
    }

    private static void Ring(Sheets s, double x, double y, string label)
    {
        s.Graphics.DrawEllipse(Typography.Pen(Typography.Ink, 1.4), XBrushes.White, x - 3.4, y - 3.4, 6.8, 6.8);
        s.Graphics.DrawString(label, s.Type.NoteStrong, Typography.Brush(Typography.Ink), x + 6, y + 11);
    }
}
