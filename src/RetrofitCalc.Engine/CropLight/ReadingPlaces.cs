using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Where the values of a set were read.</summary>
internal static class ReadingPlaces
{
    /// <summary>Whether the table has a row for each row's place, a value for each column's, and places that rise.</summary>
    public static bool Fit(ReadingSet set) =>
        set.Values.Count == set.Rows.Count && set.Values.All(row => row.Count == set.Columns.Count) && Rise(set.Columns) && set.Pattern switch
        {
            ReadingPattern.Outwards => set.Columns is [>= 0, ..] && set.Rows.All(double.IsFinite),
            _ => Rise(set.Rows),
        };

    /// <summary>Each value that is not blank, in the unit of the meter.</summary>
    public static IEnumerable<(int Index, PlanePoint Point, double Value)> Of(ReadingSet set)
    {
        for (var row = 0; row < set.Rows.Count; row++)
            for (var column = 0; column < set.Columns.Count; column++)
                if (set.Values[row][column] is { } value && double.IsFinite(value))
                    yield return (row * set.Columns.Count + column, set.PointAt(row, column), value);
    }

    private static bool Rise(IReadOnlyList<double> places) =>
        places.All(double.IsFinite) && places.Zip(places.Skip(1)).All(pair => pair.First < pair.Second);
}
