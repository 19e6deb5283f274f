using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Safety;

/// <summary>Catalogue rows and given facts of a study, by id.</summary>
internal sealed class FactSources(Study study)
{
    private readonly ILookup<string?, SafetyFact> _facts = study.Safety.Facts.ToLookup(fact => fact.Line);

    public Dictionary<string, Area> Areas { get; } = study.Areas.ToDictionary(area => area.Id);

    public Dictionary<string, SetUp> SetUps { get; } = ById(study.Catalogue.SetUps);

    public Dictionary<string, Lamp> Lamps { get; } = ById(study.Catalogue.Lamps);

    public Dictionary<string, Ballast> Ballasts { get; } = ById(study.Catalogue.Ballasts);

    public Dictionary<string, DirectWireTube> Tubes { get; } = ById(study.Catalogue.Tubes);

    public Dictionary<string, ReadyWiredLuminaire> Luminaires { get; } = ById(study.Catalogue.Luminaires);

    public Dictionary<string, string> OfSite => OfLine(null).ToDictionary();

    public IEnumerable<KeyValuePair<string, string>> OfLine(string? line) =>
        _facts[line].GroupBy(fact => fact.Field).Select(same => KeyValuePair.Create(same.Key, same.Last().Value));

    private static Dictionary<string, T> ById<T>(IReadOnlyList<T> rows) where T : CatalogueEntry => rows.ToDictionary(row => row.Id);
}
