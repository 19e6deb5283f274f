using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>Whether sets of readings are whole: places that rise, a value or a blank for each, and light that can be.</summary>
internal static class ReadingCheck
{
    private const int MostReadings = 10_000;

    /// <summary>No lamp gives more lux to the µmol; only used where the spectrum is not known.</summary>
    private const double MostLuxPerMicromole = 100;

    /// <summary>683 lm/W at 555 nm, where a µmol/s of photons is 0.2155 W: the eye sees no photon better.</summary>
    private const double LuxOfGreenest = 147.2;

    public static void Run(AreaLight light, string areaPath, Problems problems)
    {
        problems.Unique($"{areaPath}.Readings", "Reading set", light.Readings.Select(set => set.Id));
        foreach (var (index, set) in light.Readings.Index())
        {
            var path = $"{areaPath}.Readings[{index}]";
            problems.InRange($"{path}.Height", "Height of the lamps over the sensor (metres)", set.Height.Metres, 0.02, LightCheck.HighestMetres);
            problems.InRange($"{path}.MeterUncertainty", "How far the meter may be off", set.MeterUncertainty, 0, 0.5);
            problems.InRange($"{path}.Date", "Year of the readings", set.Date?.Year, 1990, 2100);
            CheckConversion(set.Conversion, $"{path}.Conversion", problems);
            if (light.Surroundings is { } around && set.Height > around.Height)
                problems.Add($"{path}.Height", $"The lamps hang {Problems.Text(set.Height.Metres)} m over the sensor, but what is above them is only {Problems.Text(around.Height.Metres)} m over the bench.");
            CheckPlaces(light, set, path, problems);
            CheckValues(set, path, problems);
        }
    }

    public static void CheckConversion(LuxConversion? conversion, string path, Problems problems)
    {
        if (conversion is not { } lux) return;
        if (!(lux.LuxPerMicromole > 0 && lux.LuxPerMicromole <= LuxOfGreenest))
            problems.Add($"{path}.LuxPerMicromole", $"Lux of one µmol m⁻² s⁻¹ are {Problems.Text(lux.LuxPerMicromole)}; they must be more than zero and at most {Problems.Text(LuxOfGreenest)}, those of green light of 555 nm.");
        problems.InRange($"{path}.Uncertainty", "How far lux per µmol may be off", lux.Uncertainty, 0, 0.5);
    }

    private static void CheckPlaces(AreaLight light, ReadingSet set, string path, Problems problems)
    {
        var outwards = set.Pattern == ReadingPattern.Outwards;
        Rising($"{path}.Columns", "Places along a row", set.Columns, problems);
        Rising($"{path}.Rows", outwards ? "Directions of the lines" : "Places of the rows", set.Rows, problems);
        foreach (var (index, place) in set.Columns.Index())
            CheckPlace($"{path}.Columns[{index}]", place, set, (outwards ? Longer(light.BenchLength, light.BenchWidth) : light.BenchLength, problems));
        foreach (var (index, row) in set.Rows.Index())
            if (outwards)
                problems.InRange($"{path}.Rows[{index}]", "Direction of a line (degrees)", row, -360, 360);
            else
                CheckPlace($"{path}.Rows[{index}]", row, set, (light.BenchWidth, problems));
    }

    private static void CheckPlace(string path, double place, ReadingSet set, (Length? Side, Problems Problems) at)
    {
        if (set.Pattern is ReadingPattern.Outwards or ReadingPattern.Quadrant && place < 0)
            at.Problems.Add(path, $"A reading is {Problems.Text(place)} m from the middle; readings of a quarter or of a line outwards are counted from the middle, zero or more.");
        LightCheck.CheckPlace(path, "A reading", place, at);
    }

    private static Length? Longer(Length? one, Length? other) => one > other ? one : other;

    internal static void Rising(string path, string what, IReadOnlyList<double> numbers, Problems problems)
    {
        foreach (var (index, pair) in numbers.Zip(numbers.Skip(1)).Index())
            if (!(pair.First < pair.Second))
                problems.Add($"{path}[{index + 1}]", $"{what} must rise: {Problems.Text(pair.Second)} follows {Problems.Text(pair.First)}.");
    }

    private static void CheckValues(ReadingSet set, string path, Problems problems)
    {
        if ((long)set.Rows.Count * set.Columns.Count > MostReadings)
        {
            problems.Add($"{path}.Values", $"The set has {(long)set.Rows.Count * set.Columns.Count} readings; it may have {MostReadings}.");
            return;
        }
        if (set.Values.Count != set.Rows.Count)
            problems.Add($"{path}.Values", $"There are {set.Values.Count} lists of readings for {set.Rows.Count} rows; there must be one for each row.");
        foreach (var (row, values) in set.Values.Index())
        {
            if (values.Count != set.Columns.Count)
                problems.Add($"{path}.Values[{row}]", $"Row {row + 1} has {values.Count} readings for {set.Columns.Count} places; leave a blank where nothing was read.");
            foreach (var (column, value) in values.Take(MostReadings).Index())
                problems.InRange($"{path}.Values[{row}][{column}]", $"The reading in row {row + 1}, column {column + 1} ({UnitOf(set.Unit)})", value, 0, Most(set));
        }
        foreach (var (index, position) in set.Confirmed.Index())
            if (position < 0 || position >= set.Rows.Count * set.Columns.Count)
                problems.Add($"{path}.Confirmed[{index}]", $"Reading number {position} is confirmed, but the set has {set.Rows.Count * set.Columns.Count}, counted from 0.");
    }

    private static string UnitOf(LightUnit unit) => unit switch { LightUnit.Micromoles => "µmol m⁻² s⁻¹", LightUnit.Lux => "lx", _ => "fc" };

    private static double Most(ReadingSet set)
    {
        var factor = set.Conversion is { LuxPerMicromole: > 0 and <= LuxOfGreenest } known ? known.LuxPerMicromole : MostLuxPerMicromole;
        return set.Unit switch
        {
            LightUnit.Micromoles => LightCheck.MostMicromoles,
            LightUnit.Lux => LightCheck.MostMicromoles * factor,
            _ => LightCheck.MostMicromoles * factor / UnitConversions.LuxPerFootCandle,
        };
    }
}
