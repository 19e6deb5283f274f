namespace RetrofitCalc.Engine.Metering;

/// <summary>How long the readings of a meter are.</summary>
/// <param name="Common">Length of most readings. [s]</param>
/// <param name="Minutes">Length of the even grid they are laid on. [min; 5, 15, 30 or 60]</param>
internal sealed record MeterInterval(int Common, int Minutes)
{
    private static readonly int[] Grids = [5, 15, 30, 60];

    /// <summary>The most common length, and the finest grid whose intervals hold a whole number of them; null when there are no readings, or longer ones than an hour.</summary>
    public static MeterInterval? Of(IReadOnlyList<RawReading> readings)
    {
        if (readings.Count == 0)
            return null;
        var common = readings.CountBy(reading => reading.Seconds).MaxBy(length => (length.Value, -length.Key)).Key;
        var minutes = Grids.FirstOrDefault(grid => grid * 60 % common == 0);
        return minutes > 0 ? new(common, minutes)
            : common < 3600 ? new(common, Grids.First(grid => grid * 60 >= common))
            : null;
    }
}
