using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Shared;

/// <summary>Undo and redo: whole immutable studies, which share all that did not change.</summary>
public sealed class UndoHistory
{
    private const int Deepest = 200;
    private readonly LinkedList<UndoStep> _done = new();
    private readonly Stack<UndoStep> _undone = new();

    public string? CanUndo => _done.Last?.Value.What;

    public string? CanRedo => _undone.TryPeek(out var edit) ? edit.What : null;

    public void Record(UndoStep edit)
    {
        _done.AddLast(edit);
        if (_done.Count > Deepest) _done.RemoveFirst();
        _undone.Clear();
    }

    public EditState? Undo()
    {
        if (_done.Last is not { } last) return null;
        _done.RemoveLast();
        _undone.Push(last.Value);
        return last.Value.Before;
    }

    public EditState? Redo()
    {
        if (!_undone.TryPop(out var edit)) return null;
        _done.AddLast(edit);
        return edit.After;
    }

    public void Clear()
    {
        _done.Clear();
        _undone.Clear();
    }
}

/// <summary>A study with the texts that could not be read into it.</summary>
public sealed record EditState(Study Study, IReadOnlyList<CellDraft> Drafts);

/// <summary>One step of work, named as the undo button says it.</summary>
public sealed record UndoStep(string What, EditState Before, EditState After);
