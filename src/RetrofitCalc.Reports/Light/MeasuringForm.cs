using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>A place to read.</summary>
/// <param name="Number">Its turn on the walk. [1 or more]</param>
/// <param name="X">Along the drawing. [m, from its left]</param>
/// <param name="Y">Down the drawing. [m, from its top]</param>
public sealed record MeasuringPoint(int Number, double X, double Y);

/// <summary>Readings of one height on paper: the bench seen from above, its places numbered as one walks.</summary>
public sealed record MeasuringForm
{
    /// <summary>Height of the lamps over the sensor; empty for a blank.</summary>
    public required string Height { get; init; }

    /// <summary>Unit of the meter that is ticked; null where it is still to tick.</summary>
    public required LightUnit? Unit { get; init; }

    /// <summary>How the places lie, and how to walk.</summary>
    public required string Pattern { get; init; }

    /// <summary>Which lamps are to be lit.</summary>
    public required string Lit { get; init; }

    /// <summary>Length of what is drawn. [m]</summary>
    public required double Length { get; init; }

    /// <summary>Width of what is drawn. [m]</summary>
    public required double Width { get; init; }

    /// <summary>Places with their marks along the top, from the left edge of the drawing. [m]</summary>
    public required IReadOnlyList<(double At, string Mark)> Columns { get; init; }

    /// <summary>The same down the side; none for lines outwards.</summary>
    public required IReadOnlyList<(double At, string Mark)> Rows { get; init; }

    /// <summary>What the marks count from.</summary>
    public required string Marks { get; init; }

    /// <summary>Places to read, in walking order.</summary>
    public required IReadOnlyList<MeasuringPoint> Points { get; init; }

    /// <summary>Sides of cells, from the left edge, where readings stand in their middles. [m]</summary>
    public IReadOnlyList<double> CellsAlong { get; init; } = [];

    /// <summary>The same down the drawing. [m]</summary>
    public IReadOnlyList<double> CellsAcross { get; init; } = [];

    public static MeasuringForm Of(ReadingSet set, AreaLight light, QuantityText text)
    {
        var drawing = MeasuringDrawing.Of(set, light);
        var quarter = set.Pattern is ReadingPattern.Quadrant or ReadingPattern.Outwards;
        return new MeasuringForm
        {
            Height = text.Length(set.Height),
            Unit = light.Readings.Count > 0 ? set.Unit : null,
            Pattern = PatternOf(set.Pattern),
            Lit = set.LitStep is { Length: > 0 } step ? $"Lit: step {step}" : "Lit: all lamps",
            Length = drawing.Length,
            Width = drawing.Width,
            Columns = [.. drawing.Columns.Select(at => (at, text.Place(quarter ? at - drawing.MiddleX : at)))],
            Rows = [.. drawing.Rows.Select(at => (at, text.Place(set.Pattern == ReadingPattern.Quadrant ? at - drawing.MiddleY : at)))],
            Marks = set.Pattern switch
            {
                ReadingPattern.Outwards => $"Marks: {text.PlaceUnit()} from the point under the middle, outwards",
                ReadingPattern.Quadrant => $"Marks: {text.PlaceUnit()} from the middle of the bench",
                _ => $"Marks: {text.PlaceUnit()} from the left end and from the far edge",
            },
            Points = drawing.Points,
            CellsAlong = set.Pattern == ReadingPattern.CellCentres ? Between(drawing.Columns, drawing.Length) : [],
            CellsAcross = set.Pattern == ReadingPattern.CellCentres ? Between(drawing.Rows, drawing.Width) : [],
        };
    }

    private static string PatternOf(ReadingPattern pattern) => pattern switch
    {
        ReadingPattern.CellCentres => "The bench in equal cells; read in the middle of each. Walk by the numbers: along the far row, back along the next.",
        ReadingPattern.Crossings => "Read where the lines cross, edges and corners of the bench included. Walk by the numbers: along the far row, back along the next.",
        ReadingPattern.Quadrant => "One quarter of the bench, from its middle (top left) to two of its edges. The other quarters must mirror it: luminaires hang evenly about the middle. Walk by the numbers.",
        _ => "Start at the point straight under the middle and walk outwards along each line, by the numbers.",
    };

    /// <summary>Half-way lines between neighbours.</summary>
    private static double[] Between(IReadOnlyList<double> places, double side) =>
        [.. places.Zip(places.Skip(1), (a, b) => (a + b) / 2).Where(at => at > 0 && at < side)];
}
