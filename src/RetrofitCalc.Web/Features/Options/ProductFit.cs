using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Options;

/// <summary>Which tubes and luminaires of the catalogue fit which line, and why the others do not, as the engine judges it.</summary>
public sealed class ProductFit
{
    private readonly Dictionary<(string Line, string Product), string> _reasons = [];

    private readonly StudyContext _context;

    private ProductFit(StudyContext context) => _context = context;

    /// <summary>The study's own rows, then every row of the catalogue that is still offered.</summary>
    public CatalogueExtract Catalogue => _context.Study.Catalogue;

    /// <param name="study">A study without problems.</param>
    /// <param name="offered">The catalogue.</param>
    public static ProductFit Of(Study study, CatalogueExtract offered)
    {
        var all = Merge(study.Catalogue, offered);
        var fit = new ProductFit(new StudyContext(study with { Catalogue = all }));
        foreach (var tube in all.Tubes) fit.Judge(tube.Id, new DirectWire(tube.Id));
        foreach (var luminaire in all.Luminaires) fit.Judge(luminaire.Id, new ReplaceLuminaire(luminaire.Id));
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

    /// <summary>Catalogue price of the parts in one luminaire, by line; null where a price is missing.</summary>
    public IReadOnlyDictionary<string, Money?> PartsPrices(RetrofitOption option)
    {
        var measures = option.Measures.DistinctBy(m => m.Line).ToDictionary(m => m.Line, m => m.Measure);
        return FittedLines.Of(_context, measures, out _).ToDictionary(f => f.Line.Id, f => FirstCosts.PartsPrice(f.Fitting));
    }

    private void Judge(string product, Measure measure)
    {
        foreach (var refused in CaseEvaluation.Refusals(_context, _context.Study.Lines.ToDictionary(l => l.Id, _ => measure)))
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
