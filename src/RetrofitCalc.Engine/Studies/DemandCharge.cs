using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Studies;

/// <summary>A price for the highest average load in a window of some minutes, billed each month.</summary>
public sealed record DemandCharge
{
    /// <summary>Name on the bill.</summary>
    public required string Name { get; init; }

    /// <summary>When load counts.</summary>
    public TariffHours When { get; init; } = new();

    /// <summary>Price of a kilowatt for a month; with blocks, of what lies above them.</summary>
    public required DemandPrice Price { get; init; }

    /// <summary>Prices of the first kilowatts, upper ends rising; what lies above the last costs <see cref="Price"/>.</summary>
    public IReadOnlyList<DemandBlock> Blocks { get; init; } = [];

    /// <summary>Length of the averaging window, aligned to the clock. [min; 15, 30 or 60]</summary>
    public int WindowMinutes { get; init; } = 15;

    /// <summary>Ratchet; null when there is none.</summary>
    public Ratchet? Ratchet { get; init; }

    /// <summary>Least demand billed; null when there is none.</summary>
    public Power? Minimum { get; init; }

    /// <summary>Rounding of the demand before it is priced; null when it is not rounded.</summary>
    public DemandRounding? Rounding { get; init; }
}

/// <summary>Price of demand up to some height.</summary>
/// <param name="UpTo">Upper end, counted from zero.</param>
/// <param name="Price">Price of a kilowatt for a month within the block.</param>
public sealed record DemandBlock(Power UpTo, DemandPrice Price);

/// <summary>Billed demand is at least a share of the highest measured demand of earlier months.</summary>
/// <param name="Share">Share of the earlier peak. [unitless, 0–1]</param>
/// <param name="Months">Earlier months looked at. [count, 1–11]</param>
public sealed record Ratchet(double Share, int Months = 11)
{
    /// <summary>Calendar months whose peaks lift later ones, such as the summer months; all when empty. [1–12]</summary>
    public IReadOnlyList<int> PeakMonths { get; init; } = [];

    /// <summary>Whether peaks of all demand charges count, not only of this one: summer peaks that lift a winter charge.</summary>
    public bool AcrossCharges { get; init; }
}

/// <summary>Rounding of demand.</summary>
/// <param name="Step">Step it is rounded to, such as 1 kW.</param>
/// <param name="Direction">Which way.</param>
public sealed record DemandRounding(Power Step, RoundingDirection Direction = RoundingDirection.Nearest);

/// <summary>Which way a quantity is rounded.</summary>
public enum RoundingDirection
{
    /// <summary>To the nearest step, half away from zero.</summary>
    Nearest,
    /// <summary>Up to the next step.</summary>
    Up,
    /// <summary>Down to the last step.</summary>
    Down,
}
