using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Survey.Grid;

/// <summary>The grid: rows by area, only those in sight once there are many, keys and pasting by a small script that moves focus and hands over text.</summary>
public sealed partial class SurveyGrid
{
    /// <summary>Above this many rows the grid scrolls within itself and renders only what is in sight.</summary>
    private const int MostAtOnce = 120;

    /// <summary>The longest text taken from the clipboard. [bytes]</summary>
    private const long LongestPaste = 64L * 1024 * 1024;

    private GridRow[] _rows = [];
    private SurveyTotals _totals = new("", "", "", "");
    private ElementReference _region;
    private PageScript? _script;
    private DotNetObjectReference<SurveyGrid>? _self;

    [Parameter, EditorRequired] public SurveyEditor Editor { get; set; } = default!;

    [Parameter, EditorRequired] public Guid Id { get; set; }

    private bool Tall => _rows.Length > MostAtOnce;

    private string Caption => FormattableString.Invariant($"{_totals.Extent}; {Session.State.Drafts.Count} to correct");

    protected override void OnParametersSet()
    {
        _rows = [.. GridRows.Of(Session.State, Session.Result, Session.Rules, Editor.Open)];
        _totals = SurveyTotals.Of(Session.Study, Session.Result, Editor.Text);
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender) await StartAsync();
        if (_script is not null && Editor.TakeGoal() is var (line, field)) await RevealAsync(line, field);
    }

    private async Task StartAsync()
    {
        _self = DotNetObjectReference.Create(this);
        _script = new(JS, "./Features/Survey/Grid/SurveyGrid.razor.js");
        await _script.UseAsync(script => script.InvokeVoidAsync("start", _region, _self).AsTask());
    }

    /// <summary>Called by the script with a range of cells.</summary>
    [JSInvokable]
    public async Task PasteAsync(string line, string field, IJSStreamReference clipboard)
    {
        await using var stream = await clipboard.OpenReadStreamAsync(LongestPaste);
        using var reader = new StreamReader(stream);
        if (Enum.TryParse<SurveyField>(field, out var known)) await Editor.PasteAsync(line, known, await reader.ReadToEndAsync());
    }

    /// <summary>Called by the script when Enter is pressed in the last row.</summary>
    [JSInvokable]
    public Task AddBelowAsync(string line) => Editor.AddLineAsync(Session.Study.Lines.FirstOrDefault(l => l.Id == line)?.Area, line);

    public async ValueTask DisposeAsync()
    {
        if (_script is not null) await _script.DisposeAsync();
        _self?.Dispose();
    }

    private async Task RevealAsync(string line, SurveyField field)
    {
        var index = Array.FindIndex(_rows, r => r.Key == "line-" + line);
        if (index >= 0) await _script!.UseAsync(script => script.InvokeVoidAsync("reveal", _region, $"cell-{line}-{field}", (double)index / _rows.Length).AsTask());
    }

    private static string? HeadCss(SurveyColumn column) => column.Numeric ? "num" : column.Choices is not null ? "pick" : null;
}
