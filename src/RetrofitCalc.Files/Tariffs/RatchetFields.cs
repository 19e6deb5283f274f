using System.Text.Json;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Tariffs;

/// <summary>Ratchets: a share by month in versions up to 7, one share with months that count in version 8.</summary>
internal static class RatchetFields
{
    public static IReadOnlyList<Ratchet?> None { get; } = new Ratchet?[12];

    /// <summary>The ratchet of each month, January first.</summary>
    public static IReadOnlyList<Ratchet?> ByMonth(RecordNode root, bool flat)
    {
        var shares = root.Find("demandratchetpercentage");
        if (LookBack(root) is { } lookBack)
        {
            if (shares is { } other)
                root.Log.NotUsed(other.Path, "\"lookbackpercent\" says the same and is used.");
            return [.. Enumerable.Repeat(lookBack, 12)];
        }
        if (shares is not { } node || node.Months() is not { } months)
            return None;
        if (months.All(share => share == 0))
        {
            root.Log.Used(node.Path, "No ratchet.");
            return None;
        }
        var divisor = Divisor(root, node.Path, months.Max());
        if (months.Any(share => share < 0 || share / divisor > 1))
        {
            root.Log.Wrong(node.Path, "must be shares from 0 to 1, or percentages from 0 to 100");
            return None;
        }
        root.Log.Doubtful(node.Path, $"It is taken for a share of the highest peak of the 11 months before, on the {(flat ? "charge for all hours" : "time-of-use charges, each by its own peaks")}; the record does not say.");
        return [.. months.Select(share => share == 0 ? null : new Ratchet(share / divisor))];
    }

    private static Ratchet? LookBack(RecordNode root)
    {
        if (root.Find("lookbackpercent") is not { } node || node.Number() is not { } share || share == 0)
            return null;
        var divisor = Divisor(root, node.Path, share);
        if (share < 0 || share / divisor > 1)
        {
            root.Log.Wrong(node.Path, "must be a share from 0 to 1, or a percentage from 0 to 100");
            return null;
        }
        return new Ratchet(share / divisor, Range(root)) { PeakMonths = PeakMonths(root) };
    }

    /// <summary>Records are known with shares and with percentages; only the size tells them apart.</summary>
    private static double Divisor(RecordNode root, string path, double largest)
    {
        var percent = largest > 1;
        root.Log.Doubtful(path, percent ? "Numbers above 1 are taken for percentages." : "Numbers up to 1 are taken for shares, not percentages.");
        return percent ? 100 : 1;
    }

    private static int Range(RecordNode root)
    {
        if (root.Find("lookbackrange") is not { } node || node.Number() is not { } months)
            return 11;
        if (months is >= 1 and <= 11)
            root.Log.Used(node.Path, "Months the ratchet looks back.");
        else
            root.Log.Doubtful(node.Path, "A ratchet looks back 1 to 11 months here; 11 are used.");
        return months is >= 1 and <= 11 ? (int)months : 11;
    }

    private static IReadOnlyList<int> PeakMonths(RecordNode root)
    {
        if (root.Find("lookbackmonths") is not { } node || node.Just(12) is not { } months)
            return [];
        root.Log.Used(node.Path, "Months whose peaks count for the ratchet.");
        int[] counting = [.. months.Index().Where(month => Counts(month.Item)).Select(month => month.Index + 1)];
        return counting.Length is 0 or 12 ? [] : counting;
    }

    private static bool Counts(RecordNode month) => month.Element.ValueKind switch
    {
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        _ => month.Number() is > 0,
    };
}
