using NodaTime;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>A sheet to take to the bench: where to read, in which order, and blanks to fill in. One form for each height.</summary>
/// <param name="Head">Head and foot of every sheet.</param>
/// <param name="Title">What it is for.</param>
/// <param name="Spacing">How close readings should lie on this bench.</param>
/// <param name="Forms">A form for each set of readings laid out in the area; one on the suggested grid where none is.</param>
public sealed record MeasuringSheet(SheetHead Head, string Title, string Spacing, IReadOnlyList<MeasuringForm> Forms)
{
    private const int MostPlaces = 150;
    private const string Deferral = "Keep hands and meter off live parts; a licensed electrician opens luminaires.";

    /// <summary>Lays the sheet out; null when the study has no such area.</summary>
    public static MeasuringSheet? Of(Study study, string areaId, LocalDate date)
    {
        if (study.Areas.FirstOrDefault(area => area.Id == areaId) is not { } area) return null;
        var (text, light) = (QuantityText.For(study), area.Light ?? new AreaLight());
        var head = new SheetHead(
            SheetHead.SiteName(study), study.Name, "To fill in", text.Date(date), "", Deferral) { LetterPaper = SheetHead.OnLetter(study.Site), Day = date };
        IReadOnlyList<MeasuringForm> forms = light.Readings.Count > 0
            ? [.. light.Readings.Where(set => set.Columns.Count > 0 && set.Rows.Count > 0).Select(set => MeasuringForm.Of(set, light, text))]
            : [Suggested(light, text)];
        return new MeasuringSheet(head, $"Light in {area.Name}: measuring sheet", SpacingOf(light, text), forms);
    }

    /// <summary>Middles of the cells the spacing rule asks for; a plain grid without distances where the bench is not measured, or too large to walk.</summary>
    private static MeasuringForm Suggested(AreaLight light, QuantityText text)
    {
        var set = new ReadingSet { Id = "new", Height = Length.Zero };
        if (Cells(light) is { } cells && cells.AlongLength * cells.AlongWidth <= MostPlaces)
        {
            var laid = set with { Columns = Middles(light.BenchLength!.Value.Metres, cells.AlongLength), Rows = Middles(light.BenchWidth!.Value.Metres, cells.AlongWidth) };
            return MeasuringForm.Of(laid, light, text) with { Height = "" };
        }
        var plain = MeasuringForm.Of(set with { Columns = Middles(1.6, 8), Rows = Middles(1, 5) }, new AreaLight(), text);
        return plain with
        {
            Height = "", Marks = "Write your distances along the top and down the side",
            Columns = [.. plain.Columns.Select(column => (column.At, ""))], Rows = [.. plain.Rows.Select(row => (row.At, ""))],
        };
    }

    private static GridSpacing? Cells(AreaLight light) =>
        light is { BenchLength: { Metres: > 0 } length, BenchWidth: { Metres: > 0 } width } ? GridSpacing.For(length, width) : null;

    private static double[] Middles(double side, int count) => [.. Enumerable.Range(0, count).Select(i => ((i + 0.5) / count - 0.5) * side)];

    private static string SpacingOf(AreaLight light, QuantityText text)
    {
        if (Cells(light) is not { } cells) return "Measure the bench first: its length and width decide how close readings should lie. The grid below is a plain one.";
        var (length, width) = (light.BenchLength!.Value, light.BenchWidth!.Value);
        var (longer, shorter) = length > width ? (length, width) : (width, length);
        return $"Bench {text.Place(length.Metres)} by {text.Place(width.Metres)} {text.PlaceUnit()}. EN 12464-1 (p = 0.2 · 5^log d, d in metres) wants readings at most {text.Place(GridSpacing.Largest(longer).Metres)} {text.PlaceUnit()} apart by the longer side, "
            + $"{text.Place(GridSpacing.Largest(shorter).Metres)} {text.PlaceUnit()} by the shorter; the finer is kept: {cells.AlongLength} by {cells.AlongWidth} cells."
            + (cells.AlongLength * cells.AlongWidth <= MostPlaces ? "" : $" That is {text.Number(cells.AlongLength * cells.AlongWidth)} readings: read one stretch between neighbouring luminaires on the plain grid below, and note which (common practice, no source).");
    }
}
