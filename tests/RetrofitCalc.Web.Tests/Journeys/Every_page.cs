using Microsoft.Playwright;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Journeys;

/// <summary>Every page at desktop and phone width: accessible, without sideways scrolling, and photographed into tests/screenshots.</summary>
[Collection(JourneyCollection.Name)]
public sealed class Every_page(RunningApp app)
{
    public static TheoryData<string> Places => [.. Shared.Place.All.Select(p => p.Path), "tariff/meter", "light/spectra", "light/targets", "light/layout", "light/photometry", "light/people"];

    [Theory, MemberData(nameof(Places))]
    public async Task of_a_study_is_accessible_and_fits(string place)
    {
        var page = await app.OpenAsync("/");
        var id = await app.CopyExampleAsync(page);
        await LookAsync($"/studies/{id}/{place}", place.Replace('/', '-'));
    }

    [Theory]
    [InlineData("/", "home")]
    [InlineData("/catalogue", "catalogue-alone")]
    [InlineData("/not-found", "not-found")]
    [InlineData("/error", "error")]
    public async Task outside_a_study_is_accessible_and_fits(string path, string name) => await LookAsync(path, name);

    private async Task LookAsync(string path, string name)
    {
        foreach (var (size, width) in new[] { (RunningApp.Desktop, "desktop"), (RunningApp.Phone, "phone") })
        {
            var page = await app.OpenAsync(path, size);
            await page.WaitForTimeoutAsync(400);
            await page.ScreenshotAsync(new() { Path = Path.Combine(Screenshots, $"{name}-{width}.png"), FullPage = true });
            await page.AccessibleAsync();
            var overflow = await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
            Assert.True(overflow <= 0, $"{path} at {width} width scrolls sideways by {overflow} px.");
            await page.Context.CloseAsync();
        }
        app.NoErrors();
    }

    private static string Screenshots { get; } = Directory.CreateDirectory(Path.Combine(RepositoryRoot(), "tests", "screenshots")).FullName;

    private static string RepositoryRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "RetrofitCalc.sln"))) folder = folder.Parent;
        return folder?.FullName ?? throw new DirectoryNotFoundException("RetrofitCalc.sln is not above the tests.");
    }
}
