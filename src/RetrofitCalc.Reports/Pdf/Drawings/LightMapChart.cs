using PdfSharp.Drawing;

namespace RetrofitCalc.Reports.Pdf.Drawings;

/// <summary>Two light maps side by side on one scale: tints from dark to pale, a line at each step, values at places, the target as a double line.</summary>
internal static class LightMapChart
{
    private const double Gutter = 22;
    private const double Head = 15;
    private const double ScaleHeight = 34;
    private const double TallestMap = 170;

    private static readonly XColor[] Tints =
    [
        XColor.FromArgb(0x3a, 0x33, 0x50), XColor.FromArgb(0x5b, 0x52, 0x70), XColor.FromArgb(0x93, 0x8c, 0xa0), XColor.FromArgb(0xac, 0xa7, 0xab),
        XColor.FromArgb(0xce, 0xc8, 0xbb), XColor.FromArgb(0xec, 0xe2, 0xbf), XColor.FromArgb(0xfd, 0xf7, 0xdd),
    ];

    public static double Height(BenchMapsDrawing drawing, double width) => Head + MapHeight(drawing, width) + 14 + ScaleHeight;

    public static void Draw(Sheets s, BenchMapsDrawing drawing, XRect box)
    {
        var size = new XSize(MapWidth(drawing, box.Width), MapHeight(drawing, box.Width));
        One(s, drawing, drawing.Now, "Now", new XRect(new XPoint(box.X, box.Y), size));
        if (drawing.After is { } after) One(s, drawing, after, "After the change, new", new XRect(new XPoint(box.X + (box.Width + Gutter) / 2, box.Y), size));
        Scale(s, drawing, box.X, box.Y + Head + size.Height + 18);
    }

    private static double MapWidth(BenchMapsDrawing drawing, double width) =>
        Math.Min((width - Gutter) / 2, TallestMap * drawing.Now.Length / drawing.Now.Width);

    private static double MapHeight(BenchMapsDrawing drawing, double width) => MapWidth(drawing, width) * drawing.Now.Width / drawing.Now.Length;

    private static void One(Sheets s, BenchMapsDrawing drawing, DrawnMap map, string name, XRect box)
    {
        s.Graphics.DrawString(name, s.Type.Strong, Typography.Brush(Typography.Ink), box.X, box.Y + s.Type.Strong.Size);
        var bench = new XRect(box.X, box.Y + Head, box.Width, box.Height);
        var place = new MapPlace(bench, map);
        Bands(s, drawing.Scale, map, place);
        if (drawing.Scale.Target is { } target) Target(s, ContourLines.Of(map.Map.X, map.Map.Y, map.Map.Light, target).Select(place.Line));
        s.Graphics.DrawRectangle(Typography.Pen(Typography.Ink, 1), bench);
        foreach (var (at, light, text) in map.Marks) Value(s, text, place.At(at), bench, LightScale.IsDark(drawing.Scale.TintOf(light)));
        Chart.Left(s, "0", bench.X, bench.Bottom + 9);
        Chart.Right(s, $"{drawing.Size.Length} by {drawing.Size.Width}", bench.Right, bench.Bottom + 9);
    }

    private static void Bands(Sheets s, LightScale scale, DrawnMap map, MapPlace place)
    {
        s.Graphics.DrawRectangle(new XSolidBrush(Tints[scale.Tint(0) - 1]), place.Known);
        var line = new XPen(XColor.FromArgb(150, Typography.Ink), 0.4);
        foreach (var (step, level) in scale.Steps.Levels.Index())
        {
            var path = new XGraphicsPath { FillMode = XFillMode.Alternate };
            foreach (var outline in ContourLines.AtOrAbove(map.Map.X, map.Map.Y, map.Map.Light, level).Where(outline => outline.Count > 3)) path.AddPolygon(place.Line(outline));
            s.Graphics.DrawPath(new XSolidBrush(Tints[scale.Tint(step + 1) - 1]), path);
            foreach (var contour in ContourLines.Of(map.Map.X, map.Map.Y, map.Map.Light, level)) s.Graphics.DrawLines(line, place.Line(contour));
        }
    }

    private static void Target(Sheets s, IEnumerable<XPoint[]> lines)
    {
        var over = new XPen(XColors.White, 0.7) { DashStyle = XDashStyle.Dash };
        foreach (var line in lines)
        {
            s.Graphics.DrawLines(Typography.Pen(Typography.Ink, 2), line);
            s.Graphics.DrawLines(over, line);
        }
    }

    private static void Value(Sheets s, string text, XPoint at, XRect bench, bool onDark)
    {
        var width = s.Lines.Width(text, s.Type.NoteStrong);
        var x = Math.Clamp(at.X - width / 2, bench.X + 2, bench.Right - width - 2);
        var y = Math.Clamp(at.Y + 2.6, bench.Y + 8, bench.Bottom - 2.5);
        s.Graphics.DrawString(text, s.Type.NoteStrong, onDark ? XBrushes.White : Typography.Brush(Typography.Ink), x, y);
    }

    private static void Scale(Sheets s, BenchMapsDrawing drawing, double x, double y)
    {
        const double step = 34;
        Chart.Left(s, "dim", x, y + 8);
        var left = x + 22;
        for (var i = 0; i < drawing.Scale.Steps.Count; i++)
            s.Graphics.DrawRectangle(Typography.Pen(Typography.Ink, 0.5), new XSolidBrush(Tints[drawing.Scale.Tint(i) - 1]), left + i * step, y, step, 9);
        foreach (var (i, mark) in drawing.ScaleMarks.Index()) Chart.Centre(s, mark, left + i * step, y + 18);
        Chart.Left(s, $"bright, {LightText.LightUnit}", left + drawing.Scale.Steps.Count * step + 8, y + 8);
    }

    /// <summary>Metres of the bench on the sheet; the far edge is at the top.</summary>
    private sealed class MapPlace(XRect bench, DrawnMap map)
    {
        public XRect Known => new(At(new(map.Map.X[0], map.Map.Y[0])), At(new(map.Map.X[^1], map.Map.Y[^1])));

        public XPoint At(Engine.CropLight.PlanePoint point) =>
            new(bench.X + (point.X / map.Length + 0.5) * bench.Width, bench.Y + (point.Y / map.Width + 0.5) * bench.Height);

        public XPoint[] Line(IReadOnlyList<Engine.CropLight.PlanePoint> points) => [.. points.Select(At)];
    }
}
