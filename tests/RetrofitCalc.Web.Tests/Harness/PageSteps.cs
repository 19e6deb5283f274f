using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace RetrofitCalc.Web.Tests.Harness;

/// <summary>Steps every journey takes.</summary>
public static class PageSteps
{
    /// <summary>Waits until a page that edits is connected: before that, what one types would go nowhere.</summary>
    public static async Task ReadyAsync(this IPage page)
    {
        await page.WaitForLoadStateAsync(LoadState.Load);
        await page.WaitForFunctionAsync("() => !document.querySelector('[data-needs-circuit]') || document.querySelector('[data-needs-circuit=\"connected\"]')");
    }

    /// <summary>Waits until the last edit is saved.</summary>
    public static async Task SavedAsync(this IPage page) =>
        await page.Locator(".saved[data-state=saved]").WaitForAsync();

    /// <summary>Copies the worked example and opens the copy, so that journeys do not meet.</summary>
    public static async Task<string> CopyExampleAsync(this RunningApp app, IPage page)
    {
        await page.GotoAsync("/");
        await page.GetByRole(AriaRole.Row, new() { NameRegex = new("Quillmere") }).Filter(new() { HasNotText = ", copy" }).First.GetByRole(AriaRole.Button, new() { NameRegex = new("^Copy") }).ClickAsync();
        await page.WaitForURLAsync("**/survey");
        await page.ReadyAsync();
        return new Uri(page.Url).AbsolutePath.Split('/')[2];
    }

    /// <summary>Chooses a file as soon as the field answers to one: a file set earlier than its script listens would go unnoticed.</summary>
    public static async Task ChooseFileAsync(this IPage page, string label, FilePayload file)
    {
        var field = page.GetByLabel(label);
        await field.WaitForAsync();
        var handle = await field.ElementHandleAsync();
        await page.WaitForFunctionAsync("field => field._blazorInputFileNextFileId !== undefined", handle);
        await field.SetInputFilesAsync(file);
    }

    /// <summary>Leaves the meter page of a study open, without the meter year the example may hold.</summary>
    public static async Task WithoutMeterAsync(this IPage page, string id)
    {
        await page.GotoAsync($"/studies/{id}/tariff/meter");
        await page.ReadyAsync();
        // The import field stands at the end of the page: with it, all of the page is there.
        await page.Locator("#meter-file").WaitForAsync();
        if (await page.Locator(".meter-state").CountAsync() > 0)
        {
            await page.GetByRole(AriaRole.Button, new() { Name = "Remove the meter data" }).ClickAsync();
            await Assertions.Expect(page.Locator(".meter-state")).ToHaveCountAsync(0);
            await page.SavedAsync();
        }
    }

    /// <summary>No accessibility violation on the page as it stands; each is named with its place.</summary>
    public static async Task AccessibleAsync(this IPage page)
    {
        var found = await page.RunAxe(new AxeRunOptions { RunOnly = new RunOnlyOptions { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] } });
        var named = found.Violations.Select(v => $"{page.Url}: {v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}");
        Assert.True(found.Violations.Length == 0, string.Join(Environment.NewLine, named));
    }
}
