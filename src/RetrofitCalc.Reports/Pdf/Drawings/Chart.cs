using PdfSharp.Drawing;

namespace RetrofitCalc.Reports.Pdf.Drawings;

/// <summary>What the drawings share: small labels, hatching, and the marks of now and proposed.</summary>
internal static class Chart
{
    private const double HatchGap = 3.2;

    public static void Left(Sheets s, string text, double x, double baseline) =>
        s.Graphics.DrawString(text, s.Type.Note, Typography.Brush(Typography.Ink), x, baseline);

    public static void Right(Sheets s, string text, double x, double baseline) => Left(s, text, x - s.Lines.Width(text, s.Type.Note), baseline);

    public static void Centre(Sheets s, string text, double x, double baseline) => Left(s, text, x - s.Lines.Width(text, s.Type.Note) / 2, baseline);

    /// <summary>Ink lines on a pale ground: told from the solid bars in grey print too.</summary>
    public static void Hatched(Sheets s, XRect box, XColor ink, XColor ground)
    {
        if (box.Width <= 0) return;
        s.Graphics.DrawRectangle(Typography.Brush(ground), box);
        var state = s.Graphics.Save();
        s.Graphics.IntersectClip(box);
        for (var x = box.X - box.Height; x < box.Right; x += HatchGap)
            s.Graphics.DrawLine(Typography.Pen(ink, 0.9), x, box.Bottom, x + box.Height, box.Y);
        s.Graphics.Restore(state);
        s.Graphics.DrawRectangle(Typography.Pen(ink, 0.7), box);
    }

    public static void Solid(Sheets s, XRect box)
    {
        if (box.Width > 0) s.Graphics.DrawRectangle(Typography.Brush(Typography.Proposed), box);
    }
}
