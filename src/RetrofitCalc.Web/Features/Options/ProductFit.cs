using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Options;

/// <summary>Which tubes and luminaires of the catalogue fit which line, and why the others do not, as the engine judges it.</summary>
public sealed class ProductFit
{
    private readonly Dictionary<(string Line, string Product), string> _reasons = [];

    private ProductFit(CatalogueExtract catalogue) => Catalogue = catalogue;

    /// <summary>The study's own rows, then every row of the catalogue that is still offered.</summary>
    public CatalogueExtract Catalogue { get; }

    /// <param name="study">A study without problems.</param>
    /// <param name="offered">The catalogue.</param>
    public static ProductFit Of(Study study, CatalogueExtract offered)
    {
        var all = Merge(study.Catalogue, offered);
        var fit = new ProductFit(all);
        var context = new StudyContext(study with { Catalogue = all });
        foreach (var tube in all.Tubes) fit.Judge(context, tube.Id, new DirectWire(tube.Id));
        foreach (var luminaire in all.Luminaires) fit.Judge(context, luminaire.Id, new ReplaceLuminaire(luminaire.Id));
        return fit;
    }

    public string? WhyNot(string line, string product) => _reasons.GetValueOrDefault((line, product));

    public IReadOnlyList<DirectWireTube> TubesFor(string line) => [.. Catalogue.Tubes.Where(t => WhyNot(line, t.Id) is null)];

    public IReadOnlyList<ReadyWiredLuminaire> LuminairesFor(string line) => [.. Catalogue.Luminaires.Where(l => WhyNot(line, l.Id) is null)];

    public IReadOnlyList<Replacement> For(string line, MeasureKind kind) => kind switch
    {
        MeasureKind.DirectWire => TubesFor(line),
        MeasureKind.NewLuminaire => LuminairesFor(line),
        _ => [],
    };

    public Replacement? Find(string id) => Catalogue.Tubes.Concat<Replacement>(Catalogue.Luminaires).FirstOrDefault(p => p.Id == id);

    private void Judge(StudyContext context, string product, Measure measure)
    {
        foreach (var refused in CaseEvaluation.Refusals(context, context.Study.Lines.ToDictionary(l => l.Id, _ => measure)))
            _reasons[(refused.Line, product)] = refused.Reason;
    }

    private static CatalogueExtract Merge(CatalogueExtract own, CatalogueExtract offered) => own with
    {
        Tubes = Merge(own.Tubes, offered.Tubes),
        Luminaires = Merge(own.Luminaires, offered.Luminaires),
    };

    private static List<T> Merge<T>(IReadOnlyList<T> own, IReadOnlyList<T> offered) where T : CatalogueEntry =>
        [.. own.Concat(offered.Where(o => !o.Retired && own.All(p => p.Id != o.Id))).OrderBy(p => p.Name, StringComparer.OrdinalIgnoreCase)];
}
