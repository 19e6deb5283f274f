using PdfSharp.Drawing;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports.Pdf.Drawings;

namespace RetrofitCalc.Reports.Pdf;

/// <summary>One height: what to note, the bench with its places, and blanks where the places are too close to write on.</summary>
internal sealed class MeasuringFormSheet(Sheets s, MeasuringSheet sheet, MeasuringForm form)
{
    private const double BlankWidth = 84;
    private const double BlankHeight = 19;
    private const double NotesHeight = 54;

    private static readonly (LightUnit Unit, string Word)[] Units = [(LightUnit.Micromoles, "µmol/m²·s (PPFD)"), (LightUnit.Lux, "lux"), (LightUnit.FootCandles, "foot-candles")];

    public void Set()
    {
        s.NewSheet("Measuring sheet");
        s.Title(sheet.Title);
        s.Y += 4;
        Blanks(("Date", 0.2), ("Read by", 0.3), ("Meter, and when it was last checked", 0.5));
        if (form.Height.Length == 0) Blanks(("Height of the lamps over the sensor", 0.45), ("Lit step, or all lamps", 0.3), ("Lamps out", 0.25));
        else Blanks(($"Lamps {form.Height} over the sensor; if not so, as measured", 0.5), ($"{form.Lit}; lamps out", 0.5));
        Boxes([.. Units.Select(unit => (unit.Word, unit.Unit == form.Unit))], "The meter reads");
        Boxes([("room dark, other light kept out", false), ("sensor level, at the height of the crop", false), ("lamps lit for half an hour before", false)], "Check");
        s.Y += 3;
        s.Paragraph(form.Pattern);
        s.Note($"{sheet.Spacing} Stand clear of the sensor. Write a dash where nothing was read. Half an hour of warming up is common practice, no source.");
        Bench();
        Notes();
    }

    /// <summary>A label over each line to write on.</summary>
    private void Blanks(params (string Label, double Share)[] blanks)
    {
        s.Y += 22;
        var x = Sheets.Left;
        foreach (var (label, share) in blanks)
        {
            var (at, width) = (x, s.Width * share - 12);
            s.Artifact(() => s.Graphics.DrawLine(Typography.Pen(Typography.Ink, 0.7), at, s.Y, at + width, s.Y));
            s.In(at, s.Y + 1, width, label, s.Type.Note, Typography.Soft);
            x += s.Width * share;
        }
        s.Y += Typography.LineHeight(s.Type.Note) + 1;
    }

    private void Boxes(IReadOnlyList<(string Word, bool Ticked)> boxes, string label)
    {
        s.Y += 6;
        s.In(Sheets.Left, s.Y, 80, label + ":", s.Type.Strong, Typography.Ink);
        var x = Sheets.Left + s.Lines.Width(label + ":", s.Type.Strong) + 12;
        foreach (var (word, ticked) in boxes)
        {
            var box = new XRect(x, s.Y + 2.5, 8, 8);
            s.Artifact(() =>
            {
                s.Graphics.DrawRectangle(Typography.Pen(Typography.Ink, 0.8), box);
                if (!ticked) return;
                s.Graphics.DrawLine(Typography.Pen(Typography.Ink, 1), box.TopLeft, box.BottomRight);
                s.Graphics.DrawLine(Typography.Pen(Typography.Ink, 1), box.BottomLeft, box.TopRight);
            });
            s.In(x + 12, s.Y, s.Width, word, s.Type.Text, Typography.Ink);
            x += 12 + s.Lines.Width(word, s.Type.Text) + 16;
        }
        s.Y += Typography.LineHeight(s.Type.Text);
    }

    private void Bench()
    {
        s.Y += 8;
        var drawing = new BenchDrawing(s, form);
        var listed = !drawing.HoldsBlanks;
        var height = drawing.Height(s.Floor - s.Y - NotesHeight - (listed ? ListHeight : 0));
        var box = new XRect(Sheets.Left, s.Y, s.Width, height);
        s.Figure($"The bench from above with {form.Points.Count} places to read, numbered in walking order.", box, () => drawing.Draw(box));
        s.Y += height + 6;
        if (listed) List();
    }

    private int PerRow => (int)(s.Width / BlankWidth);

    /// <summary>Never so much that the drawing would vanish: the rest of the list goes on to the next sheet.</summary>
    private double ListHeight => Math.Min(240, Math.Ceiling((double)form.Points.Count / PerRow) * BlankHeight + 6);

    /// <summary>"1 ______  2 ______", as many as there are places.</summary>
    private void List()
    {
        foreach (var row in form.Points.Chunk(PerRow))
        {
            s.Need(BlankHeight);
            foreach (var (at, point) in row.Index())
            {
                var x = Sheets.Left + at * BlankWidth;
                s.In(x, s.Y + 6, 22, point.Number.ToString(System.Globalization.CultureInfo.InvariantCulture), s.Type.Note, Typography.Soft);
                s.Artifact(() => s.Graphics.DrawLine(Typography.Pen(Typography.Ink, 0.6), x + 20, s.Y + BlankHeight - 2, x + BlankWidth - 8, s.Y + BlankHeight - 2));
            }
            s.Y += BlankHeight;
        }
    }

    private void Notes()
    {
        s.Need(NotesHeight);
        s.Y += 6;
        s.In(Sheets.Left, s.Y, s.Width, "Notes: lamps out, dirt, plants in the way, readings taken twice", s.Type.Note, Typography.Soft);
        s.Artifact(() =>
        {
            foreach (var line in new[] { 26, 44 })
                s.Graphics.DrawLine(Typography.Pen(Typography.Hairline, 0.7), Sheets.Left, s.Y + line, Sheets.Left + s.Width, s.Y + line);
        });
        s.Y += NotesHeight - 6;
    }
}
