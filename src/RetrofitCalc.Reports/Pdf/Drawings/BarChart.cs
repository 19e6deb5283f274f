using PdfSharp.Drawing;

namespace RetrofitCalc.Reports.Pdf.Drawings;

/// <summary>Pairs of bars from zero: now above, proposed below.</summary>
internal static class BarChart
{
    private const double KeyHeight = 14;

    public static void Draw(Sheets s, BarDrawing drawing, XRect box)
    {
        if (drawing.Pairs.Count == 0) return;
        var names = Math.Min(box.Width * 0.34, drawing.Pairs.Max(pair => s.Lines.Width(pair.Name, s.Type.Note)) + 8);
        var values = drawing.Pairs.SelectMany(pair => new[] { pair.Now, pair.Proposed }).OfType<Bar>().ToList();
        var room = box.Width - names - values.Max(bar => s.Lines.Width(bar.Label, s.Type.Note)) - 6;
        var longest = Math.Max(1, values.Max(bar => bar.Value));
        var step = Math.Min(34, (box.Height - KeyHeight - 4) / drawing.Pairs.Count);
        var thick = Math.Min(10, step * 0.4);
        for (var i = 0; i < drawing.Pairs.Count; i++)
        {
            var (pair, top) = (drawing.Pairs[i], box.Y + 4 + i * step);
            Chart.Left(s, s.Lines.Break(pair.Name, s.Type.Note, names - 4)[0], box.X, top + thick + 3);
            XRect Box(Bar bar, double y) => new(box.X + names, y, Math.Max(0, bar.Value) / longest * room, thick);
            Now(s, Box(pair.Now, top), pair.Now, drawing.LossIsHatched);
            if (pair.Proposed is { } after) Proposed(s, Box(after, top + thick + 1), after, drawing.LossIsHatched);
        }
        Key(s, box.X + names, box.Bottom - 3, drawing);
    }

    private static void Now(Sheets s, XRect box, Bar bar, bool lossIsHatched)
    {
        if (lossIsHatched)
        {
            s.Graphics.DrawRectangle(Typography.Pen(Typography.Now, 0.7), Typography.Brush(Typography.NowWash), box);
            Chart.Hatched(s, Loss(box, bar), Typography.Now, Typography.NowWash);
        }
        else Chart.Hatched(s, box, Typography.Now, Typography.NowWash);
        Chart.Left(s, bar.Label, box.Right + 4, box.Y + box.Height / 2 + 2.6);
    }

    private static void Proposed(Sheets s, XRect box, Bar bar, bool lossIsHatched)
    {
        Chart.Solid(s, box);
        if (lossIsHatched) Chart.Hatched(s, Loss(box, bar), Typography.Proposed, XColors.White);
        Chart.Left(s, bar.Label, box.Right + 4, box.Y + box.Height / 2 + 2.6);
    }

    private static XRect Loss(XRect box, Bar bar)
    {
        var width = bar.Value > 0 ? box.Width * bar.Loss / bar.Value : 0;
        return new XRect(box.Right - width, box.Y, width, box.Height);
    }

    private static void Key(Sheets s, double x, double baseline, BarDrawing drawing)
    {
        var now = new XRect(x, baseline - 7, 8, 8);
        if (drawing.LossIsHatched) s.Graphics.DrawRectangle(Typography.Pen(Typography.Now, 0.7), Typography.Brush(Typography.NowWash), now);
        else Chart.Hatched(s, now, Typography.Now, Typography.NowWash);
        Chart.Left(s, "now", x + 11, baseline);
        if (drawing.Pairs.Any(pair => pair.Proposed is not null))
        {
            Chart.Solid(s, new XRect(x + 42, baseline - 7, 8, 8));
            Chart.Left(s, "proposed", x + 53, baseline);
        }
        if (!drawing.LossIsHatched) return;
        Chart.Hatched(s, new XRect(x + 104, baseline - 7, 8, 8), Typography.Now, Typography.NowWash);
        Chart.Left(s, "ballast loss", x + 115, baseline);
    }
}
