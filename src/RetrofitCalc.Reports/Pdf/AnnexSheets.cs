using PdfSharp.Drawing;
using RetrofitCalc.Reports.Pdf.Drawings;

namespace RetrofitCalc.Reports.Pdf;

/// <summary>Annexes A and B: every figure and input, then assumptions and sources.</summary>
internal sealed class AnnexSheets(Sheets s, BudgetSummary summary)
{
    private const double DrawingHeight = 150;

    /// <param name="chartsToo">True when the board's sheet had no room for its drawings.</param>
    public void SetInputs(bool chartsToo)
    {
        s.NewSheet("Annex A: figures and inputs");
        s.Title("Annex A: figures and inputs");
        s.Note($"{BudgetSummary.NotProven} Each figure is rounded once, here; totals are sums of the lines printed.");
        Table(summary.FullComparison);
        Table(summary.Seasons);
        if (summary.Bill is { } bill) BillSaved(bill);
        if (summary.CashFlow is { } flow) Table(flow);
        if (chartsToo) BoardDrawings();
        Figure(summary.Drawings.Watts.Title, summary.Drawings.Watts.Alt, DrawingHeight, box => BarChart.Draw(s, summary.Drawings.Watts, box));
        var calendar = summary.Drawings.Calendar;
        Figure(calendar.Title, calendar.Alt, CalendarChart.Height(calendar), box => CalendarChart.Draw(s, calendar, box));
        Table(summary.Clocks);
        foreach (var section in summary.Inputs) Section(section);
    }

    private void BoardDrawings()
    {
        var (flow, seasons) = (summary.Drawings.CashFlow, summary.Drawings.Seasons);
        if (flow is not null) Figure(flow.Title, flow.Alt, DrawingHeight, box => CashFlowChart.Draw(s, flow, box));
        Figure(seasons.Title, seasons.Alt, DrawingHeight, box => BarChart.Draw(s, seasons, box));
    }

    private void BillSaved(BillSavingPart bill)
    {
        s.Head("The electricity bill, line by line");
        s.Paragraph(bill.Finding + ".");
        foreach (var sentence in bill.Sentences) s.Bullet(sentence);
        Together(bill.Charges);
        Together(bill.Months);
        if (bill.Peaks is { Rows.Count: <= 12 } peaks) Table(peaks);
        else if (bill.Peaks is not null) s.Note("The lights’ own part of each billed peak stands in the workbook, sheet Bill.");
    }

    /// <summary>A short table is not torn from its sum.</summary>
    private void Together(ReportTable table)
    {
        s.Need(TableSetting.Height(s, table, s.Width) + 3 * Typography.LineHeight(s.Type.Head));
        Table(table);
    }

    public void SetAssumptions()
    {
        s.NewSheet("Annex B: assumptions and sources");
        s.Title("Annex B: assumptions and sources");
        foreach (var section in summary.Assumptions) Section(section);
    }

    private void Section(ReportSection section)
    {
        s.Head(section.Title);
        if (section.Sentences.Count == 1) s.Paragraph(section.Sentences[0]);
        else foreach (var sentence in section.Sentences) s.Bullet(sentence);
        foreach (var table in section.Tables)
        {
            if (table.Caption.Length > 0) s.Note(table.Caption);
            TableSetting.Set(s, table);
        }
    }

    private void Table(ReportTable table)
    {
        s.Head(table.Caption);
        TableSetting.Set(s, table);
    }

    private void Figure(string title, string alt, double height, Action<XRect> draw)
    {
        s.Need(height + 3 * Typography.LineHeight(s.Type.Head));
        s.Head(title);
        var box = new XRect(Sheets.Left, s.Y, s.Width, height);
        s.Figure(alt, box, () => draw(box));
        s.Y += height + 4;
    }
}
