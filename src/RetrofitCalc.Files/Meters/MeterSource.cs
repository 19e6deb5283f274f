using RetrofitCalc.Engine.Metering;

namespace RetrofitCalc.Files.Meters;

/// <summary>One row of readings of a meter file; a file may hold several, and its user chooses.</summary>
/// <param name="Name">What the file calls it.</param>
/// <param name="About">What it measures, in plain words.</param>
/// <param name="Readings">Readings in the order of the file; none when refused.</param>
/// <param name="Notes">What a careful person wants to know of how it was read.</param>
public sealed record MeterSource(string Name, string About, IReadOnlyList<RawReading> Readings, IReadOnlyList<string> Notes)
{
    /// <summary>Why it cannot be used; null when it can.</summary>
    public string? Refusal { get; init; }

    /// <summary>Energy of all readings, export taken off.</summary>
    public Engine.Quantities.Energy Energy => Engine.Quantities.Energy.FromKilowattHours(Readings.Sum(r => r.Watts * r.Seconds) / 3.6e6);
}
