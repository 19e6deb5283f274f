using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Studies;

/// <summary>What electricity costs. A flat price is the smallest: one energy charge that applies always. Late-payment surcharges are not modelled.</summary>
public sealed record Tariff
{
    /// <summary>Name of the tariff.</summary>
    public required string Name { get; init; }

    /// <summary>ISO 4217 code of the currency, such as USD.</summary>
    public string Currency { get; init; } = "USD";

    /// <summary>Where it comes from.</summary>
    public Provenance Source { get; init; } = Provenance.None;

    /// <summary>First day it is in force; null when not said.</summary>
    public LocalDate? ValidFrom { get; init; }

    /// <summary>Last day it is in force, included; null when not said.</summary>
    public LocalDate? ValidTo { get; init; }

    /// <summary>Charges that do not depend on use.</summary>
    public IReadOnlyList<FixedCharge> Fixed { get; init; } = [];

    /// <summary>Energy charges; at every instant exactly one must apply.</summary>
    public IReadOnlyList<EnergyCharge> Energy { get; init; } = [];

    /// <summary>Adjustments by kilowatt-hour on top of the energy charges, such as fuel; any number may apply together.</summary>
    public IReadOnlyList<EnergyAdjustment> Adjustments { get; init; } = [];

    /// <summary>Demand charges; any number may apply together.</summary>
    public IReadOnlyList<DemandCharge> Demand { get; init; } = [];

    /// <summary>What a poor power factor costs; null when nothing.</summary>
    public PowerFactorClause? PowerFactor { get; init; }

    /// <summary>Credit for using the billed demand many hours; null when there is none.</summary>
    public LoadFactorCredit? LoadFactorCredit { get; init; }

    /// <summary>Least sum of all lines before taxes in one billing month; null when there is none.</summary>
    public Money? MinimumBill { get; init; }

    /// <summary>Taxes and other percentages on lines, in order; each sees the lines before taxes.</summary>
    public IReadOnlyList<BillTax> Taxes { get; init; } = [];

    /// <summary>Days billed as weekend days.</summary>
    public IReadOnlyList<Holiday> Holidays { get; init; } = [];

    /// <summary>When the meter is read; calendar months by default.</summary>
    public MeterReading Reading { get; init; } = new();

    /// <summary>How a charge that holds for part of the year is billed in a billing month it covers only in part.</summary>
    public SeasonChange SeasonChange { get; init; }

    /// <summary>Decimals to which each line's amount is rounded, half away from zero. [count, 0–4]</summary>
    public int AmountDecimals { get; init; } = 2;

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

/// <summary>When the meter is read, which makes the billing months.</summary>
public sealed record MeterReading
{
    /// <summary>Day of each month on which a billing month begins. [1–28]; 1 is the calendar month; ignored when dates are given.</summary>
    public int DayOfMonth { get; init; } = 1;

    /// <summary>
    /// Thirteen reading dates in order, each the first day of a billing month and the last the day after the year; empty for a fixed day of the month.
    /// They span 362 to 368 days, so that their sum stands for a year.
    /// </summary>
    public IReadOnlyList<LocalDate> Dates { get; init; } = [];
}

/// <summary>How a season's demand and block prices are billed in a billing month that the season covers only in part.</summary>
public enum SeasonChange
{
    /// <summary>Each season's charge counts its own days: demand prices and block sizes by its share of the month's days.</summary>
    ByDays,
    /// <summary>The season of the first day holds for the whole billing month.</summary>
    SeasonOfFirstDay,
    /// <summary>The season of the last day holds for the whole billing month.</summary>
    SeasonOfLastDay,
}
