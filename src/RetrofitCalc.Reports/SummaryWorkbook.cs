using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports.Workbook;

namespace RetrofitCalc.Reports;

/// <summary>The summary as a workbook whose main figures are live formulas over its input cells.</summary>
public static class SummaryWorkbook
{
    /// <summary>Writes the workbook.</summary>
    /// <param name="summary">The summary of the result.</param>
    /// <param name="result">The result it was made from.</param>
    /// <param name="output">Where to; stays open.</param>
    public static void Write(BudgetSummary summary, StudyResult result, Stream output)
    {
        ArgumentNullException.ThrowIfNull(summary);
        ArgumentNullException.ThrowIfNull(result);
        using var bytes = new MemoryStream();
        using (var book = SpreadsheetDocument.Create(bytes, SpreadsheetDocumentType.Workbook))
            Fill(book, summary, new WorkbookContext(summary, result, result.Options.FirstOrDefault(o => o.Option.Id == summary.AskedOption)));
        bytes.WriteTo(output);
    }

    private static (SheetBuilder[] Sheets, CashFlowSheet Flow) Sheets(WorkbookContext context)
    {
        var inputs = new InputsSheet(context);
        var lines = new LinesSheet(context, inputs);
        var main = SummarySheet.Of(context, inputs, lines, out var firstCost, out var saving);
        var flow = new CashFlowSheet(context, inputs, firstCost, saving);
        if (context.Option is not null) SummarySheet.Money(main, flow);
        var bills = new BillLinesSheet(context);
        return ([main, inputs.Sheet, lines.Sheet, SeasonsSheet.Of(context), BillSheet.Of(context, bills), bills.Sheet, flow.Sheet, .. context.Summary.Light is null ? Array.Empty<SheetBuilder>() : [LightSheet.Of(context)], SourcesSheet.Of(context.Summary)], flow);
    }

    private static void Fill(SpreadsheetDocument book, BudgetSummary summary, WorkbookContext context)
    {
        var (sheets, flow) = Sheets(context);
        var workbook = book.AddWorkbookPart();
        workbook.AddNewPart<WorkbookStylesPart>().Stylesheet = WorkbookStyles.For(summary.CurrencySign);
        var list = new DocumentFormat.OpenXml.Spreadsheet.Sheets();
        for (var i = 0; i < sheets.Length; i++)
        {
            var part = workbook.AddNewPart<WorksheetPart>();
            part.Worksheet = sheets[i].Build();
            if (sheets[i] == flow.Sheet && summary.Drawings.CashFlow is { } drawing) CashFlowChartPart.Add(part, flow, drawing.Title);
            list.Append(new Sheet { Name = sheets[i].Name, SheetId = (uint)i + 1, Id = workbook.GetIdOfPart(part) });
        }
        workbook.Workbook = new DocumentFormat.OpenXml.Spreadsheet.Workbook(
            new BookViews(new WorkbookView { FirstSheet = 0, ActiveTab = 0 }), list, new CalculationProperties { FullCalculationOnLoad = true });
        book.PackageProperties.Title = summary.Title;
        book.PackageProperties.Created = book.PackageProperties.Modified = summary.Head.Day.ToDateTimeUnspecified();
    }
}
