using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;

namespace RetrofitCalc.Reports.Pdf;

/// <summary>Headings, paragraphs and lists.</summary>
internal static class TextSetting
{
    public static void Title(this Sheets s, string text) => s.Block(text, Typography.Title(text), PdfBlockLevelElementTag.Heading1, Typography.Ink);

    public static void Head(this Sheets s, string text, double gap = 9)
    {
        s.Need(gap + Typography.LineHeight(s.Type.Head) + 6 * Typography.LineHeight(s.Type.Text));
        s.Y += gap;
        s.Block(text, s.Type.HeadOf(text), PdfBlockLevelElementTag.Heading2, Typography.Ink);
        s.Y += 1;
    }

    public static void Paragraph(this Sheets s, string text) => s.Block(text, s.Type.Text, PdfBlockLevelElementTag.Paragraph, Typography.Ink);

    public static void Note(this Sheets s, string text) => s.Block(text, s.Type.Note, PdfBlockLevelElementTag.Paragraph, Typography.Soft);

    public static void Bullet(this Sheets s, string sentence)
    {
        s.Block("• " + sentence, s.Type.Text, PdfBlockLevelElementTag.Paragraph, Typography.Ink);
        s.Y += 1.5;
    }

    /// <summary>Sets a paragraph in a box and gives its height, without moving the sheet's place.</summary>
    public static double In(this Sheets s, double x, double y, double width, string text, XFont font, XColor color)
    {
        var lines = s.Lines.Break(text, font, width);
        s.Tagged(PdfBlockLevelElementTag.Paragraph, () => Draw(s, lines, x, y, font, color));
        return lines.Count * Typography.LineHeight(font);
    }

    public static double Height(this Sheets s, string text, XFont font, double width) =>
        s.Lines.Break(text, font, width).Count * Typography.LineHeight(font);

    public static void Draw(Sheets s, IReadOnlyList<string> lines, double x, double y, XFont font, XColor color)
    {
        var brush = Typography.Brush(color);
        for (var i = 0; i < lines.Count; i++)
            s.Graphics.DrawString(lines[i], font, brush, x, y + Baseline(font) + i * Typography.LineHeight(font));
    }

    public static double Baseline(XFont font) => font.Size * 1.05;

    private static void Block(this Sheets s, string text, XFont font, PdfBlockLevelElementTag tag, XColor color)
    {
        var lines = s.Lines.Break(text, font, s.Width);
        var height = lines.Count * Typography.LineHeight(font);
        s.Need(height);
        s.Tagged(tag, () => Draw(s, lines, Sheets.Left, s.Y, font, color));
        s.Y += height;
    }
}
