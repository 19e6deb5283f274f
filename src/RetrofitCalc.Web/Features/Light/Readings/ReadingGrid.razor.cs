using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Files.Surveys.Tables;
using RetrofitCalc.Files.Typing;
using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Shared.Fields;

namespace RetrofitCalc.Web.Features.Light.Readings;

/// <summary>The grid of one set. Keys and pasting come from the survey's script, which knows rows and fields, not what they hold.</summary>
public sealed partial class ReadingGrid
{
    /// <summary>The longest text taken from the clipboard. [bytes]</summary>
    private const long LongestPaste = 1024 * 1024;

    private ElementReference _region;
    private PageScript? _script;
    private DotNetObjectReference<ReadingGrid>? _self;
    private string _said = "";
    private HashSet<int> _doubted = [];

    [Parameter, EditorRequired] public ReadingPlace At { get; set; }

    private AreaLight Light => Session.Study.Areas[At.Area].Light!;

    private ReadingSet Set => Light.Readings[At.Index];

    private ReadingText Text => new(Session.Study, Light);

    private CultureInfo Culture => CultureInfo.GetCultureInfo(Session.Study.Site.Culture);

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender) return;
        _self = DotNetObjectReference.Create(this);
        _script = new(JS, "./Features/Survey/Grid/SurveyGrid.razor.js");
        await _script.UseAsync(script => script.InvokeVoidAsync("start", _region, _self).AsTask());
    }

    /// <summary>Called by the script with a block of cells.</summary>
    [JSInvokable]
    public async Task PasteAsync(string line, string field, IJSStreamReference clipboard)
    {
        await using var stream = await clipboard.OpenReadStreamAsync(LongestPaste);
        using var reader = new StreamReader(stream);
        await PasteTextAsync((int.Parse(line, CultureInfo.InvariantCulture), int.Parse(field, CultureInfo.InvariantCulture)), await reader.ReadToEndAsync());
    }

    /// <summary>Called by the script when Enter is pressed in the last row: the grid ends there.</summary>
    [JSInvokable]
    public Task AddBelowAsync(string line) => Task.CompletedTask;

    public async ValueTask DisposeAsync()
    {
        Dispose();
        if (_script is not null) await _script.DisposeAsync();
        _self?.Dispose();
    }

    private async Task PasteTextAsync((int Row, int Column) from, string text)
    {
        var cells = PastedTable.Cells(text);
        if (cells.Value is not { } block)
        {
            _said = string.Join(" ", cells.Problems.Select(p => p.Message));
            StateHasChanged();
            return;
        }
        ReadingCells.Outcome? outcome = null;
        await Session.EditAsync("pasted readings", state =>
        {
            outcome = ReadingCells.Paste(state, At, from, block, Culture);
            return outcome.State;
        });
        _said = outcome is { } done ? Said(done) : "";
        StateHasChanged();
    }

    /// <summary>What pasting did, as one hears it.</summary>
    public static string Said(ReadingCells.Outcome done) => string.Concat(
        $"{done.Filled} {(done.Filled == 1 ? "cell" : "cells")} filled.",
        done.Unread > 0 ? $" {done.Unread} could not be read and {(done.Unread == 1 ? "is" : "are")} kept as typed and marked." : "",
        done.Outside > 0 ? $" {done.Outside} lay outside the grid and {(done.Outside == 1 ? "was" : "were")} left out." : "",
        " One undo takes it all back.");

    private Task SetAsync(int row, int column, string? typed) => (typed ?? "").Trim() == Shown(row, column)
        ? Task.CompletedTask
        : Session.EditAsync($"reading {Text.Where(Set, row, column)}", state => ReadingCells.Write(state, At, (row, column), typed ?? "", Culture));

    private string Shown(int row, int column) => Draft(row, column)?.Text ?? (Set.Values[row][column] is { } value ? NumberText.Write(value, Culture) : "");

    private CellDraft? Draft(int row, int column) => Session.State.Drafts.Of(At.Path, ReadingPlace.Cell(row, column));

    private IEnumerable<(int Column, CellDraft Draft)> DraftsOf(int row) =>
        from column in Enumerable.Range(0, Set.Columns.Count)
        let draft = Draft(row, column)
        where draft is not null
        select (column, draft);

    private string CellId(int row, int column) => FieldNames.Id(At.Path, ReadingPlace.Cell(row, column));

    private bool IsDoubted(int row, int column) => _doubted.Contains(row * Set.Columns.Count + column);
}
