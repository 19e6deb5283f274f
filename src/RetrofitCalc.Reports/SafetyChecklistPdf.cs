using RetrofitCalc.Reports.Pdf;

namespace RetrofitCalc.Reports;

/// <summary>Notices and checklist alone, to print and sign at the site.</summary>
public static class SafetyChecklistPdf
{
    /// <summary>Writes the PDF.</summary>
    /// <param name="summary">Holds the notices and the checklist.</param>
    /// <param name="output">Where to; stays open.</param>
    public static void Write(BudgetSummary summary, Stream output)
    {
        ArgumentNullException.ThrowIfNull(summary);
        var title = "Safety notices and checklist";
        PdfOutput.Write(output, summary.Head, $"{title}: {summary.Head.Site}", sheets => new ChecklistSheets(sheets, summary.Safety).Set(title));
    }
}
