using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Survey.Grid;

/// <summary>Lays a survey out as rows, area by area.</summary>
public sealed class GridRows
{
    private readonly EditState _state;
    private readonly IReadOnlySet<string> _open;
    private readonly Dictionary<string, LineFigures> _figures;
    private readonly Dictionary<string, SafetyNotice> _notices;
    private readonly ILookup<string, CellDraft> _drafts;
    private readonly List<GridRow> _rows = [];
    private int _lines;

    private GridRows(EditState state, StudyResult? result, SafetyRuleBook rules, IReadOnlySet<string> open)
    {
        (_state, _open) = (state, open);
        _figures = (result?.Now.Lines ?? []).ToDictionary(l => l.Line);
        _notices = EmergencyNotices.ByLine(result, rules);
        _drafts = state.Drafts.ToLookup(d => d.Line);
    }

    /// <param name="state">The study with the texts that could not be read.</param>
    /// <param name="result">Its last figures.</param>
    /// <param name="rules">Safety rules, to know which notices speak of a cell of the grid.</param>
    /// <param name="open">Keys of lines and areas that are open.</param>
    public static IReadOnlyList<GridRow> Of(EditState state, StudyResult? result, SafetyRuleBook rules, IReadOnlySet<string> open)
    {
        var rows = new GridRows(state, result, rules, open);
        var byArea = state.Study.Lines.ToLookup(l => l.Area);
        foreach (var (index, area) in state.Study.Areas.Index()) rows.AddArea(area, index, [.. byArea[area.Id]]);
        return rows._rows;
    }

    private void AddArea(Area area, int index, IReadOnlyList<SurveyLine> lines)
    {
        var row = new AreaRow(area, index, lines.Count);
        _rows.Add(row);
        if (_open.Contains(row.Key)) _rows.Add(new AreaDetailRow(area, index, lines.Count, _state.Study.Areas.Count));
        foreach (var line in lines) AddLine(line);
    }

    private void AddLine(SurveyLine line)
    {
        var drafts = _drafts[line.Id];
        var row = new LineRow(line, ++_lines, _figures.GetValueOrDefault(line.Id), drafts.Any() ? [.. drafts] : [], _open.Contains("line-" + line.Id), _notices.GetValueOrDefault(line.Id));
        _rows.Add(row);
        if (row.HasMessage) _rows.Add(new MessageRow(row));
        if (row.Open) _rows.Add(new DetailRow(row));
    }
}
