using PdfSharp;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace RetrofitCalc.Reports.Pdf;

/// <summary>Sheets of one tagged document: head, foot, and a place that moves down as things are set.</summary>
internal sealed class Sheets : IDisposable
{
    private readonly SheetHead _head;
    private readonly int _ofSheets;
    private readonly UAManager _tags;
    private string _section = "";

    public Sheets(SheetHead head, string title, int ofSheets)
    {
        (_head, _ofSheets) = (head, ofSheets);
        Type = new Typography();
        Document = new PdfDocument();
        DocumentFacts.Set(Document, head, title);
        _tags = UAManager.ForDocument(Document);
        _tags.SetDocumentLanguage("en");
    }

    public PdfDocument Document { get; }

    public Typography Type { get; }

    public XGraphics Graphics { get; private set; } = null!;

    public LineBreaking Lines { get; private set; } = null!;

    /// <summary>Where the next thing is set.</summary>
    public double Y { get; set; }

    public static double Left => Typography.SideMargin;

    public double Width => PageWidth - 2 * Typography.SideMargin;

    /// <summary>Below this nothing but the foot is set.</summary>
    public double Floor => PageHeight - Typography.BottomMargin - 2.4 * Typography.LineHeight(Type.Note);

    private double PageWidth => _head.LetterPaper ? 612 : 595;

    private double PageHeight => _head.LetterPaper ? 792 : 842;

    public void NewSheet(string section)
    {
        _section = section;
        Graphics?.Dispose();
        var page = Document.AddPage();
        page.Size = _head.LetterPaper ? PageSize.Letter : PageSize.A4;
        Graphics = XGraphics.FromPdfPage(page);
        Lines = new LineBreaking(Graphics);
        Artifact(Frame);
        Y = Typography.TopMargin + Typography.LineHeight(Type.Note) + 8;
    }

    /// <summary>Starts a new sheet unless the height is free on this one.</summary>
    public bool Need(double height)
    {
        if (Y + height <= Floor) return false;
        NewSheet(_section);
        return true;
    }

    /// <summary>Draws inside a structure element.</summary>
    public void Tagged(PdfBlockLevelElementTag tag, Action draw) => Within(() => _tags.StructureBuilder.BeginElement(tag), draw);

    /// <summary>Draws a figure that says itself in words.</summary>
    public void Figure(string alt, XRect box, Action draw) =>
        Within(() => _tags.StructureBuilder.BeginElement(PdfIllustrationElementTag.Figure, alt, box), draw);

    /// <summary>Draws what carries no meaning of its own: rules, grounds, running heads.</summary>
    public void Artifact(Action draw) => Within(_tags.StructureBuilder.BeginArtifact, draw);

    /// <summary>Closes the last sheet, so that the document can be saved.</summary>
    public void Finish() => Graphics.Dispose();

    public void Dispose()
    {
        Graphics?.Dispose();
        Document.Dispose();
    }

    private void Within(Action begin, Action draw)
    {
        begin();
        draw();
        _tags.StructureBuilder.End();
    }

    private void Frame()
    {
        var (note, soft) = (Type.Note, Typography.Brush(Typography.Soft));
        var top = Typography.TopMargin + note.Size;
        var right = $"{_head.Status} · {_head.Date}";
        var room = Width - Lines.Width(right, note) - 12;
        Graphics.DrawString(Lines.Break($"{_section} · {_head.Site}", note, room)[0], note, soft, Left, top);
        Right(right, note, top);
        Graphics.DrawLine(Typography.Pen(Typography.Ink, 1.4), Left, top + 4, Left + Width, top + 4);
        var foot = PageHeight - Typography.BottomMargin;
        Graphics.DrawLine(Typography.Pen(Typography.Ink, 0.5), Left, foot - note.Size - 4, Left + Width, foot - note.Size - 4);
        Graphics.DrawString(_head.Deferral, note, soft, Left, foot);
        Right($"Page {Document.PageCount} of {_ofSheets}", note, foot);
    }

    private void Right(string text, XFont font, double baseline) =>
        Graphics.DrawString(text, font, Typography.Brush(Typography.Soft), Left + Width - Lines.Width(text, font), baseline);
}
