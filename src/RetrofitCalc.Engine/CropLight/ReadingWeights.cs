using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>The area each reading of a set stands for, by the way the readings lie.</summary>
internal static class ReadingWeights
{
    public static (IReadOnlyList<double> Weights, string Weighting) Of(ReadingSet set, IReadOnlyList<LightReading> readings)
    {
        var (weights, words) = set.Pattern switch
        {
            ReadingPattern.CellCentres => (AreaWeights.OfCells(readings.Count), "each reading stands for one of the equal cells of the bench"),
            ReadingPattern.Crossings => (OfCrossings(set, readings), "each reading counts by the area around it: half as much at an edge, a quarter at a corner"),
            ReadingPattern.Quadrant => (OfCrossings(set, readings),
                "one quarter stands for all four; each reading counts by the area around it: half as much at the edges of the quarter, a quarter at its corners"),
            _ => OfLines(set, readings),
        };
        var blanks = set.Rows.Count * set.Columns.Count - readings.Count;
        return (weights, blanks == 0 ? words : $"{words}; {blanks} {(blanks == 1 ? "place" : "places")} without a reading left out");
    }

    private static IReadOnlyList<double> OfCrossings(ReadingSet set, IReadOnlyList<LightReading> readings)
    {
        var (across, down) = (Along(set.Columns), Along(set.Rows));
        return [.. readings.Select(reading => down[reading.Index / set.Columns.Count] * across[reading.Index % set.Columns.Count])];
    }

    private static IReadOnlyList<double> Along(IReadOnlyList<double> places) =>
        places.Count == 1 ? [1] : [.. AreaWeights.OfNodes(places, [0, 2]).Take(places.Count)];

    private static (IReadOnlyList<double>, string) OfLines(ReadingSet set, IReadOnlyList<LightReading> readings)
    {
        double[] radii = [.. readings.Select(reading => set.Columns[reading.Index % set.Columns.Count])];
        return radii.Max() > 0
            ? (AreaWeights.OfRings(radii), FormattableString.Invariant($"each reading stands for a ring around the middle; the mean is that of the disc out to {radii.Max():0.##} m, not of the bench's corners"))
            : (AreaWeights.OfCells(readings.Count), "one place only, under the middle");
    }
}
