using Microsoft.AspNetCore.Connections;
using RetrofitCalc.Data;

namespace RetrofitCalc.Web.Shared;

/// <summary>What must be so before the first page is served.</summary>
public static class StartUp
{
    private const string Loopback = "http://127.0.0.1:5080";

    /// <summary>Nothing leaves the machine unless someone asks for another address.</summary>
    public static IWebHostBuilder UseLoopbackUnlessTold(this IWebHostBuilder host, IConfiguration settings) =>
        settings["urls"] is null && settings["http_ports"] is null ? host.UseUrls(Loopback) : host;

    /// <summary>Creates or updates the database; says in one message why that cannot be done.</summary>
    public static async Task<bool> PrepareDatabaseAsync(WebApplication app)
    {
        if (await ProblemAsync(app) is not { } problem) return true;
        await Console.Error.WriteLineAsync(problem.ToString());
        return false;
    }

    private static async Task<DatabaseProblem?> ProblemAsync(WebApplication app)
    {
        try
        {
            return await app.Services.GetRequiredService<DatabaseStart>().PrepareAsync(app.Lifetime.ApplicationStopping);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new DatabaseProblem(
                $"The folder of the database cannot be made or opened: {failure.Message}",
                "Nothing was changed.",
                "Set Data__Path to a file in a folder you may write to, then start again.");
        }
    }

    /// <summary>Serves until stopped; prints the address once the program answers there, or why it cannot.</summary>
    public static async Task<int> ServeAsync(WebApplication app)
    {
        app.Lifetime.ApplicationStarted.Register(() =>
            Console.WriteLine($"RetrofitCalc is running at {string.Join(" and ", app.Urls)}. Open it in a browser; Ctrl+C stops it."));
        try
        {
            await app.RunAsync();
            return 0;
        }
        catch (IOException failure) when (failure.InnerException is AddressInUseException)
        {
            await Console.Error.WriteLineAsync(
                "Another program, perhaps RetrofitCalc itself, already answers at this address. Open it there, or set ASPNETCORE_URLS to another one, such as http://127.0.0.1:5090.");
            return 1;
        }
    }
}
