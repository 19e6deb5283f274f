using PdfSharp.Drawing;
using PdfSharp.UniversalAccessibility;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports.Pdf.Drawings;

namespace RetrofitCalc.Reports.Pdf;

/// <summary>The one sheet for the board. One method per section; the drawings take the height the words leave.</summary>
internal sealed class BoardSheet(Sheets s, BudgetSummary summary)
{
    private const int MostSeasons = 4;
    private const double Gutter = 17;
    private const double SmallestDrawing = 70;
    private const double TallestDrawing = 150;
    private const int MostOptions = 4;
    private const int MostDoubts = 5;
    private const int FewestDoubts = 2;
    private const int LongestOption = 32;

    private int _doubts = MostDoubts;

    /// <summary>False once set when words took the room of the drawings; annex A then shows them.</summary>
    public bool ChartsFit { get; private set; }

    private double ChartRoom => s.Floor - s.Y - BelowHeight() - 30;

    private double Half => (s.Width - Gutter) / 2;

    private double SecondColumn => Sheets.Left + Half + Gutter;

    public void Set()
    {
        s.NewSheet(summary.Head.ForWhom.Length > 0 ? $"Capital request for {summary.Head.ForWhom}" : "Capital request");
        s.Title(summary.Title);
        s.Y += 1;
        s.Paragraph(summary.Lead);
        KeyFigures();
        OpenStops();
        CropLight();
        Compared();
        if (ChartRoom < SmallestDrawing) _doubts = FewestDoubts;
        ChartsFit = ChartRoom >= SmallestDrawing;
        if (ChartsFit) Charts(Math.Min(ChartRoom, TallestDrawing));
        MoneyAndDoubts();
        Signatures();
        s.Note(summary.Conventions);
    }

    private void KeyFigures()
    {
        s.Y += 6;
        var (top, width) = (s.Y, s.Width / summary.Figures.Count);
        var tallest = 0.0;
        for (var i = 0; i < summary.Figures.Count; i++)
            tallest = Math.Max(tallest, KeyFigure(summary.Figures[i], Sheets.Left + i * width, width, i > 0));
        s.Artifact(() =>
        {
            foreach (var y in new[] { top, top + tallest })
                s.Graphics.DrawLine(Typography.Pen(Typography.Ink, 0.6), Sheets.Left, y, Sheets.Left + s.Width, y);
            for (var i = 1; i < summary.Figures.Count; i++)
                s.Graphics.DrawLine(Typography.Pen(Typography.Unknown, 0.5), Sheets.Left + i * width, top, Sheets.Left + i * width, top + tallest);
        });
        s.Y = top + tallest + 2;
        if (summary.RangeNote.Length > 0) s.Note(summary.RangeNote);
    }

    private double KeyFigure(KeyFigure figure, double x, double width, bool indented)
    {
        var (left, room, y) = (x + (indented ? 8 : 0), width - (indented ? 12 : 6), s.Y + 4);
        y += s.In(left, y, room, figure.Label, s.Type.Note, Typography.Soft);
        y += s.In(left, y, room, figure.Value, s.Type.Figure, Typography.Ink);
        y += s.In(left, y, room, figure.Note, s.Type.Note, Typography.Soft);
        return y + 4 - s.Y;
    }

    private void OpenStops()
    {
        if (summary.OpenStops.Count == 0) return;
        s.Y += 4;
        const string word = "STOP, open:";
        var left = Sheets.Left + 18 + s.Lines.Width(word, s.Type.Strong);
        var room = Sheets.Left + s.Width - 8 - left;
        var height = summary.OpenStops.Sum(stop => s.Height(stop, s.Type.Text, room)) + 8;
        s.Artifact(() =>
        {
            s.Graphics.DrawRectangle(Typography.Pen(Typography.Stop, 1.4), Sheets.Left + 0.7, s.Y, s.Width - 1.4, height);
            s.Graphics.DrawRectangle(Typography.Brush(Typography.Stop), Sheets.Left, s.Y - 0.7, 5, height + 1.4);
        });
        var y = s.Y + 4;
        s.In(Sheets.Left + 12, y, left, word, s.Type.Strong, Typography.Stop);
        foreach (var stop in summary.OpenStops) y += s.In(left, y, room, stop, s.Type.Text, Typography.Ink);
        s.Y += height;
    }

    /// <summary>The verdict has an ink bar where light is lost, a dashed edge where it is not known.</summary>
    private void CropLight()
    {
        if (summary.CropLight is not { } light) return;
        s.Y += 5;
        var word = light.Word + ":";
        var left = Sheets.Left + 18 + s.Lines.Width(word, s.Type.Strong);
        var room = Sheets.Left + s.Width - 8 - left;
        var (top, height) = (s.Y, light.Sentences.Sum(sentence => s.Height(sentence, s.Type.Text, room)) + 6);
        s.Artifact(() => LightEdge(light.Verdict, top, height));
        var y = s.Y + 3;
        s.In(Sheets.Left + 12, y, left, word, s.Type.Strong, light.Verdict == LightVerdict.NotKnown ? Typography.Unknown : Typography.Ink);
        foreach (var sentence in light.Sentences) y += s.In(left, y, room, sentence, s.Type.Text, Typography.Ink);
        s.Y += height;
    }

    private void LightEdge(LightVerdict verdict, double top, double height)
    {
        var unknown = verdict == LightVerdict.NotKnown;
        var pen = Typography.Pen(unknown ? Typography.Unknown : Typography.Hairline, 0.8);
        if (unknown) pen.DashStyle = XDashStyle.Dash;
        s.Graphics.DrawRectangle(pen, Sheets.Left + 0.4, top, s.Width - 0.8, height);
        if (verdict is LightVerdict.Loses or LightVerdict.KeepsAtFirst)
            s.Graphics.DrawRectangle(Typography.Brush(Typography.Ink), Sheets.Left, top - 0.4, 3, height + 0.8);
    }

    private void Compared()
    {
        s.Head(summary.Comparison.Caption, 6);
        TableSetting.SetIn(s, Narrowed(summary.Comparison), Sheets.Left, s.Width);
        var more = summary.Comparison.Columns.Count - 2 - MostOptions;
        if (more > 0) s.Note($"{more} more options are compared in annex A.");
    }

    /// <summary>Keeping and the first options: more than fit stand in the annex.</summary>
    private static ReportTable Narrowed(ReportTable table) => table with
    {
        Columns = [.. table.Columns.Take(MostOptions + 2).Select(c => c with { Head = Shortened(c) })],
        Rows = [.. table.Rows.Select(row => row with { Cells = [.. row.Cells.Take(MostOptions + 2)] })],
    };

    private static string Shortened(ReportColumn column) =>
        column.Chosen ? ShortText.Of(column.Head.Replace(ComparisonTable.AskedFor, ""), LongestOption) + ComparisonTable.AskedFor : ShortText.Of(column.Head, LongestOption);

    private void Charts(double height)
    {
        s.Y += 8;
        var top = s.Y;
        if (summary.Drawings.CashFlow is { } flow) Figure(flow.Title, flow.Alt, Sheets.Left, height, box => CashFlowChart.Draw(s, flow, box));
        else Figure(summary.Drawings.Watts.Title, summary.Drawings.Watts.Alt, Sheets.Left, height, box => BarChart.Draw(s, summary.Drawings.Watts, box));
        s.Y = top;
        Figure(summary.Drawings.Seasons.Title, summary.Drawings.Seasons.Alt, SecondColumn, height, box => BarChart.Draw(s, Seasons, box));
    }

    private BarDrawing Seasons => summary.Drawings.Seasons with { Pairs = [.. summary.Drawings.Seasons.Pairs.Take(MostSeasons)] };

    private void Figure(string title, string alt, double x, double height, Action<XRect> draw)
    {
        s.Y += s.In(x, s.Y, Half, title, s.Type.Strong, Typography.Ink) + 2;
        var box = new XRect(x, s.Y, Half, height);
        s.Figure(alt, box, () => draw(box));
        s.Y += height;
    }

    private double BelowHeight() => Math.Max(MoneyHeight(), DoubtsHeight()) + SignatureHeight + s.Height(summary.Conventions, s.Type.Note, s.Width) + 4;

    private double HeadHeight => Typography.LineHeight(s.Type.Head) + 7;

    private const double SignatureHeight = 36;

    private double MoneyHeight() => HeadHeight + (summary.MoneyGoes is { } money ? TableSetting.Height(s, money, Half, heads: false) : 0);

    private double DoubtsHeight() => HeadHeight + Doubts().Sum(doubt => s.Height("• " + doubt, s.Type.Text, Half) + 1.5);

    private IEnumerable<string> Doubts() => [.. summary.Risks.Take(_doubts), .. summary.Narrowing.Take(1)];

    private void MoneyAndDoubts()
    {
        s.Y += 6;
        var top = s.Y;
        if (summary.MoneyGoes is { } money)
        {
            HeadIn(money.Caption, Sheets.Left);
            TableSetting.SetIn(s, money, Sheets.Left, Half, heads: false);
        }
        var left = s.Y;
        s.Y = top;
        if (!ChartsFit) CashFlowBesideTheMoney();
        HeadIn("Doubts, and what settles them", SecondColumn);
        foreach (var doubt in Doubts()) s.Y += s.In(SecondColumn, s.Y, Half, "• " + doubt, s.Type.Text, Typography.Ink) + 1.5;
        s.Y = Math.Max(left, s.Y);
    }

    /// <summary>Where words leave no room for two drawings above, one may fit beside the first cost.</summary>
    private void CashFlowBesideTheMoney()
    {
        var room = s.Floor - s.Y - DoubtsHeight() - SignatureHeight - s.Height(summary.Conventions, s.Type.Note, s.Width) - 30;
        if (summary.Drawings.CashFlow is not { } flow || room < SmallestDrawing) return;
        Figure(flow.Title, flow.Alt, SecondColumn, Math.Min(room, SmallestDrawing * 1.5), box => CashFlowChart.Draw(s, flow, box));
        s.Y += 6;
    }

    private void HeadIn(string text, double x)
    {
        s.Tagged(PdfBlockLevelElementTag.Heading2, () => TextSetting.Draw(s, [text], x, s.Y, s.Type.Head, Typography.Ink));
        s.Y += Typography.LineHeight(s.Type.Head) + 1;
    }

    private void Signatures()
    {
        s.Y += 22;
        var (x, third) = (Sheets.Left, s.Width * 0.37);
        foreach (var (label, width) in new[] { ("Asked by: facility manager", third), ("Approved by: finance", third), ("Date", s.Width - 2 * third) })
        {
            var (at, end) = (x, x + width - 12);
            s.Artifact(() => s.Graphics.DrawLine(Typography.Pen(Typography.Ink, 0.7), at, s.Y, end, s.Y));
            s.In(at, s.Y + 2, width - 12, label, s.Type.Note, Typography.Soft);
            x += width;
        }
        s.Y += SignatureHeight - 22;
    }
}
