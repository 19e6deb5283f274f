using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.JSInterop;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Files.Surveys.Tables;
using RetrofitCalc.Files.Surveys.Workbooks;

namespace RetrofitCalc.Web.Features.Survey.Import;

/// <summary>Takes a table from pasted text or a file, shows what it would bring, and takes in what one accepts as one step to undo.</summary>
public sealed partial class ImportPanel
{
    private const long LargestFile = TableLimits.FileMegabytes * 1024L * 1024L;

    private readonly CancellationTokenSource _stop = new();
    private ImportReview? _review;
    private IReadOnlyList<string> _problems = [];
    private IReadOnlyList<string> _sheets = [];
    private byte[] _file = [];
    private string? _sheet;
    private string? _reading;
    private ElementReference _pasted;

    [Parameter, EditorRequired] public SurveyEditor Editor { get; set; } = default!;

    [Parameter] public bool FromText { get; set; }

    [Parameter] public EventCallback Closed { get; set; }

    public ValueTask DisposeAsync()
    {
        _stop.Cancel();
        _stop.Dispose();
        return ValueTask.CompletedTask;
    }

    private void Show(ImportReview review) => _review = review;

    /// <summary>Long texts do not fit in one message of the circuit, so they come as a stream.</summary>
    private async Task ReadTextAsync()
    {
        await using var script = await JS.InvokeAsync<IJSObjectReference>("import", "./Features/Survey/Grid/SurveyGrid.razor.js");
        var text = await script.InvokeAsync<IJSStreamReference>("textOf", _pasted);
        await using var stream = await text.OpenReadStreamAsync(LargestFile, _stop.Token);
        using var reader = new StreamReader(stream);
        Take(PastedTable.Read(await reader.ReadToEndAsync(_stop.Token)));
    }

    private async Task ReadFileAsync(InputFileChangeEventArgs chosen)
    {
        if (chosen.File.Size > LargestFile)
        {
            _problems = [TableLimits.TooLarge];
            return;
        }
        (_reading, _problems) = (chosen.File.Name, []);
        var stop = _stop.Token;
        try
        {
            using var copy = new MemoryStream();
            await using (var stream = chosen.File.OpenReadStream(LargestFile, stop)) await stream.CopyToAsync(copy, stop);
            _file = copy.ToArray();
            _sheets = await Task.Run(() => WorkbookTable.Sheets(new MemoryStream(_file)).Value ?? [], stop);
            await ReadSheetAsync(_sheets.Count > 0 ? _sheets[0] : null);
        }
        catch (OperationCanceledException)
        {
            // The panel was closed while the file was still coming.
        }
        finally
        {
            _reading = null;
        }
    }

    /// <summary>A text table has no sheets.</summary>
    private async Task ReadSheetAsync(string? sheet)
    {
        _sheet = sheet;
        Take(await Task.Run(() => SurveyFile.Read(new MemoryStream(_file), Editor.Context.Culture, sheet), _stop.Token));
    }

    private void Take(Parsed<SurveyTable> table)
    {
        _problems = [.. table.Problems.Select(p => p.ToString())];
        _review = table.Value is { } rows ? ImportReview.Of(rows, Session.Study, Editor.Context) : null;
    }

    private async Task AcceptAsync(bool keepBad)
    {
        var review = _review!;
        var (taken, left) = keepBad
            ? (review.Good.Count + review.Keepable, review.Bad.Count - review.Keepable)
            : (review.Good.Count, review.Bad.Count);
        await Session.EditAsync($"import of {Rows(taken, "row")}", state => review.Accept(state, keepBad));
        Editor.Say($"{Rows(taken, "row")} taken in{(left == 0 ? "" : $", {left} left out")}. One undo takes it all back.");
        await CloseAsync();
    }

    private Task CloseAsync() => Closed.InvokeAsync();

    private static string Rows(int count, string one) => FormattableString.Invariant($"{count} {one}{(count == 1 ? "" : "s")}");
}
