using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>What the lines of one billing month rest on.</summary>
/// <param name="Tariff">The tariff.</param>
/// <param name="Month">What the meter shows.</param>
/// <param name="Terms">Price factor and power factor.</param>
/// <param name="Demand">Billed demand under each demand charge, in the tariff's order; null where it is not in force.</param>
internal sealed record BillBasis(Tariff Tariff, MeteredMonth Month, BillTerms Terms, IReadOnlyList<Power?> Demand)
{
    /// <summary>A line at one of the tariff's prices, moved by the price factor.</summary>
    public BillLine Line(BillLineKind kind, int charge, string name, Priced priced) =>
        PlainLine(kind, charge, name, priced with { Price = priced.Price * Terms.PriceFactor });

    /// <summary>A line whose price is not money, such as a tax rate.</summary>
    public BillLine PlainLine(BillLineKind kind, int charge, string name, Priced priced) =>
        new(kind, name, priced.Quantity, priced.Unit, priced.Price, BillRounding.Amount(priced.Quantity * priced.Price, Tariff.AmountDecimals)) { Charge = charge };

    /// <summary>Share of the month's days on which an energy charge is in force. [unitless, 0–1]</summary>
    public double EnergyShare(int charge) => Month.EnergyShares.Count == 0 ? 1 : Month.EnergyShares[charge];

    /// <summary>Share of the month's days on which a demand charge is in force. [unitless, 0–1]</summary>
    public double DemandShare(int charge) => Month.DemandShares.Count == 0 ? 1 : Month.DemandShares[charge];

    /// <summary>Billed demand under the demand charge of a name, or under the first in force; zero when there is none.</summary>
    public Power DemandOf(string? name) =>
        Tariff.Demand.Zip(Demand, (charge, billed) => (charge.Name, Billed: billed))
            .FirstOrDefault(each => each.Billed is not null && (name is null || each.Name == name)).Billed ?? Power.Zero;
}

/// <summary>A quantity at a price.</summary>
/// <param name="Quantity">Quantity. [unit as named]</param>
/// <param name="Unit">Unit of the quantity.</param>
/// <param name="Price">Price of one unit. [currency per unit]</param>
internal readonly record struct Priced(double Quantity, string Unit, double Price);
