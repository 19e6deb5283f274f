using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Studies;

/// <summary>What electricity costs. A flat price is the smallest: one energy charge that applies always.</summary>
public sealed record Tariff
{
    /// <summary>Name of the tariff.</summary>
    public required string Name { get; init; }

    /// <summary>ISO 4217 code of the currency, such as USD.</summary>
    public string Currency { get; init; } = "USD";

    /// <summary>Where it comes from.</summary>
    public Provenance Source { get; init; } = Provenance.None;

    /// <summary>Charges that do not depend on use.</summary>
    public IReadOnlyList<FixedCharge> Fixed { get; init; } = [];

    /// <summary>Energy charges; at every instant exactly one must apply.</summary>
    public IReadOnlyList<EnergyCharge> Energy { get; init; } = [];

    /// <summary>Demand charges; any number may apply together.</summary>
    public IReadOnlyList<DemandCharge> Demand { get; init; } = [];

    /// <summary>Days billed as weekend days.</summary>
    public IReadOnlyList<AnnualDate> Holidays { get; init; } = [];

    /// <summary>The smallest tariff: one price at all hours.</summary>
    /// <param name="price">Price of energy.</param>
    /// <param name="currency">ISO 4217 code.</param>
    public static Tariff Flat(EnergyPrice price, string currency = "USD") => new()
    {
        Name = "Flat price",
        Currency = currency,
        Energy = [new EnergyCharge { Name = "Energy", Blocks = [new EnergyBlock(null, price)] }],
    };
}

/// <summary>A charge that does not depend on use.</summary>
/// <param name="Name">Name on the bill.</param>
/// <param name="Amount">Amount for each month.</param>
public sealed record FixedCharge(string Name, Money Amount);

/// <summary>When a charge applies: part of the year, and hours by kind of day.</summary>
public sealed record TariffHours
{
    /// <summary>First day; null together with <see cref="End"/> means all year.</summary>
    public AnnualDate? Start { get; init; }

    /// <summary>Last day, included; it may lie before the start and so cross New Year.</summary>
    public AnnualDate? End { get; init; }

    /// <summary>Windows in which the charge applies; empty means all hours that no other charge of the same dates claims.</summary>
    public IReadOnlyList<TariffWindow> Windows { get; init; } = [];
}

/// <summary>Kinds of day a tariff tells apart.</summary>
public enum DayKind
{
    /// <summary>Every day.</summary>
    All,
    /// <summary>Monday to Friday, holidays left out.</summary>
    Weekday,
    /// <summary>Saturday, Sunday and holidays.</summary>
    Weekend,
}

/// <summary>Hours on a kind of day.</summary>
/// <param name="Days">Kind of day.</param>
/// <param name="From">Local time it begins.</param>
/// <param name="To">Local time it ends; midnight means the end of the day. It does not run past midnight.</param>
public sealed record TariffWindow(DayKind Days, LocalTime From, LocalTime To);

/// <summary>A price of energy in one period of one part of the year.</summary>
public sealed record EnergyCharge
{
    /// <summary>Name on the bill, such as "Summer on-peak".</summary>
    public required string Name { get; init; }

    /// <summary>When it applies.</summary>
    public TariffHours When { get; init; } = new();

    /// <summary>Prices by cumulative use within the month; the last has no upper end.</summary>
    public required IReadOnlyList<EnergyBlock> Blocks { get; init; }
}

/// <summary>One block of energy prices.</summary>
/// <param name="UpTo">Upper end of the block within the month, counted from zero; null for the last.</param>
/// <param name="Price">Price within the block.</param>
public sealed record EnergyBlock(Energy? UpTo, EnergyPrice Price);

/// <summary>A price for the highest average load in a window of some minutes, billed each month.</summary>
public sealed record DemandCharge
{
    /// <summary>Name on the bill.</summary>
    public required string Name { get; init; }

    /// <summary>When load counts.</summary>
    public TariffHours When { get; init; } = new();

    /// <summary>Price of a kilowatt for a month.</summary>
    public required DemandPrice Price { get; init; }

    /// <summary>Length of the averaging window, aligned to the clock. [min; 15, 30 or 60]</summary>
    public int WindowMinutes { get; init; } = 15;

    /// <summary>Ratchet; null when there is none.</summary>
    public Ratchet? Ratchet { get; init; }
}

/// <summary>Billed demand is at least a share of the highest measured demand of earlier months.</summary>
/// <param name="Share">Share of the earlier peak. [unitless, 0–1]</param>
/// <param name="Months">Earlier months looked at. [count, 1–11]</param>
public sealed record Ratchet(double Share, int Months = 11);
