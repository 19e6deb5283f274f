using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>The result seen for one request: the option asked for, its notices, and the text of figures.</summary>
internal sealed class SummaryContext
{
    private readonly Dictionary<string, SurveyLine> _lines;
    private readonly Dictionary<string, Area> _areas;
    private readonly Dictionary<string, CatalogueEntry> _catalogue;

    public SummaryContext(StudyResult result, SummaryRequest request)
    {
        (Result, Request, Study) = (result, request, result.Study);
        Text = request.Units is { } units ? QuantityText.For(Study, units) : QuantityText.For(Study);
        Asked = Find(result, request.Option);
        // Notices follow from the option; another option than the study's own raises its own.
        Notices = Asked is null || Asked == result.Chosen
            ? result.Notices
            : SafetyEvaluation.Run(Study with { ChosenOption = Asked.Option.Id }, request.Rules);
        Now = new PrintedCase(result.Now);
        Options = [.. result.Options.Select(option => new PrintedOption(option, Now))];
        AskedFigures = Options.FirstOrDefault(option => option.Result == Asked);
        Bill = Asked is null ? null : BillSavingPart.Of(result, Asked, Text);
        _lines = Study.Lines.ToDictionary(line => line.Id);
        _areas = Study.Areas.ToDictionary(area => area.Id);
        _catalogue = Study.Catalogue.All.GroupBy(entry => entry.Id).ToDictionary(same => same.Key, same => same.First());
    }

    public StudyResult Result { get; }

    public SummaryRequest Request { get; }

    public Study Study { get; }

    public QuantityText Text { get; }

    /// <summary>The option asked for; null when the study has none.</summary>
    public OptionResult? Asked { get; }

    public PrintedOption? AskedFigures { get; }

    public bool CropGrows => Study.Areas.Any(area => area.GrowsCrop);

    /// <summary>Light after the change asked for, or as it is.</summary>
    public CropLightResult Light => Asked?.Light ?? Result.Light;

    public BillSavingPart? Bill { get; }

    public IReadOnlyList<SafetyNotice> Notices { get; }

    public PrintedCase Now { get; }

    public IReadOnlyList<PrintedOption> Options { get; }

    public int Years => Study.Assumptions.StudyYears;

    public string LineName(string id) =>
        _lines.TryGetValue(id, out var line) && line.Name.Length > 0 ? line.Name : $"line {id}";

    public string AreaName(string id) => _areas.TryGetValue(id, out var area) ? area.Name : id;

    public SurveyLine? Line(string id) => _lines.GetValueOrDefault(id);

    public string EntryName(string? id) => id is null ? QuantityText.NotKnown : _catalogue.TryGetValue(id, out var entry) ? entry.Name : id;

    public CatalogueEntry? Entry(string id) => _catalogue.GetValueOrDefault(id);

    private static OptionResult? Find(StudyResult result, string? id)
    {
        if (id is null) return result.Chosen;
        return result.Options.FirstOrDefault(option => option.Option.Id == id)
            ?? throw new ArgumentException($"The study has no option '{id}'; it has {string.Join(", ", result.Options.Select(o => $"'{o.Option.Id}'"))}.", nameof(id));
    }
}
