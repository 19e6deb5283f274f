using RetrofitCalc.Data;

namespace RetrofitCalc.Web.Shared;

/// <summary>What must be so before the first page is served.</summary>
public static class StartUp
{
    /// <summary>Creates or updates the database; says in one message why that cannot be done.</summary>
    public static async Task<bool> PrepareDatabaseAsync(WebApplication app)
    {
        var database = app.Services.GetRequiredService<DatabaseStart>();
        if (await database.PrepareAsync(app.Lifetime.ApplicationStopping) is not { } problem) return true;
        await Console.Error.WriteLineAsync(problem.ToString());
        return false;
    }

    /// <summary>Prints the address once the program answers there.</summary>
    public static void SayAddress(WebApplication app) => app.Lifetime.ApplicationStarted.Register(() =>
        Console.WriteLine($"RetrofitCalc is running at {string.Join(" and ", app.Urls)}. Open it in a browser; Ctrl+C stops it."));
}
