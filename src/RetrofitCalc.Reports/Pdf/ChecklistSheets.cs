using PdfSharp.Drawing;

namespace RetrofitCalc.Reports.Pdf;

/// <summary>Annex C: notices, then the checklist to sign. The deferral stands at the foot of every sheet.</summary>
internal sealed class ChecklistSheets(Sheets s, SafetySheets safety)
{
    public void Set(string title)
    {
        s.NewSheet(title);
        s.Title(title);
        foreach (var sentence in safety.Sentences) s.Paragraph(sentence);
        s.Head(safety.Notices.Count == 0 ? "No notice is raised by this survey" : "Notices this survey raises");
        foreach (var notice in safety.Notices) Notice(notice);
        s.Head("Checklist: each item is answered, dated and signed by the person named", 12);
        s.Note("Items that do not apply are printed grey with the reason; none is ticked in advance.");
        foreach (var phase in safety.Checklist)
        {
            s.Head(phase.Caption);
            TableSetting.Set(s, phase);
        }
        Circuits();
    }

    private void Circuits()
    {
        s.Head(safety.Circuits.Title, 12);
        foreach (var sentence in safety.Circuits.Sentences) s.Paragraph(sentence);
        foreach (var table in safety.Circuits.Tables) TableSetting.Set(s, table);
    }

    private void Notice(PrintedNotice notice)
    {
        var (left, width) = (Sheets.Left + 10, s.Width - 10);
        (string Text, XFont Font, XColor Color)[] parts =
        [
            (notice.Word, s.Type.Strong, notice.OpenStop ? Typography.Stop : Typography.Ink),
            (notice.Text, s.Type.Text, Typography.Ink),
            (notice.Question, s.Type.Strong, Typography.Ink),
            (notice.Answer.Length > 0 ? "Answer: " + notice.Answer : "", s.Type.Text, Typography.Ink),
            (notice.Concerns, s.Type.Note, Typography.Soft),
        ];
        var printed = parts.Where(part => part.Text.Length > 0).ToList();
        var height = printed.Sum(part => s.Height(part.Text, part.Font, width));
        s.Need(height + 5);
        var top = s.Y;
        s.Artifact(() => s.Graphics.DrawLine(Typography.Pen(notice.OpenStop ? Typography.Stop : Typography.Unknown, notice.OpenStop ? 4 : 0.8), Sheets.Left + 2, top, Sheets.Left + 2, top + height));
        foreach (var (text, font, color) in printed) s.Y += s.In(left, s.Y, width, text, font, color);
        s.Y += 5;
    }
}
