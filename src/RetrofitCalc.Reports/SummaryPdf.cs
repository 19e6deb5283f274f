using RetrofitCalc.Reports.Pdf;

namespace RetrofitCalc.Reports;

/// <summary>The summary on paper: one sheet for the board, then annexes, with the study file attached.</summary>
public static class SummaryPdf
{
    private const string AttachmentName = "study.json";

    /// <summary>Writes the PDF.</summary>
    /// <param name="summary">What to print.</param>
    /// <param name="studyFile">The study file as exported, to be attached.</param>
    /// <param name="output">Where to; stays open.</param>
    public static void Write(BudgetSummary summary, ReadOnlyMemory<byte> studyFile, Stream output)
    {
        ArgumentNullException.ThrowIfNull(summary);
        PdfOutput.Write(output, summary.Head, summary.Title, sheets =>
        {
            var board = new BoardSheet(sheets, summary);
            board.Set();
            var annexes = new AnnexSheets(sheets, summary);
            annexes.SetInputs(chartsToo: !board.ChartsFit);
            annexes.SetAssumptions();
            new ChecklistSheets(sheets, summary.Safety).Set("Annex C: safety notices and checklist");
            if (summary.Light is { } light) new LightSheets(sheets, light).Set();
            sheets.Document.AddEmbeddedFile(AttachmentName, new MemoryStream(studyFile.ToArray()));
        });
    }
}
