using PdfSharp.Drawing;
using RetrofitCalc.Reports.Pdf.Drawings;

namespace RetrofitCalc.Reports.Pdf;

/// <summary>Annex D: every stage's verdict, each bench with its maps, targets, people, spectra.</summary>
internal sealed class LightSheets(Sheets s, LightAnnex light)
{
    private const int MostTogether = 7;

    public void Set()
    {
        s.NewSheet("Annex D: light on crops and for people");
        s.Title("Annex D: light on crops and for people");
        Section(light.Overview);
        foreach (var area in light.Areas) Area(area);
        foreach (var section in light.More) Section(section);
    }

    private void Area(LightAreaPart area)
    {
        var maps = area.Maps is { } drawing ? LightMapChart.Height(drawing, s.Width) + 40 : 0;
        s.Need(maps + 80);
        s.Head(area.Title, 14);
        foreach (var sentence in area.Sentences.Take(1)) s.Paragraph(sentence);
        if (area.Maps is { } shown) Maps(shown);
        foreach (var sentence in area.Sentences.Skip(1)) s.Bullet(sentence);
        foreach (var table in area.Tables.Prepend(area.Statistics).OfType<ReportTable>())
        {
            s.Y += 4;
            s.Need(TableSetting.Height(s, table with { Rows = [.. table.Rows.Take(MostTogether)] }, s.Width) + 14);
            s.Note(table.Caption);
            TableSetting.Set(s, table);
        }
    }

    private void Maps(BenchMapsDrawing drawing)
    {
        s.Y += 5;
        var height = LightMapChart.Height(drawing, s.Width);
        s.Need(height);
        var box = new XRect(Sheets.Left, s.Y, s.Width, height);
        s.Figure(drawing.Alt, box, () => LightMapChart.Draw(s, drawing, box));
        s.Y += height;
        s.Note(drawing.Caption);
        s.Y += 3;
    }

    private void Section(ReportSection section)
    {
        s.Head(section.Title);
        foreach (var sentence in section.Sentences) s.Paragraph(sentence);
        foreach (var table in section.Tables)
        {
            s.Y += 3;
            TableSetting.Set(s, table);
        }
    }
}
