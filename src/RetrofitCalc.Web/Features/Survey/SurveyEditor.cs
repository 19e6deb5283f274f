using System.Globalization;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Files.Surveys.Tables;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Features.Survey.Edits;
using RetrofitCalc.Web.Features.Survey.Grid;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Survey;

/// <summary>What the parts of the survey page share: how cells are read and written, what is open, and what was last done.</summary>
public sealed class SurveyEditor
{
    private readonly StudySession _session;
    private readonly HashSet<string> _open = [];

    public SurveyEditor(StudySession session, CatalogueExtract catalogue)
    {
        _session = session;
        Catalogue = catalogue;
        (Context, Text) = (SurveyContexts.Of(session.Study, catalogue), QuantityText.For(session.Study));
    }

    /// <summary>The whole catalogue, to choose set-ups from.</summary>
    public CatalogueExtract Catalogue { get; }

    /// <summary>What cells are read against; a new one only when the site, the areas or the set-ups in use change.</summary>
    public SurveyContext Context { get; private set; }

    public QuantityText Text { get; private set; }

    /// <summary>Keys of the rows that are open.</summary>
    public IReadOnlySet<string> Open => _open;

    /// <summary>What the last paste or import did, said aloud.</summary>
    public string Said { get; private set; } = "";

    /// <summary>What is wrong with the cell one just left, for those who hear the page.</summary>
    public string Heard { get; private set; } = "";

    /// <summary>A cell to go to after the next rendering.</summary>
    public (string Line, SurveyField Field)? Goal { get; private set; }

    /// <summary>Raised when something changed that the study does not hold.</summary>
    public event Action? Changed;

    /// <summary>After the study changed.</summary>
    public void Refresh()
    {
        var now = SurveyContexts.Of(_session.Study, Catalogue);
        if (SurveyContexts.Same(now, Context)) return;
        (Context, Text) = (now, QuantityText.For(_session.Study));
    }

    public Task SetAsync(LineRow row, SurveyField field, string text)
    {
        var cell = $"{SurveyColumn.LabelOf(field).ToLowerInvariant()} of {row.Name}";
        return _session.EditAsync(cell, state =>
        {
            var after = LineEdits.Set(state, row.Line.Id, field, text, Context);
            var kept = after.Drafts.FirstOrDefault(d => d.Line == row.Line.Id && d.Field == field.ToString());
            Heard = kept is null ? "" : $"{cell}: {kept.Message}";
            return after;
        });
    }

    /// <summary>Adds a line in an area, or in the last area when none is named, and goes to it.</summary>
    public async Task AddLineAsync(string? area = null, string? below = null)
    {
        if (_session.Study.Areas.Count == 0) await AddAreaAsync();
        var line = new SurveyLine { Id = NewLineId(), Area = area ?? _session.Study.Areas[^1].Id };
        Goal = (line.Id, SurveyField.Name);
        await _session.EditAsync("a new line", state => LineEdits.Add(state, line, below));
    }

    public Task DuplicateAsync(LineRow row)
    {
        var id = NewLineId();
        Goal = (id, SurveyField.Name);
        return _session.EditAsync($"copy of {row.Name}", state => LineEdits.Duplicate(state, row.Line.Id, id));
    }

    public Task DeleteAsync(LineRow row)
    {
        var lines = _session.Study.Lines.Where(l => l.Area == row.Line.Area).ToList();
        var place = lines.FindIndex(l => l.Id == row.Line.Id);
        if (lines.Count > 1) Goal = (lines[place + 1 < lines.Count ? place + 1 : place - 1].Id, SurveyField.Name);
        Said = $"{row.Name} is deleted. Undo brings it back.";
        return _session.EditAsync($"deletion of {row.Name}", state => LineEdits.Delete(state, row.Line.Id));
    }

    public Task MoveAsync(LineRow row, int step) =>
        _session.EditAsync($"place of {row.Name}", state => LineEdits.Move(state, row.Line.Id, step));

    public Task MoveToAsync(LineRow row, string area) =>
        _session.EditAsync($"area of {row.Name}", state => LineEdits.MoveTo(state, row.Line.Id, area));

    public Task AddAreaAsync()
    {
        var id = new NewIds("area", _session.Study.Areas.Select(a => a.Id)).Next();
        _open.Add("area-" + id);
        return _session.EditAsync("a new area", state => AreaEdits.Add(state, new Area { Id = id, Name = $"Area {state.Study.Areas.Count + 1}" }));
    }

    public Task RemoveAreaAsync(Area area) => _session.EditAsync($"removal of {area.Name}", state => AreaEdits.Remove(state, area.Id));

    public Task MoveAreaAsync(Area area, int step) => _session.EditAsync($"place of {area.Name}", state => AreaEdits.Move(state, area.Id, step));

    /// <summary>Pastes a range at a cell, as one step to undo.</summary>
    public async Task PasteAsync(string line, SurveyField field, string text)
    {
        var cells = PastedTable.Cells(text);
        if (cells.Value is not { } range)
        {
            Say(string.Join(" ", cells.Problems.Select(p => p.Message)));
            return;
        }
        RangePaste.Outcome? outcome = null;
        await _session.EditAsync(string.Create(CultureInfo.InvariantCulture, $"paste of {range.Count} rows"), state =>
        {
            outcome = RangePaste.Apply(state, line, field, range, Context);
            return outcome.State;
        });
        if (outcome is { } done) Say(PasteText(range.Count, done));
    }

    public void Toggle(string key)
    {
        if (!_open.Remove(key)) _open.Add(key);
        Changed?.Invoke();
    }

    /// <summary>Goes to a cell, opening the row it stands in.</summary>
    public void GoTo(string line, SurveyField field)
    {
        if (SurveyColumn.Details.Any(c => c.Field == field)) _open.Add("line-" + line);
        Goal = (line, field);
        Changed?.Invoke();
    }

    public (string Line, SurveyField Field)? TakeGoal()
    {
        var goal = Goal;
        Goal = null;
        return goal;
    }

    public void Say(string what)
    {
        Said = what;
        Changed?.Invoke();
    }

    private string NewLineId() => new NewIds("line", _session.Study.Lines.Select(l => l.Id)).Next();

    private static string PasteText(int rows, RangePaste.Outcome done)
    {
        var unread = done.Unread == 0 ? "" : FormattableString.Invariant($" {done.Unread} {(done.Unread == 1 ? "cell that could not be read is" : "cells that could not be read are")} marked.");
        return FormattableString.Invariant($"{rows} rows pasted: {done.Filled} lines filled, {done.Added} added.{unread} One undo takes it all back.");
    }
}
