namespace RetrofitCalc.Data.Sqlite;

/// <summary>A file held open for one process alone.</summary>
internal sealed class FileClaim(FileStream file) : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <exception cref="TimeoutException">Another process held the file all the time.</exception>
    public static async Task<FileClaim> TakeAsync(string path, CancellationToken stop)
    {
        for (var waited = TimeSpan.Zero; ; waited += Pause)
        {
            try
            {
                return new FileClaim(new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None));
            }
            catch (IOException) when (File.Exists(path) && waited < Patience)
            {
                await Task.Delay(Pause, stop);
            }
            catch (IOException busy) when (File.Exists(path))
            {
                throw new TimeoutException("Another start of the program did not finish.", busy);
            }
        }
    }

    public ValueTask DisposeAsync() => file.DisposeAsync();

    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(100);
}
