using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>Places of a set as they lie on paper: x from the left, y from the top, in metres of the bench.</summary>
internal sealed record MeasuringDrawing(double Length, double Width, double MiddleX, double MiddleY)
{
    public required IReadOnlyList<double> Columns { get; init; }

    public required IReadOnlyList<double> Rows { get; init; }

    public required IReadOnlyList<MeasuringPoint> Points { get; init; }

    public static MeasuringDrawing Of(ReadingSet set, AreaLight light)
    {
        var outwards = set.Pattern == ReadingPattern.Outwards;
        double Side(double? known, IReadOnlyList<double> places) => Math.Max(known ?? 0, 2 * places.Max(Math.Abs)) is > 0 and var side ? side : 1;
        var length = Side(light.BenchLength?.Metres, set.Columns);
        var width = outwards ? Math.Max(light.BenchWidth?.Metres ?? 0, 2 * Reach(set)) : Side(light.BenchWidth?.Metres, set.Rows);
        var quarter = set.Pattern == ReadingPattern.Quadrant;
        var (x, y) = quarter ? (0.0, 0.0) : (length / 2, width / 2);
        return new MeasuringDrawing(quarter ? length / 2 : length, quarter ? width / 2 : width, x, y)
        {
            Columns = [.. set.Columns.Select(place => place + x)],
            Rows = outwards ? [] : [.. set.Rows.Select(place => place + y)],
            Points = [.. WalkOrder.Of(set).Select((at, turn) => Point(turn + 1, set.PointAt(at.Row, at.Column)))],
        };

        MeasuringPoint Point(int turn, PlanePoint at) => new(turn, at.X + x, at.Y + y);
    }

    /// <summary>How far lines outwards go across the bench.</summary>
    private static double Reach(ReadingSet set) => Math.Max(set.Columns.Max() * set.Rows.Max(degrees => Math.Abs(Math.Sin(degrees * Math.PI / 180))), set.Columns.Max() / 4);
}
