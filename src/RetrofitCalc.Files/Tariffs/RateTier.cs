using System.Text.Json;

namespace RetrofitCalc.Files.Tariffs;

/// <summary>One tier of a period: its upper end counted from zero, and rate plus adjustment.</summary>
/// <param name="Max">Upper end; null for the last.</param>
internal sealed record RateTier(double? Max, double Price, string Unit)
{
    /// <summary>Some records write "no limit" as a number near the largest.</summary>
    private const double NoLimit = 1e30;

    private const int MostPeriods = 576; // one for each cell of the two tables
    private const int MostTiers = 100;

    private static readonly string[] Known = ["max", "rate", "adj", "unit"];

    /// <summary>Periods of tiers; null when they are misshapen, which is in the log.</summary>
    public static IReadOnlyList<IReadOnlyList<RateTier>>? Periods(RecordNode structure)
    {
        if (structure.Items(MostPeriods) is not { } periods)
            return null;
        var read = periods.Select(Period).ToList();
        if (read.Count == 0)
            structure.Log.Wrong(structure.Path, "has no period");
        return read.Count == 0 || read.Contains(null) ? null : [.. read.OfType<IReadOnlyList<RateTier>>()];
    }

    private static IReadOnlyList<RateTier>? Period(RecordNode period)
    {
        if (period.Items(MostTiers) is not { } nodes)
            return null;
        if (nodes.Count == 0)
            period.Log.Wrong(period.Path, "has no tier");
        if (nodes.FirstOrDefault(node => !node.IsObject) is { Log: not null } odd)
            odd.Log.Wrong(odd.Path, "must be a tier in { }");
        if (nodes.Count == 0 || nodes.Any(node => !node.IsObject))
            return null;
        var tiers = nodes.Select(Of).ToList();
        return Rise(tiers, nodes) ? [.. tiers[..^1], tiers[^1] with { Max = null }] : null;
    }

    private static RateTier Of(RecordNode node)
    {
        var rate = node.Find("rate")?.Number();
        var adjustment = node.Find("adj")?.Number();
        if (rate is null && adjustment is null)
            node.Log.Doubtful(node.Path, "No rate is given; it counts as zero.");
        foreach (var other in node.Element.EnumerateObject().Where(member => !Known.Contains(member.Name) && member.Value.ValueKind != JsonValueKind.Null))
            node.Log.NotUsed($"{node.Path}.{other.Name}", other.Name == "sell" ? "Payment for energy fed into the grid is not computed." : OtherFields.Unknown);
        var max = node.Find("max")?.Number();
        return new(max is 0 or >= NoLimit ? null : max, (rate ?? 0) + (adjustment ?? 0), node.Find("unit")?.Text() ?? "");
    }

    private static bool Rise(List<RateTier> tiers, IReadOnlyList<RecordNode> nodes)
    {
        var below = 0.0;
        for (var i = 0; i < tiers.Count; i++)
        {
            var last = i == tiers.Count - 1;
            if (tiers[i].Max is not { } max)
            {
                if (!last)
                    nodes[i].Log.Wrong(nodes[i].Path, "has no \"max\", but another tier follows");
                return last;
            }
            if (!(max > below))
            {
                nodes[i].Log.Wrong(nodes[i].Path, "must end above the tier before it");
                return false;
            }
            if (last)
                nodes[i].Log.Doubtful($"{nodes[i].Path}.max", "The last tier has an upper end; more is billed at its price.");
            below = max;
        }
        return true;
    }
}
