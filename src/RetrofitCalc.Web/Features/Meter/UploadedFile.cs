using Microsoft.AspNetCore.Components.Forms;

namespace RetrofitCalc.Web.Features.Meter;

/// <summary>A chosen file on this machine's disk, so that it can be read again as its columns are matched; gone when let go.</summary>
public sealed class UploadedFile : IAsyncDisposable
{
    private const int Chunk = 256 * 1024;
    private readonly FileStream _copy;

    private UploadedFile(string name, FileStream copy) => (Name, _copy) = (name, copy);

    public string Name { get; }

    /// <summary>Copies a file as it comes, telling how far it is.</summary>
    /// <param name="file">The chosen file, of a size that was checked.</param>
    /// <param name="progress">Told the share copied, 0 to 1.</param>
    /// <param name="stop">Stops it.</param>
    public static async Task<UploadedFile> CopyAsync(IBrowserFile file, Action<double> progress, CancellationToken stop)
    {
        var copy = new FileStream(Path.GetTempFileName(), FileMode.Create, FileAccess.ReadWrite, FileShare.None, Chunk, FileOptions.DeleteOnClose | FileOptions.Asynchronous);
        try
        {
            await using var coming = file.OpenReadStream(file.Size, stop);
            var buffer = new byte[Chunk];
            for (var read = await coming.ReadAsync(buffer, stop); read > 0; read = await coming.ReadAsync(buffer, stop))
            {
                await copy.WriteAsync(buffer.AsMemory(0, read), stop);
                progress(copy.Length / (double)Math.Max(1, file.Size));
            }
            return new UploadedFile(file.Name, copy);
        }
        catch
        {
            await copy.DisposeAsync();
            throw;
        }
    }

    /// <summary>The file from its start; it stays open.</summary>
    public Stream FromStart()
    {
        _copy.Position = 0;
        return _copy;
    }

    public ValueTask DisposeAsync() => _copy.DisposeAsync();
}
