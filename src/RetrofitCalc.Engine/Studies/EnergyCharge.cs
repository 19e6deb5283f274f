using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Studies;

/// <summary>A charge that does not depend on use.</summary>
/// <param name="Name">Name on the bill.</param>
/// <param name="Amount">Amount for each month, or each day.</param>
/// <param name="Per">Month or day.</param>
public sealed record FixedCharge(string Name, Money Amount, ChargedPer Per = ChargedPer.Month);

/// <summary>What a fixed amount is charged for.</summary>
public enum ChargedPer
{
    /// <summary>Each billing month.</summary>
    Month,
    /// <summary>Each day of the billing month.</summary>
    Day,
}

/// <summary>A price of energy in one period of one part of the year.</summary>
public sealed record EnergyCharge
{
    /// <summary>Name on the bill, such as "Summer on-peak".</summary>
    public required string Name { get; init; }

    /// <summary>When it applies.</summary>
    public TariffHours When { get; init; } = new();

    /// <summary>Prices by cumulative use under this charge within the month; the last has no upper end.</summary>
    public required IReadOnlyList<EnergyBlock> Blocks { get; init; }

    /// <summary>What the upper ends of blocks are counted in.</summary>
    public BlockUnit BlockUnit { get; init; }

    /// <summary>Name of the demand charge whose billed demand scales blocks per kilowatt; null for the first in force.</summary>
    public string? BlocksByDemand { get; init; }
}

/// <summary>What the upper ends of energy blocks are counted in.</summary>
public enum BlockUnit
{
    /// <summary>Kilowatt-hours a month.</summary>
    PerMonth,
    /// <summary>Kilowatt-hours for each kilowatt (or kilovolt-ampere) of billed demand a month: hours of use.</summary>
    PerKilowatt,
    /// <summary>Kilowatt-hours a day, times the days of the month.</summary>
    PerDay,
}

/// <summary>One block of energy prices.</summary>
/// <param name="UpTo">Upper end of the block within the month, counted from zero in the charge's block unit; null for the last.</param>
/// <param name="Price">Price within the block.</param>
public sealed record EnergyBlock(Energy? UpTo, EnergyPrice Price);

/// <summary>A price by kilowatt-hour on top of the energy charge, such as fuel, power cost or an hour-of-day rider; may be negative.</summary>
public sealed record EnergyAdjustment
{
    /// <summary>Name on the bill.</summary>
    public required string Name { get; init; }

    /// <summary>When it applies; no windows means all hours.</summary>
    public TariffHours When { get; init; } = new();

    /// <summary>One price for all months, or twelve, January first. Negative prices are credits.</summary>
    public required IReadOnlyList<EnergyPrice> Prices { get; init; }
}
