using System.Security.Cryptography;
using System.Text;
using PdfSharp.Pdf;

namespace RetrofitCalc.Reports.Pdf;

/// <summary>Title, dates and identifiers of a document: all from the request, none from the clock.</summary>
internal static class DocumentFacts
{
    public static void Set(PdfDocument document, SheetHead head, string title)
    {
        document.Info.Title = title;
        document.Info.Subject = $"{head.Study}, {head.Site}";
        document.Info.Author = "RetrofitCalc";
        document.Info.Creator = "RetrofitCalc";
        document.Info.CreationDate = document.Info.ModificationDate = head.Day.ToDateTimeUnspecified();
        document.ViewerPreferences.DisplayDocTitle = true;
        var id = Encoding.Latin1.GetString(SHA256.HashData(Encoding.UTF8.GetBytes(title + head)).AsSpan(0, 16));
        document.Internals.FirstDocumentID = document.Internals.SecondDocumentID = id;
    }
}
