using NodaTime;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Results;

/// <summary>The bill of one billing month.</summary>
/// <param name="Month">Calendar month that holds the middle of the billing month.</param>
/// <param name="Lines">Its lines, each rounded.</param>
public sealed record MonthlyBill(YearMonth Month, IReadOnlyList<BillLine> Lines)
{
    /// <summary>First day.</summary>
    public LocalDate First { get; init; }

    /// <summary>Last day, included.</summary>
    public LocalDate Last { get; init; }

    /// <summary>Sum of the rounded lines.</summary>
    public Money Total => Lines.Aggregate(Money.Zero, (sum, line) => sum + line.Amount);
}

/// <summary>Kinds of bill line.</summary>
public enum BillLineKind
{
    /// <summary>Does not depend on use.</summary>
    Fixed,
    /// <summary>By kilowatt-hour.</summary>
    Energy,
    /// <summary>By kilowatt.</summary>
    Demand,
    /// <summary>By kilowatt-hour, on top of the energy charge.</summary>
    Adjustment,
    /// <summary>By kilovar.</summary>
    Reactive,
    /// <summary>A credit for many hours of use.</summary>
    Credit,
    /// <summary>What is missing to the minimum bill.</summary>
    Minimum,
    /// <summary>A percentage of other lines.</summary>
    Tax,
}

/// <summary>One line of a bill.</summary>
/// <param name="Kind">Kind of charge.</param>
/// <param name="Name">Name of the charge.</param>
/// <param name="Quantity">Quantity billed. [unit as named]</param>
/// <param name="Unit">Unit: month, day, kWh, kW, kVA, kvar, h·kW or the currency.</param>
/// <param name="UnitPrice">Price of one unit. [currency per unit]</param>
/// <param name="Amount">Amount, rounded as the tariff says, half away from zero.</param>
public sealed record BillLine(BillLineKind Kind, string Name, double Quantity, string Unit, double UnitPrice, Money Amount)
{
    /// <summary>Place of the charge among the tariff's charges of its kind. [0-based]</summary>
    public int Charge { get; init; }
}
