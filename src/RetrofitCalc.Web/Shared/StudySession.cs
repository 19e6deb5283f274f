using RetrofitCalc.Files.Surveys;
using System.Text.Json;
using NodaTime;
using RetrofitCalc.Data;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Web.Shared;

/// <summary>The study one person has open: its present state, its result, its undo history, and whether it is saved.</summary>
/// <remarks>Every edit is saved as it is made; a restart loses the undo history and nothing else.</remarks>
public sealed class StudySession(StudyStore store, CatalogueStore catalogue, SafetyRuleBook rules, IClock clock)
{
    private readonly UndoHistory _history = new();
    private readonly SemaphoreSlim _saving = new(1, 1);
    private int _revision;
    private int _edits;
    private StoredStudy? _theirs;

    /// <summary>Raised after anything on display may have changed; may come from another thread.</summary>
    public event Action? Changed;

    public Guid? Id { get; private set; }

    public EditState State { get; private set; } = null!;

    public Study Study => State.Study;

    /// <summary>Number of the last save.</summary>
    public int Revision => _revision;

    /// <summary>The last result; it stays in sight, marked stale, while a newer one is on its way or cannot be had.</summary>
    public StudyResult? Result { get; private set; }

    public bool Stale { get; private set; }

    /// <summary>Why the study as it stands cannot be evaluated.</summary>
    public IReadOnlyList<StudyProblem> Problems { get; private set; } = [];

    public SaveState Saved { get; private set; } = new SaveState.Saving();

    public string? CanUndo => _history.CanUndo;

    public string? CanRedo => _history.CanRedo;

    public SafetyRuleBook Rules => rules;

    public Task ReadyAsync { get; private set; } = Task.CompletedTask;

    /// <summary>Opens a study, once; false when there is none of that id.</summary>
    public async Task<bool> OpenAsync(Guid id)
    {
        if (Id == id) return true;
        if (await store.FindAsync(id) is not { } stored) return false;
        Show(stored);
        return true;
    }

    /// <summary>Makes an edit: the study, then the figures, then the database.</summary>
    /// <param name="what">The edit as the undo button names it, such as "count of line 3".</param>
    /// <param name="edit">Pure change of the study.</param>
    public Task EditAsync(string what, Func<Study, Study> edit) =>
        EditAsync(what, state => state with { Study = edit(state.Study) });

    /// <summary>Makes an edit that may also keep or clear texts that could not be read.</summary>
    public async Task EditAsync(string what, Func<EditState, EditState> edit)
    {
        var before = State;
        var after = edit(before);
        if (ReferenceEquals(after, before)) return;
        _history.Record(new UndoStep(what, before, after));
        await ShowAndSaveAsync(after);
    }

    public Task UndoAsync() => _history.Undo() is { } state ? ShowAndSaveAsync(state) : Task.CompletedTask;

    public Task RedoAsync() => _history.Redo() is { } state ? ShowAndSaveAsync(state) : Task.CompletedTask;

    public Task RetrySaveAsync() => ResolveAndSaveAsync(_edits);

    /// <summary>After a conflict: drop what is here and show what the other person saved.</summary>
    public void TakeTheirs()
    {
        if (_theirs is { } theirs) Show(theirs);
    }

    /// <summary>After a conflict: save what is here as a study of its own, and leave the other person's alone.</summary>
    public async Task<Guid> KeepMineAsCopyAsync()
    {
        var copy = await store.AddAsync(Study with { Name = $"{Study.Name} (copy after a conflict)" });
        TakeTheirs();
        return copy.Id;
    }

    private void Show(StoredStudy stored)
    {
        Id = stored.Id;
        _revision = stored.Revision;
        _theirs = null;
        _history.Clear();
        State = new EditState(stored.Study, ReadDrafts(stored.DraftsJson));
        _edits++;
        Saved = new SaveState.Saved(stored.Updated);
        Result = null;
        ReadyAsync = EvaluateAsync();
    }

    /// <summary>The study changes before anything is awaited, so that two quick edits build on each other.</summary>
    private async Task ShowAndSaveAsync(EditState state)
    {
        State = state;
        Saved = new SaveState.Saving();
        var edit = ++_edits;
        Changed?.Invoke();
        await ResolveAndSaveAsync(edit);
    }

    private async Task ResolveAndSaveAsync(int edit)
    {
        var state = State;
        try
        {
            var resolved = await catalogue.ResolveAsync(state.Study);
            if (edit != _edits) return;
            State = state with { Study = resolved };
        }
        catch (Exception failure) when (DatabaseStart.Explain(failure) is not null)
        {
            // The save below meets the same trouble and tells of it; what was typed stays on the page.
        }
        if (edit == _edits) await EvaluateAsync();
        if (edit == _edits) await SaveAsync();
    }

    private async Task EvaluateAsync()
    {
        var edit = _edits;
        var study = State.Study;
        Stale = Result is not null;
        var (problems, result) = await Task.Run(() =>
        {
            var found = StudyEvaluation.Check(study);
            return (found, found.Count == 0 ? StudyEvaluation.Run(study, rules) : null);
        });
        if (edit != _edits) return;
        Problems = problems;
        Result = result ?? Result;
        Stale = result is null;
        Changed?.Invoke();
    }

    private async Task SaveAsync()
    {
        await _saving.WaitAsync();
        try
        {
            var save = new StudyEdit(Id!.Value, _revision, Study, WriteDrafts(State.Drafts), Headline.Of(Result, Stale));
            Saved = After(await store.SaveAsync(save));
        }
        catch (Exception failure) when (DatabaseStart.Explain(failure) is { } problem)
        {
            Saved = new SaveState.Failed(clock.GetCurrentInstant(), problem.ToString());
        }
        finally
        {
            _saving.Release();
        }
        Changed?.Invoke();
    }

    private SaveState After(SaveOutcome outcome)
    {
        switch (outcome)
        {
            case SaveOutcome.Saved saved:
                _revision = saved.NewRevision;
                return new SaveState.Saved(clock.GetCurrentInstant());
            case SaveOutcome.Conflict conflict:
                _theirs = conflict.Current;
                return new SaveState.Conflict(conflict.Current.Updated);
            default:
                return new SaveState.Failed(clock.GetCurrentInstant(), "This study was deleted elsewhere. Download the study file to keep your work.");
        }
    }

    /// <summary>Texts that wait to be mended, as the database keeps them.</summary>
    public static IReadOnlyList<CellDraft> ReadDrafts(string json) =>
        json is "" or StudyStore.NoDrafts ? [] : JsonSerializer.Deserialize<List<CellDraft>>(json, RetrofitJson.Options) ?? [];

    private static string WriteDrafts(IReadOnlyList<CellDraft> drafts) => JsonSerializer.Serialize(drafts, RetrofitJson.Options);
}
