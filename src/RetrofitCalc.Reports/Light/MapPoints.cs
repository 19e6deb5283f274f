using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>Places at which a map shows its values: where readings lie, or a few spread over the bench.</summary>
public sealed record MapPoints(IReadOnlyList<double> X, IReadOnlyList<double> Y)
{
    public static MapPoints Of(LightMap map, ReadingSet? read) => read is { Pattern: not ReadingPattern.Outwards }
        ? new(read.Columns, read.Rows)
        : new(Spread(map.X, 5), Spread(map.Y, 3));

    private static IReadOnlyList<double> Spread(IReadOnlyList<double> places, int count) =>
        places.Count <= count ? places : [.. Enumerable.Range(0, count).Select(i => places[0] + (places[^1] - places[0]) * i / (count - 1))];
}
