using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Spreadsheet;

namespace RetrofitCalc.Reports.Workbook;

/// <summary>Fonts, fills and number formats. Input cells are ochre: change them and everything follows.</summary>
internal static class WorkbookStyles
{
    private const string Family = "DejaVu Sans Condensed";
    private const uint MoneyFormat = 164;
    private const uint PriceFormat = 165;
    private const uint WholeFormat = 3;      // #,##0
    private const uint DecimalFormat = 4;    // #,##0.00
    private const uint PercentFormat = 10;   // 0.00%

    public static Stylesheet For(string currencySign) => new(
        new NumberingFormats(
            Format(MoneyFormat, currencySign, "#,##0.00"),
            Format(PriceFormat, currencySign, "#,##0.0000")) { Count = 2 },
        new Fonts(Font(10, false), Font(15, true), Font(10, true)) { Count = 3 },
        new Fills(
            new Fill(new PatternFill { PatternType = PatternValues.None }),
            new Fill(new PatternFill { PatternType = PatternValues.Gray125 }),
            Solid("FFFAF1DC"), Solid("FFF4F4F1")) { Count = 4 },
        new Borders(new Border(new LeftBorder(), new RightBorder(), new TopBorder(), new BottomBorder(), new DiagonalBorder())) { Count = 1 },
        new CellStyleFormats(new CellFormat()) { Count = 1 },
        Formats());

    private static CellFormats Formats()
    {
        CellFormat[] formats =
        [
            Wrapped(new CellFormat { FontId = 0 }),
            Wrapped(new CellFormat { FontId = 0, QuotePrefix = true }),
            new() { FontId = 1 },
            Wrapped(new CellFormat { FontId = 2, FillId = 3 }),
            Wrapped(new CellFormat { FontId = 2 }),
            Number(WholeFormat), Number(DecimalFormat), Number(MoneyFormat), Number(MoneyFormat, font: 2), Number(PercentFormat), Number(PriceFormat),
            Number(WholeFormat, fill: 2), Number(DecimalFormat, fill: 2), Number(MoneyFormat, fill: 2), Number(PercentFormat, fill: 2), Number(PriceFormat, fill: 2),
            Number(WholeFormat, font: 2),
            new() { FontId = 0, QuotePrefix = true },
            new() { FontId = 2, QuotePrefix = true },
        ];
        return new CellFormats(formats.Cast<OpenXmlElement>()) { Count = (uint)formats.Length };
    }

    private static CellFormat Number(uint format, uint font = 0, uint fill = 0) => new()
    {
        NumberFormatId = format,
        FontId = font,
        FillId = fill,
        ApplyNumberFormat = true,
        ApplyFill = fill > 0,
        ApplyFont = true,
        Alignment = new Alignment { Vertical = VerticalAlignmentValues.Top },
        ApplyAlignment = true,
    };

    private static CellFormat Wrapped(CellFormat format)
    {
        format.Alignment = new Alignment { Vertical = VerticalAlignmentValues.Top, WrapText = true };
        (format.ApplyAlignment, format.ApplyFont, format.ApplyFill) = (true, true, true);
        return format;
    }

    private static NumberingFormat Format(uint id, string sign, string digits)
    {
        var quoted = "\"" + sign.Replace("\"", "", StringComparison.Ordinal) + "\"";
        return new NumberingFormat { NumberFormatId = id, FormatCode = $"{quoted}{digits};\"−\"{quoted}{digits}" };
    }

    private static Font Font(double size, bool bold)
    {
        var font = new Font();
        if (bold) font.Append(new Bold());
        font.Append(new FontSize { Val = size }, new FontName { Val = Family });
        return font;
    }

    private static Fill Solid(string rgb) => new(new PatternFill(new ForegroundColor { Rgb = rgb }, new BackgroundColor { Indexed = 64 }) { PatternType = PatternValues.Solid });
}
