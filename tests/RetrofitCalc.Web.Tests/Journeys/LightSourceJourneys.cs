using System.Text;
using Microsoft.Playwright;
using RetrofitCalc.Web.Tests.Features.Light.Layout;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Journeys;

/// <summary>What light rests on: photometric files, spectra, targets, layouts. All files are invented.</summary>
[Collection(JourneyCollection.Name)]
public sealed class LightSourceJourneys(RunningApp app)
{
    private const string Tube = "4 ft T8 direct-wire tube, 13 W";

    [Fact]
    public async Task a_photometric_file_is_looked_at_taken_in_and_written_out_again()
    {
        var (page, id) = await OpenAsync("photometry");
        await page.ChooseFileAsync("A file in IES form", File("strip.ies", Photometric_files_of_a_study.Lambertian));
        await Assertions.Expect(page.GetByRole(AriaRole.Img, new() { NameRegex = new("at most 100 cd") })).ToBeVisibleAsync();
        await page.AccessibleAsync();
        await page.GetByLabel("It is the light of").SelectOptionAsync(new SelectOptionValue { Label = Tube });
        await page.GetByRole(AriaRole.Button, new() { Name = "Take this file in" }).ClickAsync();
        var taken = page.GetByRole(AriaRole.Heading, new() { Name = "Even strip", Exact = true });
        await Assertions.Expect(taken).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByText($"It is the light of {Tube}.")).ToBeVisibleAsync();
        await page.SavedAsync();
        await page.AccessibleAsync();
        var address = await page.GetByRole(AriaRole.Link, new() { NameRegex = new("As IES file.*Even strip") }).GetAttributeAsync("href");
        var written = await (await page.APIRequest.GetAsync(address!)).TextAsync();
        Assert.StartsWith("IESNA:LM-63-2002", written, StringComparison.Ordinal);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(taken).ToHaveCountAsync(0);
        app.NoErrors();
    }

    [Fact]
    public async Task a_broken_photometric_file_is_told_with_its_line_and_changes_nothing()
    {
        var (page, _) = await OpenAsync("photometry", RunningApp.Phone);
        await page.ChooseFileAsync("A file in IES form", File("torn.ies", Photometric_files_of_a_study.Lambertian[..250]));
        await Assertions.Expect(page.Locator(".import [role=alert]")).ToContainTextAsync("Nothing in the study was changed");
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Take this file in" })).ToHaveCountAsync(0);
        await page.AccessibleAsync();
        app.NoErrors();
    }

    // The same photons at every nanometre of 400–700 nm: 683 · ∫ V(λ) · 119.627/λ dλ / 300 nm = 52.2 lx of a µmol; the same watts: 52.9.
    [Fact]
    public async Task a_spectrum_is_taken_in_and_changes_the_lux_of_a_photon()
    {
        var (page, _) = await OpenAsync("spectra");
        var row = page.GetByRole(AriaRole.Row, new() { NameRegex = new($"^{Tube}") });
        await Assertions.Expect(row).ToContainTextAsync("not known");
        var rows = string.Concat(Enumerable.Range(0, 301).Select(i => $"{400 + i},1\n"));
        await page.ChooseFileAsync("A file with a spectrum", File("flat.csv", "Wavelength (nm),Photons (relative)\n" + rows));
        await Assertions.Expect(page.GetByText("shift blue against red by about 1.45")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByText("One µmol of it reads 52.2 lx")).ToBeVisibleAsync();
        await page.GetByLabel("Values are").SelectOptionAsync(new SelectOptionValue { Label = "watts, shape only (relative, or per area or angle)" });
        await Assertions.Expect(page.GetByText("One µmol of it reads 52.9 lx")).ToBeVisibleAsync();
        await page.GetByLabel("Values are").SelectOptionAsync(new SelectOptionValue { Label = "photons, shape only (relative, or per area)" });
        await Assertions.Expect(page.GetByText("One µmol of it reads 52.2 lx")).ToBeVisibleAsync();
        await page.AccessibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Take this spectrum in" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Spectra of this study" })).ToBeVisibleAsync();
        await page.GetByLabel($"Spectrum of {Tube}").SelectOptionAsync(new SelectOptionValue { Label = "flat" });
        await Assertions.Expect(row).ToContainTextAsync("52.2");
        await Assertions.Expect(page.GetByRole(AriaRole.Region, new() { Name = "Equal lux is not equal light" })).ToContainTextAsync($"one of {Tube} 52.2 lx");
        await page.SavedAsync();
        await page.AccessibleAsync();
        app.NoErrors();
    }

    [Fact]
    public async Task a_target_is_taken_from_the_table_changed_and_seen_with_the_verdicts()
    {
        var (page, id) = await OpenAsync("targets?area=seedling-racks&season=Spring plugs&stage=hardening");
        var stage = page.Locator("details.stage-target[open]");
        await stage.GetByLabel("Take it from the table").SelectOptionAsync(new SelectOptionValue { Value = "Vegetable transplants" });
        await Assertions.Expect(stage.Locator("summary")).ToContainTextAsync("Vegetable transplants: 10.0–13.0 mol/m² a day");
        await stage.GetByLabel("Least light of a day").FillAsync("11");
        await stage.GetByLabel("Least light of a day").PressAsync("Tab");
        await Assertions.Expect(stage.Locator("summary")).ToContainTextAsync("11.0–13.0 mol/m² a day, unsourced");
        await Assertions.Expect(stage).ToContainTextAsync("changed by hand from: Extension bulletins");
        await page.SavedAsync();
        await page.AccessibleAsync();
        await page.GotoAsync($"/studies/{id}/light?area=seedling-racks");
        await page.ReadyAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Row, new() { NameRegex = new("^Spring plugs, hardening") })).ToContainTextAsync("11.0–13.0");
        app.NoErrors();
    }

    [Fact]
    public async Task luminaires_are_spread_evenly_over_a_bench_on_a_phone()
    {
        var (page, _) = await OpenAsync("layout?area=seedling-racks", RunningApp.Phone);
        await page.GetByLabel("Side by side").FillAsync("2");
        await page.GetByLabel("Side by side").PressAsync("Tab");
        await page.GetByRole(AriaRole.Button, new() { Name = "Fill evenly" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Two luminaires hang over a bench of Seedling racks");
        await page.EvaluateAsync("() => scrollTo(0, 0)");
        await Assertions.Expect(page.GetByText("24 luminaires are surveyed, 2 over this bench, so there are 12 alike.")).ToBeVisibleAsync();
        await page.SavedAsync();
        await page.AccessibleAsync();
        app.NoErrors();
    }

    private async Task<(IPage Page, string Id)> OpenAsync(string path, ViewportSize? size = null)
    {
        var page = await app.OpenAsync("/", size);
        var id = await app.CopyExampleAsync(page);
        await page.GotoAsync($"/studies/{id}/light/{path}");
        await page.ReadyAsync();
        return (page, id);
    }

    private static FilePayload File(string name, string content) => new() { Name = name, MimeType = "text/plain", Buffer = Encoding.UTF8.GetBytes(content) };
}
