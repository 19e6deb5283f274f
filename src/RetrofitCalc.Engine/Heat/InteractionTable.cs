using RetrofitCalc.Engine.Catalogue;

namespace RetrofitCalc.Engine.Heat;

/// <summary>How a building is heated, as the table of interaction factors tells it apart.</summary>
public enum HeatingKind
{
    /// <summary>Electric resistance.</summary>
    Resistance,
    /// <summary>Electric heat pump.</summary>
    HeatPump,
    /// <summary>Gas, oil or biomass.</summary>
    Fuel,
    /// <summary>A refrigerated space.</summary>
    Refrigerated,
}

/// <summary>Interaction factors of one kind of building.</summary>
/// <param name="Building">Kind of building.</param>
/// <param name="Resistance">Electricity kept of each lighting kilowatt-hour saved, with electric resistance heating. [unitless]</param>
/// <param name="HeatPump">The same with a heat pump. [unitless]</param>
/// <param name="Fuel">The same with fuel heating. [unitless]</param>
/// <param name="Refrigerated">The same in a refrigerated space; null where the table's figure makes no sense. [unitless]</param>
/// <param name="Therms">Fuel for each lighting kilowatt-hour saved, with fuel heating; negative when heating must make up. [therm/kWh]</param>
public sealed record InteractionRow(string Building, double Resistance, double HeatPump, double Fuel, double? Refrigerated, double Therms)
{
    /// <summary>Electricity kept of each lighting kilowatt-hour saved; null where the table has no usable figure. [unitless]</summary>
    /// <param name="heating">How the building is heated.</param>
    public double? Factor(HeatingKind heating) => heating switch
    {
        HeatingKind.Resistance => Resistance,
        HeatingKind.HeatPump => HeatPump,
        HeatingKind.Fuel => Fuel,
        _ => Refrigerated,
    };

    /// <summary>Fuel for each lighting kilowatt-hour saved; zero but for fuel heating. [therm/kWh]</summary>
    /// <param name="heating">How the building is heated.</param>
    public double ThermsFor(HeatingKind heating) => heating == HeatingKind.Fuel ? Therms : 0;
}

/// <summary>Published interaction factors: what is left of a saving of lighting energy after cooling and heating have answered (E-27).</summary>
/// <remarks>
/// Bonneville Power Administration, HVAC Interactive Effects table, 2012-05-07, read in a copy. Climate of the Pacific Northwest and an
/// average share of cooled buildings: not national. Its figure for refrigerated space in the row of exterior lighting is left out: what
/// burns outdoors does not warm a cold room.
/// </remarks>
public static class InteractionTable
{
    /// <summary>Where the factors come from.</summary>
    public static Provenance Source { get; } = new(EvidenceKind.Tested,
        "Bonneville Power Administration, HVAC Interactive Effects, 2012-05-07: climate of the Pacific Northwest, average share of cooled buildings");

    /// <summary>The rows, in the table's order.</summary>
    public static IReadOnlyList<InteractionRow> Rows { get; } =
    [
        new("College", 0.68, 0.96, 1.11, 1.30, -0.02138),
        new("School, K-12", 0.57, 0.86, 1.00, 1.30, -0.02184),
        new("Hospital", 0.29, 0.65, 0.94, 1.30, -0.03276),
        new("Office under 20,000 sq ft", 0.69, 0.96, 1.12, 1.30, -0.02138),
        new("Office over 100,000 sq ft", 0.91, 1.02, 1.07, 1.30, -0.00819),
        new("Retail, 5,000 to 50,000 sq ft", 0.68, 0.93, 1.03, 1.30, -0.01774),
        new("Supermarket", 0.85, 0.97, 1.05, 1.30, -0.01001),
        new("Warehouse or industry", 0.61, 0.81, 0.96, 1.30, -0.01774),
        new("Exterior", 1.00, 1.00, 1.00, null, 0),
    ];
}
