using System.Globalization;
using PdfSharp.Drawing;

namespace RetrofitCalc.Reports.Pdf.Drawings;

/// <summary>A bench from above, to scale: its places numbered as one walks, with a box to write in where there is room.</summary>
internal sealed class BenchDrawing(Sheets s, MeasuringForm form)
{
    private const double MarkWidth = 50;
    private const double MarkHeight = 34;
    private const double Tallest = 330;
    private const double NarrowestBlank = 27;
    private const double LowestBlank = 22;

    private double Room => s.Width - MarkWidth - 26;

    /// <summary>Whether the places lie far enough apart to write on the drawing.</summary>
    public bool HoldsBlanks => Nearest(form.Columns, form.Length) * Scale(Tallest) >= NarrowestBlank && form.Rows.Count > 0
        && Nearest(form.Rows, form.Width) * Scale(Tallest) >= LowestBlank;

    /// <summary>Height it takes when there is so much room.</summary>
    public double Height(double room) => form.Width * Scale(Math.Clamp(room - MarkHeight - 16, 60, Tallest)) + MarkHeight + 16;

    public void Draw(XRect box)
    {
        var scale = Scale(box.Height - MarkHeight - 16);
        var bench = new XRect(box.X + MarkWidth, box.Y + MarkHeight, form.Length * scale, form.Width * scale);
        s.Graphics.DrawString(form.Marks, s.Type.Note, Typography.Brush(Typography.Soft), box.X, box.Y + s.Type.Note.Size);
        Lines(bench, scale);
        s.Graphics.DrawRectangle(Typography.Pen(Typography.Ink, 1.2), bench);
        // A box on the edge of the bench must not cover the mark beside it.
        var (beside, above) = HoldsBlanks && form.CellsAlong.Count == 0 ? (BlankSize(scale).Width / 2, BlankSize(scale).Height / 2) : (0, 0);
        foreach (var (at, mark) in Apart(form.Columns, scale, 22)) Chart.Centre(s, mark, bench.X + at * scale, bench.Y - 5 - above);
        foreach (var (at, mark) in Apart(form.Rows, scale, 8)) Chart.Right(s, mark, bench.X - 5 - beside, bench.Y + at * scale + 3);
        Path(bench, scale);
        foreach (var point in form.Points) Place(point, bench, scale);
    }

    /// <summary>Not larger than the sheet, nor taller than its room.</summary>
    private double Scale(double room) => Math.Min(Room / form.Length, room / form.Width);

    private void Lines(XRect bench, double scale)
    {
        var cells = form.CellsAlong.Count > 0 || form.CellsAcross.Count > 0 || form.Rows.Count == 0;
        var pen = Typography.Pen(Typography.Hairline, 0.5);
        foreach (var at in cells ? form.CellsAlong : form.Columns.Select(c => c.At)) s.Graphics.DrawLine(pen, bench.X + at * scale, bench.Y, bench.X + at * scale, bench.Bottom);
        foreach (var at in cells ? form.CellsAcross : form.Rows.Select(r => r.At)) s.Graphics.DrawLine(pen, bench.X, bench.Y + at * scale, bench.Right, bench.Y + at * scale);
    }

    /// <summary>The way from place to place, faint and dotted.</summary>
    private void Path(XRect bench, double scale)
    {
        if (form.Points.Count < 2) return;
        var pen = Typography.Pen(Typography.Unknown, 0.5);
        pen.DashStyle = XDashStyle.Dot;
        s.Graphics.DrawLines(pen, [.. form.Points.Select(point => new XPoint(bench.X + point.X * scale, bench.Y + point.Y * scale))]);
    }

    private void Place(MeasuringPoint point, XRect bench, double scale)
    {
        var (x, y) = (bench.X + point.X * scale, bench.Y + point.Y * scale);
        var number = point.Number.ToString(CultureInfo.InvariantCulture);
        if (!HoldsBlanks)
        {
            s.Graphics.DrawEllipse(Typography.Brush(Typography.Ink), x - 1.2, y - 1.2, 2.4, 2.4);
            Chart.Left(s, number, x + 2, y - 2);
            return;
        }
        var (width, height) = BlankSize(scale);
        s.Graphics.DrawRectangle(Typography.Pen(Typography.Ink, 0.6), XBrushes.White, x - width / 2, y - height / 2, width, height);
        Chart.Left(s, number, x - width / 2 + 1.5, y - height / 2 + 6.5);
    }

    private (double Width, double Height) BlankSize(double scale) =>
        (Math.Min(46, 0.82 * Nearest(form.Columns, form.Length) * scale), Math.Min(19, 0.75 * Nearest(form.Rows, form.Width) * scale));

    private static double Nearest(IReadOnlyList<(double At, string Mark)> places, double side) =>
        places.Zip(places.Skip(1), (a, b) => b.At - a.At).DefaultIfEmpty(side).Min();

    /// <summary>Marks that would print over each other are left out.</summary>
    private static IEnumerable<(double At, string Mark)> Apart(IReadOnlyList<(double At, string Mark)> places, double scale, double least)
    {
        double? last = null;
        foreach (var place in places)
        {
            if (place.At * scale - last < least) continue;
            last = place.At * scale;
            yield return place;
        }
    }
}
