using Microsoft.EntityFrameworkCore;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Data;

/// <summary>Which catalogue rows a study rests on, and what rests on a catalogue row.</summary>
internal static class CatalogueUse
{
    /// <summary>The rows the study names, with the lamps and ballasts of its set-ups. Of two rows with one id the first counts.</summary>
    public static CatalogueExtract Needed(Study study, IReadOnlyList<CatalogueEntry> rows)
    {
        var byId = new Dictionary<string, CatalogueEntry>(StringComparer.Ordinal);
        foreach (var row in rows) byId.TryAdd(row.Id, row);
        var ids = NamesIn(study).ToHashSet(StringComparer.Ordinal);
        foreach (var setUp in ids.ToList().Select(byId.GetValueOrDefault).OfType<SetUp>()) ids.UnionWith(PartsOf(setUp));
        return CatalogueJson.Extract(ids.Select(byId.GetValueOrDefault).OfType<CatalogueEntry>());
    }

    /// <summary>Names of what uses a row: set-ups built from it, and studies.</summary>
    public static async Task<IReadOnlyList<string>> OfAsync(RetrofitContext db, string id, CancellationToken stop)
    {
        var setUpRows = await db.CatalogueRows.AsNoTracking().Where(r => r.Kind == CatalogueKind.SetUp).ToListAsync(stop);
        var setUps = setUpRows.Where(r => PartsOf((SetUp)CatalogueJson.Read(r.Kind, r.Json)).Contains(id)).ToList();
        var quoted = $"\"{id}\"";
        var candidates = await db.Studies.AsNoTracking().Where(s => s.StudyJson.Contains(quoted))
            .Select(s => new { s.Name, s.StudyJson }).ToListAsync(stop);
        var studies = candidates.Where(s => Rests(StudyStore.FromJson(s.StudyJson), id)).Select(s => s.Name);
        return [.. setUps.Select(r => r.Name), .. studies];
    }

    private static bool Rests(Study study, string id) =>
        NamesIn(study).Contains(id) || study.Catalogue.SetUps.Any(s => PartsOf(s).Contains(id));

    private static IEnumerable<string> NamesIn(Study study)
    {
        foreach (var line in study.Lines)
            if (line.SetUp is { } setUp) yield return setUp;
        foreach (var measure in study.Options.SelectMany(o => o.Measures).Select(m => m.Measure))
            if (measure is DirectWire direct) yield return direct.Tube;
            else if (measure is ReplaceLuminaire replace) yield return replace.Luminaire;
    }

    private static IEnumerable<string> PartsOf(SetUp setUp) =>
        setUp.Ballasts.Select(b => b.Ballast).OfType<string>().Prepend(setUp.Lamp);
}
