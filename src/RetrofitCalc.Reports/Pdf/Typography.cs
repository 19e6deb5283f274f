using PdfSharp.Drawing;

namespace RetrofitCalc.Reports.Pdf;

/// <summary>Every font, colour and measure of the printed sheets. Lengths in points.</summary>
internal sealed class Typography
{
    public const string HeadFamily = "DejaVu Serif Condensed";
    private const string TextFamily = "DejaVu Sans Condensed";

    public const double Leading = 1.38;
    public const double SideMargin = 43;
    public const double TopMargin = 30;
    public const double BottomMargin = 29;
    public const double CellGap = 9;
    public const double RowGap = 1.7;

    public Typography() => ShippedFonts.Use();

    private static readonly XFont SerifTitle = Font(HeadFamily, 15.5, true);
    private static readonly XFont SansTitle = Font(TextFamily, 15.5, true);
    private static readonly XFont SansHead = Font(TextFamily, 10.5, true);

    public XFont Head { get; } = Font(HeadFamily, 10.5, true);
    public XFont Text { get; } = Font(TextFamily, 8.8, false);
    public XFont Strong { get; } = Font(TextFamily, 8.8, true);
    public XFont Note { get; } = Font(TextFamily, 7.4, false);
    public XFont NoteStrong { get; } = Font(TextFamily, 7.4, true);
    public XFont Figure { get; } = Font(TextFamily, 14.5, true);

    public static XColor Ink { get; } = XColor.FromArgb(0x1c, 0x22, 0x25);
    public static XColor Soft { get; } = XColor.FromArgb(0x4b, 0x53, 0x56);
    public static XColor Hairline { get; } = XColor.FromArgb(0xbb, 0xbb, 0xbb);
    public static XColor Now { get; } = XColor.FromArgb(0x86, 0x58, 0x00);
    public static XColor NowWash { get; } = XColor.FromArgb(0xfa, 0xf1, 0xdc);
    public static XColor Proposed { get; } = XColor.FromArgb(0x0f, 0x5f, 0x61);
    public static XColor ProposedWash { get; } = XColor.FromArgb(0xee, 0xf3, 0xf1);
    public static XColor Stop { get; } = XColor.FromArgb(0x9c, 0x1f, 0x1c);
    public static XColor Unknown { get; } = XColor.FromArgb(0x5f, 0x65, 0x67);

    public static XBrush Brush(XColor color) => new XSolidBrush(color);

    public static XPen Pen(XColor color, double width) => new(color, width);

    public static double LineHeight(XFont font) => font.Size * Leading;

    /// <summary>The serif lacks some currency signs; a title that holds one is set in the sans, which has them.</summary>
    public static XFont Title(string text) => SerifHas(text) ? SerifTitle : SansTitle;

    /// <summary>The same for a heading.</summary>
    public XFont HeadOf(string text) => SerifHas(text) ? Head : SansHead;

    private static bool SerifHas(string text) => !text.Any(c => c is >= '\u20A0' and <= '\u20CF' and not '€');

    private static XFont Font(string family, double size, bool bold)
    {
        ShippedFonts.Use();
        return new XFont(family, size, bold ? XFontStyleEx.Bold : XFontStyleEx.Regular);
    }
}
