using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Survey.Edits;

/// <summary>
/// Writes typed texts into survey lines. What can be read goes into the study; the rest is kept as typed, and the fact counts as
/// not known until it is mended. A text kept earlier on a line is read again when the line changes: a corrected count may make it right.
/// </summary>
public sealed class CellWriter(EditState state, SurveyContext context)
{
    private readonly List<SurveyLine> _lines = [.. state.Study.Lines];
    private readonly OrderedDictionary<(string Line, string Field), CellDraft> _drafts = ByCell(state.Drafts);
    private readonly Dictionary<(int Line, SurveyField Field), string> _written = [];
    private readonly HashSet<int> _touched = [];

    /// <summary>Lines as they stand now.</summary>
    public IReadOnlyList<SurveyLine> Lines => _lines;

    public int IndexOf(string line) => _lines.FindIndex(l => l.Id == line);

    /// <summary>Adds a line; what is written into it next is read like any other.</summary>
    public int Insert(int index, SurveyLine line)
    {
        if (_touched.Count > 0 && _touched.Max() >= index) throw new InvalidOperationException("Lines are added below those already written.");
        _lines.Insert(index, line);
        _touched.Add(index);
        return index;
    }

    public void Write(int index, SurveyField field, string text)
    {
        var line = _lines[index];
        var key = (line.Id, field.ToString());
        if (!_drafts.ContainsKey(key) && SurveyCellText.Of(line, field, context) == text) return;
        _touched.Add(index);
        _written[(index, field)] = text;
        Read(index, field, text);
    }

    /// <summary>The study with all that was written; the very same state when nothing changed.</summary>
    public EditState Finish()
    {
        if (_touched.Count == 0) return state;
        foreach (var index in _touched) ReadKeptTexts(index);
        KeepRefused();
        return new EditState(state.Study with { Lines = _lines }, [.. _drafts.Values]);
    }

    private void Read(int index, SurveyField field, string text)
    {
        var line = _lines[index];
        var read = SurveyCellParser.Apply(line, field, text, context);
        if (read.Value is { } changed)
        {
            _lines[index] = changed;
            _drafts.Remove((line.Id, field.ToString()));
        }
        else Keep(index, field, text, string.Join(" ", read.Problems.Select(p => p.Message)));
    }

    private void Keep(int index, SurveyField field, string text, string message)
    {
        var line = _lines[index];
        _lines[index] = SurveyCellParser.Apply(line, field, "", context).Value ?? line;
        _drafts[(line.Id, field.ToString())] = new CellDraft(line.Id, field.ToString(), text, message);
    }

    private void ReadKeptTexts(int index)
    {
        var line = _lines[index].Id;
        foreach (var draft in _drafts.Values.Where(d => d.Line == line).ToList())
        {
            if (!Enum.TryParse<SurveyField>(draft.Field, out var field) || _written.ContainsKey((index, field))) continue;
            _written[(index, field)] = draft.Text;
            Read(index, field, draft.Text);
        }
    }

    private void KeepRefused()
    {
        int[] touched = [.. _touched];
        foreach (var refused in LineRules.Of([.. touched.Select(i => _lines[i])], context))
        {
            var index = touched[refused.Index];
            var text = _written.GetValueOrDefault((index, refused.Field)) ?? SurveyCellText.Of(_lines[index], refused.Field, context);
            Keep(index, refused.Field, text, refused.Message);
        }
    }

    private static OrderedDictionary<(string, string), CellDraft> ByCell(IEnumerable<CellDraft> drafts)
    {
        var byCell = new OrderedDictionary<(string, string), CellDraft>();
        foreach (var draft in drafts) byCell[(draft.Line, draft.Field)] = draft;
        return byCell;
    }
}
