using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Studies;

/// <summary>One year of the site's interval meter, on an even grid: what the "now" bill is computed from.</summary>
public sealed record MeterYear
{
    /// <summary>Name people use, such as the meter's number or the file's name.</summary>
    public required string Name { get; init; }

    /// <summary>Where it comes from.</summary>
    public Provenance Source { get; init; } = Provenance.None;

    /// <summary>First local day; the readings run from its midnight at the site.</summary>
    public required LocalDate FirstDay { get; init; }

    /// <summary>Length of an interval. [min; 5, 15, 30 or 60]</summary>
    public required int IntervalMinutes { get; init; }

    /// <summary>Average load of each interval in watts, in order of time without a break over clock changes; null where nothing is known; negative for export.</summary>
    public required IReadOnlyList<double?> Watts { get; init; }

    /// <summary>Intervals that were filled, with the user's consent.</summary>
    public IReadOnlyList<FilledGap> Filled { get; init; } = [];
}

/// <summary>A run of intervals that no meter reported and that were filled.</summary>
/// <param name="First">Index of the first interval. [0-based]</param>
/// <param name="Count">Number of intervals.</param>
/// <param name="Rule">How they were filled, in plain words.</param>
public sealed record FilledGap(int First, int Count, string Rule);

/// <summary>One year of outdoor air, hour by hour.</summary>
public sealed record WeatherYear
{
    /// <summary>Name of the place, as the file says.</summary>
    public required string Name { get; init; }

    /// <summary>Where it comes from.</summary>
    public Provenance Source { get; init; } = Provenance.None;

    /// <summary>Dry-bulb temperature of each hour of a year of 365 days by standard time, hour 1 of 1 January first; 29 February repeats 28 February. [°C]</summary>
    public required IReadOnlyList<double> DryBulb { get; init; }

    /// <summary>Standard time of the file, ahead of UTC. [h]</summary>
    public double UtcOffset { get; init; }
}
