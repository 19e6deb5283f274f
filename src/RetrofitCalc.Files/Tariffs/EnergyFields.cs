using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Tariffs;

/// <summary>Energy prices by period and tier, and the fuel adjustment.</summary>
internal static class EnergyFields
{
    private const string Structure = "energyratestructure";

    public static IReadOnlyList<EnergyCharge> Read(RecordNode root, IReadOnlyList<DemandCharge> demand)
    {
        if (root.Find(Structure) is not { } node)
        {
            root.Log.Wrong("$", $"has no \"{Structure}\", so energy has no price");
            return [];
        }
        root.Log.Used(node.Path, "Energy prices: rate plus adjustment of each tier.");
        if (RateTier.Periods(node) is not { } periods || RateSchedule.Hours(root, "energy", periods.Count) is not { } cells)
            return [];
        var several = periods.Count > 1;
        var prices = periods.Select((tiers, i) => Period(node, i, tiers) with { Name = several ? $"Energy, period {i + 1}" : "Energy" }).ToList();
        var charges = HourTable.Of(prices, cells).ToCharges();
        foreach (var unused in prices.Where(price => charges.All(charge => charge.Name != price.Name)))
            root.Log.Doubtful(node.Path, $"\"{unused.Name}\" holds in no hour and is left out.");
        return charges;
    }

    public static bool NeedsDemand(IReadOnlyList<EnergyCharge> energy) => energy.Any(charge => charge.BlockUnit == BlockUnit.PerKilowatt);

    public static IReadOnlyList<EnergyAdjustment> Adjustments(RecordNode root)
    {
        if (root.Find("fueladjustmentsmonthly") is not { } node || node.Months() is not { } months)
            return [];
        root.Log.Used(node.Path, "Adjustment per kWh by month.");
        return months.All(price => price == 0)
            ? []
            : [new() { Name = "Fuel adjustment", Prices = [.. (months.Distinct().Count() == 1 ? months[..1] : months).Select(EnergyPrice.FromPerKilowattHour)] }];
    }

    private static EnergyCharge Period(RecordNode structure, int number, IReadOnlyList<RateTier> tiers) => new()
    {
        Name = "",
        BlockUnit = Unit(structure, number, tiers),
        Blocks = [.. tiers.Select(tier => new EnergyBlock(tier.Max is { } max ? Energy.FromKilowattHours(max) : null, EnergyPrice.FromPerKilowattHour(tier.Price)))],
    };

    /// <summary>The unit of the upper ends; the last tier has none.</summary>
    private static BlockUnit Unit(RecordNode structure, int number, IReadOnlyList<RateTier> tiers)
    {
        string[] units = [.. tiers.SkipLast(1).Select(tier => tier.Unit).Distinct(StringComparer.OrdinalIgnoreCase)];
        if (units.Length > 1)
            structure.Log.Wrong($"{structure.Path}[{number}]", $"mixes tiers in {string.Join(" and ", units.Select(unit => $"\"{unit}\""))}, which this program cannot");
        switch (units.FirstOrDefault("").ToLowerInvariant())
        {
            case "" or "kwh":
                return BlockUnit.PerMonth;
            case "kwh daily":
                return BlockUnit.PerDay;
            case "kwh/kw":
                return BlockUnit.PerKilowatt;
            default:
                structure.Log.Wrong($"{structure.Path}[{number}]", $"counts its tiers in \"{units[0]}\", which this program cannot; it can in kWh, kWh daily and kWh/kW");
                return default;
        }
    }
}
