using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Tariffs;

/// <summary>Units of demand, and the price of reactive demand.</summary>
internal static class PowerFactorFields
{
    private const string Reactive = "demandreactivepowercharge";

    public static PowerFactorClause? Read(RecordNode root, IReadOnlyList<DemandCharge> demand)
    {
        string[] flat = [.. demand.Select(charge => charge.Name).Where(name => !name.StartsWith("Time-of-use", StringComparison.Ordinal)).Distinct()];
        string[] byTime = [.. demand.Select(charge => charge.Name).Except(flat)];
        string[] inKilovoltAmperes =
        [
            .. IsKilovoltAmperes(root, "flatdemandunit") ? flat : [],
            .. IsKilovoltAmperes(root, "demandrateunit") ? byTime : [],
        ];
        var price = root.Find(Reactive) is { } node && node.NotNegative() is { } number && number != 0 ? number : (double?)null;
        if (inKilovoltAmperes.Length > 0)
        {
            if (price is not null)
                root.Log.NotUsed($"$.{Reactive}", "Demand is billed in kVA; a tariff has one power-factor clause here.");
            return new BilledInKilovoltAmperes { On = inKilovoltAmperes.Length == flat.Length + byTime.Length ? [] : inKilovoltAmperes };
        }
        return price is { } perKilovar ? OfReactive(root, perKilovar, demand.Count > 0) : null;
    }

    private static ReactiveAboveShare? OfReactive(RecordNode root, double price, bool hasDemand)
    {
        if (!hasDemand)
        {
            root.Log.NotUsed($"$.{Reactive}", "Reactive demand needs a demand charge, of which the record has none.");
            return null;
        }
        root.Log.Doubtful($"$.{Reactive}", "The record does not say which share of reactive demand is free; none is taken to be. See the tariff sheet.");
        return new(0, DemandPrice.FromPerKilowatt(price));
    }

    private static bool IsKilovoltAmperes(RecordNode root, string name)
    {
        if (root.Find(name) is not { } node || node.Text() is not { } unit)
            return false;
        var isPriced = root.Find(name == "flatdemandunit" ? DemandFields.Flat : DemandFields.ByTime) is not null;
        if (!isPriced)
            root.Log.NotUsed(node.Path, "Unit of a charge the record does not have.");
        else if (unit.ToLowerInvariant() is "kw" or "kva" or "")
            root.Log.Used(node.Path, "Unit of demand.");
        else
            root.Log.Wrong(node.Path, $"is \"{unit}\", in which this program cannot bill demand; it can in kW and kVA");
        return isPriced && unit.Equals("kva", StringComparison.OrdinalIgnoreCase);
    }
}
