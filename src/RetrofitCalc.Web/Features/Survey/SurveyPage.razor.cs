using Microsoft.AspNetCore.Components;
using RetrofitCalc.Data;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Features.Survey.Grid;

namespace RetrofitCalc.Web.Features.Survey;

/// <summary>The survey: what hangs where, as typed, pasted or imported, and what follows from it.</summary>
public sealed partial class SurveyPage
{
    private enum ImportFrom
    {
        Nothing,
        Text,
        File,
    }

    private SurveyEditor? _editor;
    private Guid? _opened;
    private ImportFrom _import;
    private IReadOnlyList<SurveyQuestion> _questions = [];

    protected override async Task OnParametersSetAsync()
    {
        await base.OnParametersSetAsync();
        if (!Open || _opened == Id) return;
        _opened = Id;
        _editor = new SurveyEditor(Session, await Catalogue.AllAsync());
        _editor.Changed += () => _ = InvokeAsync(StateHasChanged);
        GoToCellOfTheAddress(_editor);
        OnStudyChanged();
    }

    protected override void OnStudyChanged()
    {
        _editor?.Refresh();
        if (_editor is null || Session.Result is not { } result) return;
        var rows = GridRows.Of(Session.State, result, Session.Rules, _editor.Open);
        _questions = SurveyQuestions.Of(result, Session.State.Drafts, rows);
    }

    /// <summary>Other pages link to a cell as #cell-line-Field.</summary>
    private void GoToCellOfTheAddress(SurveyEditor editor)
    {
        const string prefix = "#cell-";
        var fragment = new Uri(Navigation.Uri).Fragment;
        var dash = fragment.LastIndexOf('-');
        if (fragment.StartsWith(prefix, StringComparison.Ordinal) && dash > prefix.Length && Enum.TryParse<SurveyField>(fragment[(dash + 1)..], out var field))
            editor.GoTo(fragment[prefix.Length..dash], field);
    }

    private void ShowImport(ImportFrom from) => _import = _import == from ? ImportFrom.Nothing : from;

    private static string Says(bool open) => open ? "true" : "false";
}
