using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Playwright;

namespace RetrofitCalc.Web.Tests.Harness;

/// <summary>The real program on a free port of this machine with a database of its own, and a real Chromium.</summary>
public sealed class RunningApp : IAsyncLifetime
{
    private readonly string _folder = Directory.CreateTempSubdirectory("retrofitcalc-journeys-").FullName;
    private readonly List<string> _browserErrors = [];
    private AppFactory _factory = null!;
    private IPlaywright _playwright = null!;
    private IBrowser _browser = null!;

    public string Address { get; private set; } = "";

    public IServiceProvider Services => _factory.Services;

    public static ViewportSize Desktop => new() { Width = 1280, Height = 900 };

    public static ViewportSize Phone => new() { Width = 390, Height = 844 };

    public async ValueTask InitializeAsync()
    {
        _factory = new AppFactory(Path.Combine(_folder, "retrofitcalc.db"));
        _factory.UseKestrel(0);
        _factory.StartServer();
        Address = _factory.ClientOptions.BaseAddress.ToString().TrimEnd('/');
        _playwright = await Playwright.CreateAsync();
        Assertions.SetDefaultExpectTimeout(20_000); // A machine that builds and tests at once may take seconds for what is usually instant.
        _browser = await _playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Environment.GetEnvironmentVariable("CHROMIUM") ?? "/usr/bin/chromium",
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    /// <summary>A fresh page in a context of its own; errors the page reports fail the test at <see cref="NoErrors"/>.</summary>
    public async Task<IPage> OpenAsync(string path, ViewportSize? size = null, ColorScheme scheme = ColorScheme.Light)
    {
        var context = await _browser.NewContextAsync(new()
        {
            BaseURL = Address,
            ViewportSize = size ?? Desktop,
            Locale = "en-US",
            ColorScheme = scheme,
            ReducedMotion = ReducedMotion.Reduce,
            AcceptDownloads = true,
        });
        var page = await context.NewPageAsync();
        page.PageError += (_, error) => _browserErrors.Add(error);
        await page.GotoAsync(path);
        await page.ReadyAsync();
        return page;
    }

    public void NoErrors() => Assert.Empty(_browserErrors);

    public async ValueTask DisposeAsync()
    {
        await _browser.DisposeAsync();
        _playwright.Dispose();
        await _factory.DisposeAsync();
        try
        {
            Directory.Delete(_folder, recursive: true);
        }
        catch (IOException)
        {
            // A database file that is still closing is left to the system's clean-up.
        }
    }

    private sealed class AppFactory(string database) : WebApplicationFactory<Program>
    {
        protected override void ConfigureWebHost(IWebHostBuilder builder) =>
            builder.UseEnvironment("Development").UseSetting("Data:Path", database);
    }
}

/// <summary>All journeys share one running program; each opens a study of its own.</summary>
[CollectionDefinition(Name)]
public sealed class JourneyCollection : ICollectionFixture<RunningApp>
{
    public const string Name = "Journeys";
}
