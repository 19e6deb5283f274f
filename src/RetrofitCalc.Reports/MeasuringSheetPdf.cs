using RetrofitCalc.Reports.Pdf;

namespace RetrofitCalc.Reports;

/// <summary>The measuring sheet to print and take along.</summary>
public static class MeasuringSheetPdf
{
    /// <summary>Writes the PDF.</summary>
    /// <param name="sheet">What to print.</param>
    /// <param name="output">Where to; stays open.</param>
    public static void Write(MeasuringSheet sheet, Stream output)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        PdfOutput.Write(output, sheet.Head, $"{sheet.Title}, {sheet.Head.Site}", sheets =>
        {
            foreach (var form in sheet.Forms) new MeasuringFormSheet(sheets, sheet, form).Set();
        });
    }
}
