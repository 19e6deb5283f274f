using System.Globalization;
using NodaTime.Text;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Safety;

/// <summary>What the survey and the option say about one line, in the words of the rules. Nothing is guessed.</summary>
/// <remarks>
/// Facts people gave for the whole site come first, the survey overrides them, and facts people gave for the line override
/// both. Choices: the start method is what was read on the ballast, never the catalogue's. The mounting height of a
/// crop area is measured from the crop and says nothing about the floor, so it is left out. A crop area counts as having a
/// crop on the day of work. A ready-wired luminaire comes with a plug unless someone says it is hardwired.
/// </remarks>
public sealed class SafetyFacts
{
    private readonly Study _study;
    private readonly FactSources _sources;

    /// <summary>Looks up what all lines share.</summary>
    /// <param name="study">The study.</param>
    public SafetyFacts(Study study)
    {
        _study = study;
        _sources = new FactSources(study);
    }

    /// <summary>The facts of one line under an option, by field name.</summary>
    /// <param name="study">The study.</param>
    /// <param name="line">The line; null for the site alone.</param>
    /// <param name="option">The option; null for none.</param>
    public static IReadOnlyDictionary<string, string> Of(Study study, SurveyLine? line, RetrofitOption? option) =>
        new SafetyFacts(study).Of(line, option?.Measures.LastOrDefault(m => m.Line == line?.Id)?.Measure);

    /// <summary>The facts of one line under a measure, by field name.</summary>
    /// <param name="line">The line; null for the site alone.</param>
    /// <param name="measure">What is done; null for nothing.</param>
    public IReadOnlyDictionary<string, string> Of(SurveyLine? line, Measure? measure)
    {
        var facts = new Dictionary<string, string>(_sources.OfSite);
        AddSite(facts);
        if (line is null) return facts;
        LineFacts.Add(facts, line, _sources.Areas.GetValueOrDefault(line.Area));
        var setUp = line.SetUp is { } id ? _sources.SetUps.GetValueOrDefault(id) : null;
        if (setUp is not null) LineFacts.AddSetUp(facts, setUp, _sources);
        AddMeasure(facts, measure);
        if (setUp is not null && line.Count is { } count)
            Set(facts, "lamps_removed", measure is null or KeepAsIs ? 0 : count * setUp.LampCount);
        foreach (var (field, value) in _sources.OfLine(line.Id)) facts[field] = value;
        return facts;
    }

    private void AddSite(Dictionary<string, string> facts)
    {
        Set(facts, "jurisdiction", _study.Site.Jurisdiction);
        Set(facts, "region", _study.Site.Region);
        var start = LocalDatePattern.Iso.Format(_study.Assumptions.Start);
        Set(facts, "planned_install_date", start);
        Set(facts, "today", start);
    }

    private void AddMeasure(Dictionary<string, string> facts, Measure? measure)
    {
        var hardwired = facts.GetValueOrDefault("connection") == "hardwired";
        Set(facts, "option", measure switch
        {
            RenewLikeForLike => "ballast_replace",
            DirectWire => "type_b",
            ReplaceLuminaire => hardwired ? "new_hardwired" : "new_plug",
            _ => "do_nothing",
        });
        Replacement? product = measure switch
        {
            DirectWire wired => _sources.Tubes.GetValueOrDefault(wired.Tube),
            ReplaceLuminaire replaced => _sources.Luminaires.GetValueOrDefault(replaced.Luminaire),
            _ => null,
        };
        if (product is not null) AddProduct(facts, product);
        if (measure is not DirectWire) facts["tube_feed"] = "not_applicable";
    }

    private static void AddProduct(Dictionary<string, string> facts, Replacement product)
    {
        Set(facts, "tube_volts_min", product.Voltage?.Lowest);
        Set(facts, "tube_volts_max", product.Voltage?.Highest);
        Set(facts, "tube_location", LineFacts.Word(product.Location));
        Set(facts, "tube_pf", product.PowerFactor);
        Set(facts, "tube_thd_pct", product.HarmonicDistortionPercent);
        if (product is DirectWireTube { Feed: { } feed }) facts["tube_feed"] = feed == TubeFeed.SingleEnd ? "single" : "double";
    }

    internal static void Set(Dictionary<string, string> facts, string field, string? value)
    {
        if (value is not null) facts[field] = value;
    }

    internal static void Set(Dictionary<string, string> facts, string field, double? value) =>
        Set(facts, field, value?.ToString("R", NumberFormatInfo.InvariantInfo));
}
