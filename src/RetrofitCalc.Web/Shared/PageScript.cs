using Microsoft.JSInterop;

namespace RetrofitCalc.Web.Shared;

/// <summary>The script of one part of a page: fetched when first used, let go with the part, whichever of the two comes first.</summary>
/// <remarks>A reader may follow a link while the script is on its way; what it then finds missing is no error.</remarks>
/// <param name="js">The browser.</param>
/// <param name="address">Where the script lies.</param>
public sealed class PageScript(IJSRuntime js, string address) : IAsyncDisposable
{
    private IJSObjectReference? _module;
    private bool _left;

    /// <summary>Uses the script, unless the part is gone by the time it has come.</summary>
    public async Task UseAsync(Func<IJSObjectReference, Task> use)
    {
        try
        {
            _module ??= await js.InvokeAsync<IJSObjectReference>("import", address);
            if (!_left) await use(_module);
        }
        catch (JSDisconnectedException)
        {
            // The browser is gone.
        }
        catch (JSException) when (_left)
        {
            // The reader went to another page while the script was on its way.
        }
    }

    public ValueTask DisposeAsync() => LetGoAsync(null, "");

    /// <summary>Lets go of what the script has made, by a call that ends it, and of the script.</summary>
    public async ValueTask LetGoAsync(IJSObjectReference? made, string end)
    {
        _left = true;
        try
        {
            if (made is not null) await made.InvokeVoidAsync(end);
            if (made is not null) await made.DisposeAsync();
            if (_module is not null) await _module.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The browser is gone, and all of it with it.
        }
    }
}
