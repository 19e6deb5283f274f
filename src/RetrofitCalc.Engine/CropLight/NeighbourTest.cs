using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Finds readings that do not fit those around them.</summary>
/// <remarks>
/// Light over a bench is nearly a product of how it falls off along and across. In a table of three rows and columns or more each reading
/// is therefore held against its row and its column by medians, in logarithms (median polish); in a single line against the straight line
/// between its neighbours. It is doubted when it lies further off than four times the spread of all, by the median of deviations, and
/// than 15 %; in a line, too short to tell a spread, than 30 % (E-60). Limits: common practice, no source; median polish: Tukey, Exploratory Data Analysis (1977), from memory.
/// </remarks>
internal static class NeighbourTest
{
    private const double Spreads = 4;
    private const double DeviationOfMedian = 1.4826; // standard deviation of a normal spread over the median of its deviations
    private const double LeastOff = 0.15, LeastOffInLine = 0.30;
    private const double Dark = 0.02; // of the mean: below it a ratio says nothing
    private const int FewestInTable = 3, Polishes = 10;

    public static IEnumerable<ReadingDoubt> Of(MeasuredLight measured)
    {
        var floor = Math.Max(Dark * measured.Statistics.Mean.MicromolesPerSquareMetre, double.Epsilon);
        var logs = measured.Readings.ToDictionary(reading => reading.Index, reading => Math.Log(Math.Max(floor, reading.Light.MicromolesPerSquareMetre)));
        var table = InTable(measured.Set, logs);
        var off = table ? Left(measured.Set, logs) : OffLines(measured.Set, logs);
        var limit = table ? Math.Max(Math.Log(1 + LeastOff), Spreads * DeviationOfMedian * Median(off.Values.Select(Math.Abs))) : Math.Log(1 + LeastOffInLine);
        foreach (var (index, _, light) in measured.Readings)
            if (off.TryGetValue(index, out var by) && Math.Abs(by) > limit && !measured.Set.Confirmed.Contains(index))
                yield return new(index, FormattableString.Invariant(
                    $"{light.MicromolesPerSquareMetre:0} µmol/(m² s) does not fit the readings around it, which suggest about {Math.Exp(logs[index] - by):0}."));
    }

    private static bool InTable(ReadingSet set, Dictionary<int, double> logs) =>
        logs.Keys.Select(index => index / set.Columns.Count).Distinct().Count() >= FewestInTable
        && logs.Keys.Select(index => index % set.Columns.Count).Distinct().Count() >= FewestInTable;

    /// <summary>How far each reading is off from its row and column, as a logarithm.</summary>
    private static Dictionary<int, double> Left(ReadingSet set, Dictionary<int, double> logs)
    {
        var left = new Dictionary<int, double>(logs);
        for (var polish = 0; polish < Polishes; polish++)
            foreach (var by in (Func<int, int>[])[index => index / set.Columns.Count, index => index % set.Columns.Count])
                foreach (var line in logs.Keys.GroupBy(by))
                {
                    var middle = Median(line.Select(index => left[index]));
                    foreach (var index in line) left[index] -= middle;
                }
        return left;
    }

    /// <summary>Against the straight line between both neighbours; of two wrong ones side by side only the worse is kept.</summary>
    private static Dictionary<int, double> OffLines(ReadingSet set, Dictionary<int, double> logs)
    {
        var (step, places) = set.Columns.Count >= set.Rows.Count ? (1, set.Columns) : (set.Columns.Count, set.Rows);
        var off = new Dictionary<int, double>();
        foreach (var (index, light) in logs)
        {
            var at = step == 1 ? index % set.Columns.Count : index / set.Columns.Count;
            if (at == 0 || at == places.Count - 1 || !logs.TryGetValue(index - step, out var before) || !logs.TryGetValue(index + step, out var after)) continue;
            off[index] = light - before - (after - before) * (places[at] - places[at - 1]) / (places[at + 1] - places[at - 1]);
        }
        return off.Where(pair => Math.Abs(pair.Value) >= Math.Max(Beside(off, pair.Key - step), Beside(off, pair.Key + step))).ToDictionary();
    }

    private static double Beside(Dictionary<int, double> off, int index) => off.TryGetValue(index, out var by) ? Math.Abs(by) : 0;

    private static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }
}
