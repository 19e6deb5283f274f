using Microsoft.AspNetCore.Components;

namespace RetrofitCalc.Web.Shared.Fields;

/// <summary>A part of a page that shows the session and must follow it even when its own parameters stay the same.</summary>
public abstract class StudyPart : ComponentBase, IDisposable
{
    [Inject] protected StudySession Session { get; set; } = default!;

    protected override void OnInitialized() => Session.Changed += Refresh;

    public void Dispose()
    {
        Session.Changed -= Refresh;
        GC.SuppressFinalize(this);
    }

    private void Refresh() => _ = InvokeAsync(StateHasChanged);
}
