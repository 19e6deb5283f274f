using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Carbon;

/// <summary>What one grid region emits (E-29).</summary>
/// <param name="Code">Short name, such as CAMX.</param>
/// <param name="Name">Name of the region.</param>
/// <param name="Average">Average rate of all that is generated, carbon dioxide equivalent: for an inventory. [lb/MWh]</param>
/// <param name="NonBaseload">Rate of the plants that answer to a change, carbon dioxide equivalent: for a change, never for an inventory. [lb/MWh]</param>
public sealed record GridRegion(string Code, string Name, double Average, double NonBaseload);

/// <summary>Emission factors of the United States grid, by region.</summary>
/// <remarks>
/// EPA eGRID2023, January 2025, Summary Tables, Table 1, read in a public copy. The table gives the average rate as carbon
/// dioxide equivalent and the non-baseload rate gas by gas; the latter is summed here with the same weights.
/// </remarks>
public static class GridFactors
{
    /// <summary>Where the factors come from.</summary>
    public static Provenance Source { get; } = new(EvidenceKind.Tested,
        "EPA eGRID2023 (January 2025), Summary Tables, Table 1: total output and non-baseload rates; warming of CH4 28 and N2O 265 times that of CO2");

    /// <summary>The regions, by code; the whole country last.</summary>
    public static IReadOnlyList<GridRegion> All { get; } =
    [
        Row("AKGD", "Alaska, grid", 904.591, (1077.110, 0.116, 0.016)),
        Row("AKMS", "Alaska, miscellaneous", 521.233, (1548.607, 0.067, 0.012)),
        Row("AZNM", "Southwest", 743.548, (1260.436, 0.067, 0.009)),
        Row("CAMX", "California", 438.150, (1033.985, 0.051, 0.007)),
        Row("ERCT", "Texas", 740.832, (1264.939, 0.076, 0.010)),
        Row("FRCC", "Florida", 804.392, (1033.954, 0.045, 0.006)),
        Row("HIMS", "Hawaii, other islands", 1132.035, (1596.385, 0.170, 0.027)),
        Row("HIOA", "Hawaii, Oahu", 1498.679, (1753.441, 0.159, 0.025)),
        Row("MROE", "Midwest, east", 1409.758, (1713.772, 0.161, 0.023)),
        Row("MROW", "Midwest, west", 926.448, (1776.580, 0.180, 0.026)),
        Row("NEWE", "New England", 541.127, (885.161, 0.067, 0.009)),
        Row("NWPP", "Northwest", 635.337, (1613.426, 0.146, 0.021)),
        Row("NYCW", "New York City and Westchester", 976.151, (1008.891, 0.020, 0.002)),
        Row("NYLI", "Long Island", 1189.368, (1316.557, 0.050, 0.006)),
        Row("NYUP", "Upstate New York", 241.563, (909.108, 0.041, 0.005)),
        Row("PRMS", "Puerto Rico", 1548.288, (1636.738, 0.072, 0.012)),
        Row("RFCE", "Mid-Atlantic", 597.073, (1175.499, 0.077, 0.010)),
        Row("RFCM", "Michigan", 967.295, (1508.119, 0.144, 0.020)),
        Row("RFCW", "Ohio Valley", 915.959, (1757.345, 0.161, 0.023)),
        Row("RMPA", "Rocky Mountains", 1041.986, (1620.640, 0.124, 0.018)),
        Row("SPNO", "Plains, north", 867.541, (1892.091, 0.188, 0.027)),
        Row("SPSO", "Plains, south", 894.763, (1508.425, 0.095, 0.013)),
        Row("SRMV", "Lower Mississippi Valley", 741.371, (1145.487, 0.061, 0.008)),
        Row("SRMW", "Middle Mississippi Valley", 1247.042, (1818.554, 0.190, 0.027)),
        Row("SRSO", "South", 844.553, (1385.997, 0.096, 0.014)),
        Row("SRTV", "Tennessee Valley", 900.820, (1665.755, 0.154, 0.022)),
        Row("SRVC", "Virginia and Carolinas", 593.079, (1286.770, 0.100, 0.014)),
        Row("US", "United States, all", 775.239, (1393.700, 0.104, 0.015)),
    ];

    /// <summary>The region of a code; null when there is none.</summary>
    /// <param name="code">Short name, such as CAMX.</param>
    public static GridRegion? Find(string? code) => All.FirstOrDefault(region => region.Code == code);

    /// <summary>Carbon dioxide equivalent of three gases: CO2 + 28 · CH4 + 265 · N2O. [unit of the arguments]</summary>
    /// <param name="carbonDioxide">Carbon dioxide. [any rate]</param>
    /// <param name="methane">Methane. [the same rate]</param>
    /// <param name="nitrousOxide">Nitrous oxide. [the same rate]</param>
    /// <remarks>Warming over 100 years as the EPA table uses it (fifth assessment report).</remarks>
    public static double Equivalent(double carbonDioxide, double methane, double nitrousOxide) =>
        carbonDioxide + 28 * methane + 265 * nitrousOxide;

    /// <summary>Mass emitted for some electricity: lb/MWh · 0.45359237 / 1000 · kWh. [kg]</summary>
    /// <param name="electricity">The electricity.</param>
    /// <param name="poundsPerMegawattHour">Emission rate. [lb/MWh]</param>
    public static double Kilograms(Energy electricity, double poundsPerMegawattHour) =>
        electricity.KilowattHours * poundsPerMegawattHour * UnitConversions.KilogramsPerPound / UnitConversions.WattsPerKilowatt;

    private static GridRegion Row(string code, string name, double average, (double CarbonDioxide, double Methane, double NitrousOxide) nonBaseload) =>
        new(code, name, average, Equivalent(nonBaseload.CarbonDioxide, nonBaseload.Methane, nonBaseload.NitrousOxide));
}
