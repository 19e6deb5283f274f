namespace RetrofitCalc.Engine.Metering;

/// <summary>One value of a meter as a file gives it.</summary>
/// <param name="Start">First instant it speaks for. [s since 1970, UTC]</param>
/// <param name="Seconds">Length of time it speaks for. [s, above 0]</param>
/// <param name="Watts">Average load over that time; negative for export. [W]</param>
public readonly record struct RawReading(long Start, int Seconds, double Watts)
{
    /// <summary>Line or row of the file, from 1; 0 when there is none.</summary>
    public int Line { get; init; }

    /// <summary>What is special about it.</summary>
    public ReadingMarks Marks { get; init; }

    /// <summary>First instant after it. [s since 1970, UTC]</summary>
    public long End => Start + Seconds;
}

/// <summary>What is special about a reading.</summary>
[Flags]
public enum ReadingMarks : byte
{
    /// <summary>Nothing.</summary>
    None = 0,
    /// <summary>The file says that it was estimated, edited or questioned.</summary>
    Estimated = 1,
    /// <summary>Its local time was skipped when the clocks went forward.</summary>
    NoSuchLocalTime = 2,
    /// <summary>Its local time came for the second time when the clocks went back.</summary>
    RepeatedHour = 4,
}
