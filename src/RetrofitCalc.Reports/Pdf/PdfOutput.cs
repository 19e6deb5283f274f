namespace RetrofitCalc.Reports.Pdf;

/// <summary>Sets a document twice: once to count its sheets, once to print "page x of y".</summary>
internal static class PdfOutput
{
    public static void Write(Stream output, SheetHead head, string title, Action<Sheets> set)
    {
        using var bytes = new MemoryStream();
        using (var counted = new Sheets(head, title, 0))
        {
            set(counted);
            using var sheets = new Sheets(head, title, counted.Document.PageCount);
            set(sheets);
            sheets.Finish();
            sheets.Document.Save(bytes, closeStream: false);
        }
        output.Write(SteadyBytes.Of(bytes.ToArray(), head.Day));
    }
}
