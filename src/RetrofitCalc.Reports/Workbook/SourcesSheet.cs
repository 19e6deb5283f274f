namespace RetrofitCalc.Reports.Workbook;

/// <summary>Assumptions, conventions and sources, as printed in annex B.</summary>
internal static class SourcesSheet
{
    public static SheetBuilder Of(BudgetSummary summary)
    {
        var sheet = new SheetBuilder("Sources", [60, 26, 60, 40, 20], 1);
        sheet.Texts(CellStyle.Title, "Assumptions and sources");
        foreach (var section in summary.Assumptions)
        {
            sheet.Texts(CellStyle.Strong, section.Title);
            foreach (var sentence in section.Sentences) sheet.Texts(CellStyle.Text, sentence);
            foreach (var table in section.Tables)
            {
                sheet.Texts(CellStyle.Head, table.Columns.Select(column => column.Head));
                foreach (var row in table.Rows) sheet.Texts(CellStyle.Text, row.Cells);
            }
        }
        return sheet;
    }
}
