using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Features.Results;

namespace RetrofitCalc.Web.Features.Options;

/// <summary>Luminaire by luminaire and season by season: now and each option, in the columns of the comparison.</summary>
public sealed class SideBySideTable
{
    private readonly StudyResult _result;
    private readonly QuantityText _text;
    private readonly List<OptionResult> _options;
    private readonly List<LightingCase> _cases;
    private readonly ILookup<string, string> _bySetUp;
    private readonly ILookup<string, string> _byArea;

    private SideBySideTable(StudyResult result, QuantityText text)
    {
        (_result, _text) = (result, text);
        _options = [.. result.Options.OrderByDescending(o => o == result.Chosen)];
        _cases = [result.Now, .. _options.Select(o => o.After)];
        var counted = result.Now.Lines.Select(f => f.Line).ToHashSet();
        var lines = result.Study.Lines.Where(l => counted.Contains(l.Id)).ToList();
        _bySetUp = lines.ToLookup(SetUpName, l => l.Id);
        _byArea = lines.ToLookup(l => $"{AreaName(l)}: {SetUpName(l)}", l => l.Id);
    }

    public static IReadOnlyList<WayGroup> Of(StudyResult result, QuantityText text)
    {
        var table = new SideBySideTable(result, text);
        return
        [
            new("Watts of one luminaire, by set-up", [.. table.ByLines(table._bySetUp, "W", f => text.Number(f.PerLuminaire.Total.Watts))]),
            new("of it lost in ballasts", [.. table.ByLines(table._bySetUp, "W", f => f.PerLuminaire.BallastLoss is { } loss ? text.Number(loss.Watts) : QuantityText.NotKnown)]),
            new("Energy by season, plant included", [.. table.BySeason("kWh", s => text.Number((s.Lighting + s.Plant).KilowattHours))]),
            new("Cost by season", [.. table.BySeason("", s => text.Money(s.Cost))]),
            new("Crop light, by area and its worst stage", [.. LightRows.ByArea(result, table._options, text)]),
            new("Years between replacements, by area", [.. table.ByLines(table._byArea, "yr", table.Intervals)]),
        ];
    }

    private IEnumerable<WayRow> ByLines(ILookup<string, string> groups, string unit, Func<LineFigures, string> cell) => groups.Select(group =>
    {
        var lines = group.ToHashSet();
        return new WayRow(group.Key, unit, [.. _cases.Select(side => Distinct(side.Lines.Where(f => lines.Contains(f.Line)).Select(cell)))]);
    });

    private IEnumerable<WayRow> BySeason(string unit, Func<ShareFigures, string> cell) => _result.Now.Seasons.Select(season =>
        new WayRow(season.Name, unit, [.. _cases.Select(side => side.Seasons.FirstOrDefault(s => s.Name == season.Name) is { } same ? cell(same) : QuantityText.DoesNotApply)]));

    /// <summary>Lamp and ballast against each other: "lamp 3.4, ballast 2.9".</summary>
    private string Intervals(LineFigures line) => line.Clocks.Count == 0
        ? QuantityText.NotKnown
        : string.Join(", ", line.Clocks.Select(c => $"{Part(c.Part)} {(c.Interval is { } years ? _text.Number(years, 1) : "never lit")}"));

    private string SetUpName(Engine.Studies.SurveyLine line) =>
        _result.Study.Catalogue.SetUps.FirstOrDefault(s => s.Id == line.SetUp)?.Name ?? line.SetUp ?? "";

    private string AreaName(Engine.Studies.SurveyLine line) => _result.Study.Areas.FirstOrDefault(a => a.Id == line.Area)?.Name ?? line.Area;

    /// <summary>Lines of one set-up may be treated or lit differently: then each value is shown once.</summary>
    private static string Distinct(IEnumerable<string> values) => string.Join("; ", values.Distinct());

    private static string Part(WearPart part) => part.ToString().ToLowerInvariant();
}
