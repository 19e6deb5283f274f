using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using NodaTime;
using RetrofitCalc.Files.Meters;
using RetrofitCalc.Files.Meters.Tables;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Meter;

/// <summary>Reads a meter file, shows what it would bring, and takes in what one agrees to as one step to undo.</summary>
public sealed partial class MeterImport
{
    private const long LargestFile = MeterLimits.FileMegabytes * 1024L * 1024;

    private CancellationTokenSource _stop = new();
    private UploadedFile? _upload;
    private MeterFile? _file;
    private IReadOnlyList<string> _problems = [];
    private MeterReview? _review;
    private int _source;
    private bool _agreed;
    private string? _busy;
    private double? _share;

    [Parameter, EditorRequired] public DateTimeZone Zone { get; set; } = default!;

    [Parameter, EditorRequired] public QuantityText Text { get; set; } = default!;

    /// <summary>Told what was taken in.</summary>
    [Parameter] public EventCallback<string> Taken { get; set; }

    public async ValueTask DisposeAsync()
    {
        await _stop.CancelAsync();
        _stop.Dispose();
        if (_upload is not null) await _upload.DisposeAsync();
    }

    private string? WhyNot => _review switch
    {
        { CanBeTaken: false } => "These readings cannot be billed as they are.",
        { Missing: > 0 } when !_agreed => "Agree to fill the gaps first, or choose other months.",
        _ => null,
    };

    private async Task ReadFileAsync(InputFileChangeEventArgs chosen)
    {
        await StopAsync();
        if (chosen.File.Size > LargestFile)
        {
            _problems = [MeterLimits.TooLarge];
            return;
        }
        await BusyAsync($"Reading {chosen.File.Name}.", async stop =>
        {
            _upload = await UploadedFile.CopyAsync(chosen.File, Progress, stop);
            _share = null;
            StateHasChanged();
            var file = new MeterFile(_upload, CultureInfo.GetCultureInfo(Session.Study.Site.Culture), Zone);
            await ReadAsync(file, file.Open, stop);
        });
    }

    private Task UseAsync(Action<MeterFile> change) => BusyAsync("Reading the file again.", stop => ReadAsync(_file!, () => change(_file!), stop));

    /// <summary>Reads off the page's thread; what was read last stays in sight until then.</summary>
    private async Task ReadAsync(MeterFile file, Action read, CancellationToken stop)
    {
        await Task.Run(read, stop);
        stop.ThrowIfCancellationRequested();
        (_file, _problems, _review) = (file, file.Problems, null);
        if (file.Sources.Count > 0) await ReviewAsync(file.FirstUsable, stop);
    }

    private Task ChooseSourceAsync(int source) => BusyAsync("Putting the readings in order.", stop => ReviewAsync(source, stop));

    private async Task ReviewAsync(int source, CancellationToken stop)
    {
        var study = Session.Study;
        var review = await Task.Run(() => MeterReview.Of(_file!.Sources[source], study, Zone), stop);
        stop.ThrowIfCancellationRequested();
        (_source, _review, _agreed) = (source, review, false);
    }

    private void Show(MeterReview review) => (_review, _agreed) = (review, false);

    private async Task TakeAsync()
    {
        if (_review is not { Filled: { } year } review || WhyNot is not null) return;
        year = year with { Source = year.Source with { Source = $"{year.Source.Source}; file {_upload!.Name}" } };
        await Session.EditAsync("meter data", study => study with { Meter = year });
        await StopAsync();
        var filled = review.Missing > 0 ? $", {Text.Number(review.Missing)} filled" : "";
        await Taken.InvokeAsync($"{year.Name} is taken in: {Text.Number(year.Watts.Count)} intervals{filled}. One undo takes it back.");
    }

    /// <summary>Stops what is going on and lets the file go; the study is not touched.</summary>
    private async Task StopAsync()
    {
        await _stop.CancelAsync();
        _stop.Dispose();
        _stop = new();
        (_busy, _share, _review, _file, _problems, _agreed) = (null, null, null, null, [], false);
        if (_upload is null) return;
        await _upload.DisposeAsync();
        _upload = null;
    }

    private async Task BusyAsync(string what, Func<CancellationToken, Task> work)
    {
        var stop = _stop.Token;
        _busy = what;
        StateHasChanged();
        try
        {
            await work(stop);
        }
        catch (Exception ended) when (ended is OperationCanceledException or ObjectDisposedException && stop.IsCancellationRequested)
        {
            // Cancelled by hand, or the page was left; nothing was taken in.
        }
        finally
        {
            if (!stop.IsCancellationRequested) (_busy, _share) = (null, null);
        }
    }

    /// <summary>Once for each percent is enough.</summary>
    private void Progress(double share)
    {
        if (share - (_share ?? 0) < 0.01 && share < 1) return;
        _share = share;
        _ = InvokeAsync(StateHasChanged);
    }

    private static string SourceWords(MeterSource source) =>
        $"{source.Name}: {source.About}{(source.Refusal is { } refusal ? $" – {refusal}" : "")}";
}
