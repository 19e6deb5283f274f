using Microsoft.AspNetCore.Components;

namespace RetrofitCalc.Web.Shared;

/// <summary>A place in a study: opens the study of the address and renders again when it changes.</summary>
public abstract class StudyPage : ComponentBase, IDisposable
{
    [Parameter] public Guid Id { get; set; }

    [Inject] protected StudySession Session { get; set; } = default!;

    [Inject] protected NavigationManager Navigation { get; set; } = default!;

    /// <summary>False until the study is open; pages render nothing of it before.</summary>
    protected bool Open { get; private set; }

    protected override async Task OnParametersSetAsync()
    {
        if (!await Session.OpenAsync(Id))
        {
            Navigation.NotFound();
            return;
        }
        await Session.ReadyAsync;
        if (!Open) Session.Changed += Refresh;
        Open = true;
        OnOpened();
    }

    /// <summary>Called when the study is open and evaluated, and again when the address changes.</summary>
    protected virtual void OnOpened() { }

    /// <summary>Called before each new rendering that an edit causes.</summary>
    protected virtual void OnStudyChanged() { }

    private void Refresh() => _ = InvokeAsync(() =>
    {
        OnStudyChanged();
        StateHasChanged();
    });

    public void Dispose()
    {
        Session.Changed -= Refresh;
        GC.SuppressFinalize(this);
    }
}
