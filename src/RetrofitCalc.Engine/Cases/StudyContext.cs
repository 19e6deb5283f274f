using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tracing;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Cases;

/// <summary>What all cases of one study share, worked out once: catalogue rows by id, the lines that count, and when each area is lit.</summary>
/// <remarks>Holds caches, so one context serves one thread.</remarks>
public sealed class StudyContext
{
    private readonly Dictionary<(int Area, SetUpModel Model, FittingKind Kind), double[]> _modeShares = [];
    private readonly Dictionary<(Type Kind, string Product, int Count), InputPower> _inputs = [];
    private readonly Recent<(double Watts, double Hours), PresentMeter> _present;
    private readonly List<AreaOperation> _today;
    private MeterComparison? _comparison;

    /// <summary>Builds the context.</summary>
    /// <param name="study">A study without problems.</param>
    public StudyContext(Study study)
        : this(study, null)
    {
    }

    private StudyContext(Study study, StudyContext? today)
    {
        Study = study;
        Tubes = today?.Tubes ?? study.Catalogue.Tubes.ToDictionary(tube => tube.Id);
        Luminaires = today?.Luminaires ?? study.Catalogue.Luminaires.ToDictionary(luminaire => luminaire.Id);
        SetUps = today?.SetUps ?? SetUpModels.Of(study.Catalogue);
        Year = today?.Year ?? SiteYear.Of(study);
        Operations = study.Areas.ToDictionary(area => area.Id, area => OperationOf(area, today));
        var countable = study.Lines.Where(IsCountable).ToList();
        var used = countable.Select(line => line.Area).ToHashSet();
        List<AreaOperation> lit = [.. study.Areas.Where(area => used.Contains(area.Id)).Select(area => Operations[area.Id])];
        _today = today is null ? [] : [.. today.LitAreas.Where(before => !lit.Contains(before))];
        LitAreas = [.. lit, .. _today];
        Load = new(LitAreas, lit.Count, study, Year);
        var areaIndex = lit.Index().ToDictionary(area => area.Item.Area.Id, area => area.Index);
        Lines = [.. countable.Select(line => Count(line, areaIndex[line.Area]))];
        var present = _today.Count == 0 ? Lines : [.. countable.Zip(Lines, (line, changed) => TodayOf(changed.Area) is var area && area == changed.Area ? changed : Count(line, area))];
        SlotLoads slots = new(this, [.. present.Select(line => line.Fitted)], [.. present.Select(line => line.Load)], [.. present.Select(line => line.Area)]);
        _present = new(key => new(this, slots, new() { ExistingWatts = key.Watts, Hours = key.Hours }));
    }

    /// <summary>The study.</summary>
    public Study Study { get; }

    /// <summary>The billing months looked at, at the site's clock.</summary>
    public SiteYear Year { get; }

    /// <summary>Direct-wire tubes by id.</summary>
    public IReadOnlyDictionary<string, DirectWireTube> Tubes { get; }

    /// <summary>Ready-wired luminaires by id.</summary>
    public IReadOnlyDictionary<string, ReadyWiredLuminaire> Luminaires { get; }

    /// <summary>Power of existing set-ups by id.</summary>
    public IReadOnlyDictionary<string, SetUpModel> SetUps { get; }

    /// <summary>Readings of growing areas and the models fitted to them, by id of the area: found on first use.</summary>
    internal Dictionary<string, PresentBench> Benches { get; } = [];

    /// <summary>When each area is lit, by its id.</summary>
    public IReadOnlyDictionary<string, AreaOperation> Operations { get; }

    /// <summary>
    /// Areas that hold a counted line, in the study's order; then, where an option lights stages in another way, those areas as they are lit today.
    /// </summary>
    public IReadOnlyList<AreaOperation> LitAreas { get; }

    /// <summary>When load falls, and how the tariff sees it.</summary>
    public SiteLoad Load { get; }

    /// <summary>Counted lines as they are now, in the study's order.</summary>
    public IReadOnlyList<CountedLine> Lines { get; }

    /// <summary>Whether a line can be counted: area, set-up, count and input power known.</summary>
    /// <param name="line">The line.</param>
    public bool IsCountable(SurveyLine line) =>
        line is { SetUp: { } setUp, Count: not null }
        && Operations.ContainsKey(line.Area)
        && SetUps.TryGetValue(setUp, out var model)
        && InputEvidence.Of(line, model) is not null;

    /// <summary>The context of an option: this one, or one whose stages are lit as the option says (E-75).</summary>
    /// <param name="option">An option of the study.</param>
    /// <remarks>The present lighting keeps today's times there, so that what else is on the meter stays what it is.</remarks>
    public StudyContext After(RetrofitOption option)
    {
        if (option.Stages.Count == 0)
            return this;
        List<Area> areas = [.. Study.Areas.Select(area => StageChanges.Applied(area, option.Stages))];
        return areas.SequenceEqual(Study.Areas, ReferenceEqualityComparer.Instance) ? this : new(Study with { Areas = areas }, this);
    }

    /// <summary>Index of a lit area as it is lit today: another one only where an option changes its stages.</summary>
    /// <param name="areaIndex">Index among the lit areas.</param>
    internal int TodayOf(int areaIndex) =>
        _today.FindIndex(today => today.Area.Id == LitAreas[areaIndex].Area.Id) is >= 0 and var at ? LitAreas.Count - _today.Count + at : areaIndex;

    /// <summary>Whether every area is lit as it is today.</summary>
    internal bool IsLitAsToday => _today.Count == 0;

    /// <summary>How the survey stands to the meter; null without meter data.</summary>
    public MeterComparison? Comparison => _comparison ??= MeterComparisons.Of(this);

    /// <summary>The meter with the present lighting on it.</summary>
    /// <param name="perturbation">Factors on uncertain inputs; those of the present lighting count.</param>
    internal PresentMeter PresentUnder(Perturbation perturbation) => _present.Of((perturbation.ExistingWatts, perturbation.Hours));

    /// <summary>Share of its connected power that a fitting draws in each mode of its area, all lamps working.</summary>
    /// <param name="areaIndex">Index among the lit areas.</param>
    /// <param name="model">The existing set-up.</param>
    /// <param name="kind">How what is fitted answers to steps and dimming.</param>
    /// <remarks>Tubes keep the switching of the lamps they replace; a new luminaire has no steps.</remarks>
    internal double[] ModeShares(int areaIndex, SetUpModel model, FittingKind kind)
    {
        var key = (areaIndex, model, kind);
        if (!_modeShares.TryGetValue(key, out var shares))
            _modeShares[key] = shares = [.. LitAreas[areaIndex].Modes.Select(mode => LineLoad.Share(mode, model, kind))];
        return shares;
    }

    /// <summary>Input of a luminaire fitted with a replacement, its provenance looked up once.</summary>
    /// <param name="product">The tube or luminaire.</param>
    /// <param name="perLuminaire">How many make one luminaire. [count]</param>
    internal InputPower InputOf(Replacement product, int perLuminaire)
    {
        var key = (product.GetType(), product.Id, perLuminaire);
        if (!_inputs.TryGetValue(key, out var input))
            _inputs[key] = input = InputEvidence.OfReplacement(product, perLuminaire);
        return input;
    }

    /// <summary>What an existing line draws, as the baseline says.</summary>
    /// <param name="line">A line that can be counted.</param>
    /// <param name="areaIndex">Index of its area among the lit areas.</param>
    /// <param name="trace">Recorder; null when nobody asks.</param>
    internal LineLoad ExistingLoad(SurveyLine line, int areaIndex, Trace? trace = null)
    {
        var model = SetUps[line.SetUp!];
        if (trace is not null)
            _ = new SetUpModel(model.Fitting.SetUp, model.Fitting.Lamp, model.Fitting.Ballasts, trace);
        var input = InputEvidence.Of(line, model)!;
        var asFound = Study.Assumptions.Baseline == Baseline.AsFound && (line.LampsOut > 0 || line.DeadBallasts > 0);
        return asFound
            ? LineLoad.AsFound(input, line, model, LitAreas[areaIndex].Modes, trace)
            : LineLoad.Working(input, line.Count!.Value, ModeShares(areaIndex, model, new(StepKind.Ballasts, model.Dims)), trace);
    }

    private AreaOperation OperationOf(Area area, StudyContext? today) =>
        today?.Operations[area.Id] is { } known && ReferenceEquals(known.Area, area)
            ? known
            : new(area, Year, new(area.Plant ?? Study.Site.Plant, Study.Weather, Year));

    private CountedLine Count(SurveyLine line, int areaIndex)
    {
        var model = SetUps[line.SetUp!];
        return new(new(line, LitAreas[areaIndex].Area, model.Fitting, line.Count!.Value), areaIndex, model, ExistingLoad(line, areaIndex));
    }
}
