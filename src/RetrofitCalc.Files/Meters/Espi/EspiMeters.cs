namespace RetrofitCalc.Files.Meters.Espi;

/// <summary>Joins the entries of a feed by their links: intervals to their meter, the meter to its reading type and usage point.</summary>
internal static class EspiMeters
{
    private const int MostMeters = 200;

    /// <summary>The rows of readings; null when there are more than anyone could choose from.</summary>
    public static IReadOnlyList<MeterSource>? Of(IReadOnlyList<EspiEntry> entries)
    {
        var meters = new Meters(entries);
        var rows = new Dictionary<EspiEntry, List<EspiReading>>();
        EspiEntry? before = null;
        foreach (var entry in entries)
        {
            if (entry.IsMeter) before = entry;
            if (entry.Readings.Count == 0) continue;
            var meter = meters.Of(entry) ?? before ?? entry;
            if (!rows.TryGetValue(meter, out var readings)) rows[meter] = readings = [];
            readings.AddRange(entry.Readings);
            if (rows.Count > MostMeters) return null;
        }
        return [.. rows.Select((row, i) => EspiLoad.Of(NameOf(row.Key, i), meters.TypeOf(row.Key), meters.ServiceOf(row.Key), row.Value))];
    }

    private static string NameOf(EspiEntry meter, int index) => meter.Title.Length > 0 ? meter.Title : $"Meter {index + 1}";

    private sealed class Meters(IReadOnlyList<EspiEntry> entries)
    {
        private readonly Dictionary<EspiEntry, int> _places = entries.Index().ToDictionary(e => e.Item, e => e.Index);
        private readonly List<EspiEntry> _types = [.. entries.Where(e => e.Type is not null)];
        private readonly List<EspiEntry> _points = [.. entries.Where(e => e.ServiceKind is not null)];
        private readonly Dictionary<string, EspiEntry> _byLink = ByLink(entries.Where(e => e.IsMeter));

        /// <summary>The meter of an entry with intervals, by link. Without one it is the meter named last before it; without any, the entry stands for itself.</summary>
        public EspiEntry? Of(EspiEntry intervals) =>
            _byLink.GetValueOrDefault(intervals.Up) ?? _byLink.GetValueOrDefault(WithoutLast(intervals.Up)) ?? _byLink.GetValueOrDefault(intervals.Self);

        /// <summary>By link; without one, the first reading type after the meter, or else the last before it.</summary>
        public EspiReadingType? TypeOf(EspiEntry meter)
        {
            if (meter.Type is not null) return meter.Type;
            var related = meter.Related.ToHashSet();
            return (_types.FirstOrDefault(type => related.Contains(type.Self))
                ?? _types.FirstOrDefault(type => _places[type] > _places[meter])
                ?? _types.LastOrDefault())?.Type;
        }

        public string? ServiceOf(EspiEntry meter) =>
            (_points.FirstOrDefault(point => point.Self.Length > 0 && $"{meter.Self}/".StartsWith($"{point.Self}/", StringComparison.Ordinal))
                ?? (_points.Count == 1 ? _points[0] : null))?.ServiceKind;

        private static Dictionary<string, EspiEntry> ByLink(IEnumerable<EspiEntry> meters)
        {
            var links = new Dictionary<string, EspiEntry>();
            foreach (var meter in meters)
                foreach (var link in meter.Related.Append(meter.Self).Where(link => link.Length > 0 && !link.Contains("/readingtype")))
                    links.TryAdd(link, meter);
            return links;
        }

        private static string WithoutLast(string link) => link.LastIndexOf('/') is var at and > 0 ? link[..at] : link;
    }
}
