using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Tariffs;

/// <summary>Demand charges: those for all hours by month, and those by time of use. All in force at once apply together.</summary>
internal static class DemandFields
{
    public const string Flat = "flatdemandstructure";
    public const string ByTime = "demandratestructure";
    private static readonly int[] Windows = [15, 30, 60];

    public static IReadOnlyList<DemandCharge> Read(RecordNode root)
    {
        var flat = root.Find(Flat);
        var byTime = root.Find(ByTime);
        if (flat is null && byTime is null)
            return [];
        var minutes = Window(root);
        var ratchets = RatchetFields.ByMonth(root, flat is not null);
        var charges = flat is { } monthly ? Charges(monthly, "Demand", count => RateSchedule.Months(root, "flatdemandmonths", count), ratchets) : [];
        if (charges.Count > 1) // a ratchet looks back at the year's peaks, not only at those of its own season
            charges = [.. charges.Select(charge => charge with { Ratchet = charge.Ratchet is { } ratchet ? ratchet with { AcrossCharges = true } : null })];
        if (byTime is { } timed)
            charges = [.. charges, .. Charges(timed, "Time-of-use demand", count => RateSchedule.Hours(root, "demand", count), flat is null ? ratchets : RatchetFields.None)];
        return [.. charges.Select(charge => charge with { WindowMinutes = minutes })];
    }

    /// <summary>Hours-of-use blocks need a billed demand, also where demand itself has no price.</summary>
    public static DemandCharge Unpriced(RecordNode root)
    {
        root.Log.Doubtful("$.energyratestructure", "Its tiers are counted per kW, but demand has no price: a demand charge of zero measures it, over 15 minutes.");
        return new() { Name = "Demand without a price", Price = DemandPrice.Zero };
    }

    private static IReadOnlyList<DemandCharge> Charges(RecordNode node, string name, Func<int, HourCells?> schedule, IReadOnlyList<Ratchet?> ratchets)
    {
        node.Log.Used(node.Path, "Demand prices: rate plus adjustment of each tier.");
        if (RateTier.Periods(node) is not { } periods || schedule(periods.Count) is not { } cells)
            return [];
        var charges = new List<DemandCharge>();
        if (periods.SelectMany(tiers => tiers).Any(tier => tier.Price < 0))
        {
            node.Log.Wrong(node.Path, "has a price below zero, which demand cannot have here");
            return [];
        }
        foreach (var (place, tiers) in periods.Index())
        {
            var free = tiers.All(tier => tier.Price == 0);
            if (free)
                node.Log.Used($"{node.Path}[{place}]", "Has no price and makes no charge.");
            else if (!cells.When(place).Any())
                node.Log.Doubtful($"{node.Path}[{place}]", "Holds in no hour and is left out.");
            else
                charges.AddRange(Period(tiers, periods.Count > 1 ? $"{name}, period {place + 1}" : name, place, (cells, ratchets)));
        }
        return charges;
    }

    private static IEnumerable<DemandCharge> Period(IReadOnlyList<RateTier> tiers, string name, int place, (HourCells Cells, IReadOnlyList<Ratchet?> Ratchets) held) =>
        from ratchet in held.Ratchets.Distinct()
        from when in RateSchedule.Only(held.Cells, month => held.Ratchets[month] == ratchet).When(place)
        select new DemandCharge
        {
            Name = name,
            When = when,
            Price = DemandPrice.FromPerKilowatt(tiers[^1].Price),
            Blocks = [.. tiers.SkipLast(1).Select(tier => new DemandBlock(Power.FromKilowatts(tier.Max!.Value), DemandPrice.FromPerKilowatt(tier.Price)))],
            Ratchet = ratchet,
        };

    private static int Window(RecordNode root)
    {
        if (root.Find("demandwindow") is not { } node)
        {
            root.Log.Doubtful("$", "No \"demandwindow\" is given; demand is averaged over 15 minutes.");
            return 15;
        }
        if (node.Number() is not { } minutes)
            return 15;
        if (Windows.Contains((int)minutes) && minutes == (int)minutes)
        {
            root.Log.Used(node.Path, "Averaging window of demand.");
            return (int)minutes;
        }
        var nearest = Windows.MinBy(window => Math.Abs(window - minutes));
        root.Log.Doubtful(node.Path, $"Demand is averaged over 15, 30 or 60 minutes here; {nearest} is used.");
        return nearest;
    }
}
