using PdfSharp.Fonts;

namespace RetrofitCalc.Reports.Pdf;

/// <summary>The fonts that ship with the program, so that every machine prints the same and no currency sign is missing.</summary>
internal sealed class ShippedFonts : IFontResolver
{
    private static readonly Lock Gate = new();

    /// <summary>PDFsharp takes one resolver for the whole process, before its first font.</summary>
    public static void Use()
    {
        lock (Gate)
            GlobalFontSettings.FontResolver ??= new ShippedFonts();
    }

    public FontResolverInfo ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        new(familyName == Typography.HeadFamily ? "DejaVuSerifCondensed-Bold" : isBold ? "DejaVuSansCondensed-Bold" : "DejaVuSansCondensed");

    public byte[] GetFont(string faceName)
    {
        using var stream = typeof(ShippedFonts).Assembly.GetManifestResourceStream("Fonts." + faceName)
            ?? throw new InvalidOperationException($"Font {faceName} does not ship with the program.");
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}
