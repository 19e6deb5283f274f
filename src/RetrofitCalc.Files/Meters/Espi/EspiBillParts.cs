using NodaTime;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Files.Meters.Espi;

/// <summary>A bill while it is being read.</summary>
internal sealed class EspiBillParts
{
    /// <summary>Money is written in hundred-thousandths of the currency, whatever the readings' multiplier.</summary>
    private const double PerUnit = 100_000;

    private static readonly long Earliest = Instant.MinValue.ToUnixTimeSeconds();
    private static readonly long Latest = Instant.MaxValue.ToUnixTimeSeconds();
    private readonly Dictionary<string, long> _parts = [];

    public void Set(string parent, string leaf, long? number)
    {
        var name = parent == "billingperiod" ? $"period {leaf}" : leaf;
        if (name is "billlastperiod" or "currency" or "period start" or "period duration" && number is { } known) _parts[name] = known;
    }

    private long? Part(string name) => _parts.TryGetValue(name, out var part) ? part : null;

    public EspiBill Bill => new(
        Part("period start") is { } start && start >= Earliest && start <= Latest ? Instant.FromUnixTimeSeconds(start) : null,
        Part("period duration") is { } length && Math.Abs(length) <= Latest ? Duration.FromSeconds(length) : null,
        Part("billlastperiod") is { } amount ? Money.FromUnits(amount / PerUnit) : null,
        Part("currency") is { } currency && currency is >= 0 and < 1000 ? (int)currency : null);
}
