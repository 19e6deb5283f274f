using Bunit;
using Microsoft.AspNetCore.Components.Forms;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Spectra;
using RetrofitCalc.Web.Features.Light.Spectra;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Light.Spectra;

public class The_spectra_page
{
    private const string Tm27 = """
        <?xml version="1.0"?><IESTM2714 version="1.0"><Header><Description>Deep red bar</Description><Laboratory>Invented laboratory</Laboratory></Header>
        <SpectralDistribution><SpectralQuantity>flux</SpectralQuantity>
        <SpectralData wavelength="395">0</SpectralData><SpectralData wavelength="400">0.1</SpectralData><SpectralData wavelength="550">0.1</SpectralData><SpectralData wavelength="660">0.4</SpectralData><SpectralData wavelength="705">0.1</SpectralData>
        </SpectralDistribution></IESTM2714>
        """;

    private static async Task<IRenderedComponent<SpectraPage>> ReadAsync(OpenStudy open, string text, string name)
    {
        var page = open.Page<SpectraPage>();
        page.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText(text, name));
        await page.WaitForAssertionAsync(() => Assert.NotEmpty(page.FindAll(".import #s-name, .import .cell-message")), TimeSpan.FromSeconds(60));
        return page;
    }

    private static Task PressAsync(IRenderedComponent<SpectraPage> page, string words) => page.FindAll("button").Single(button => button.TextContent == words).ClickAsync(new());

    [Fact]
    public async Task takes_in_TM_27_with_its_amounts_name_and_source()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var page = await ReadAsync(open, Tm27, "bar.xml");
        Assert.Empty(page.FindAll("#s-unit"));
        await PressAsync(page, "Take this spectrum in");
        var taken = Assert.Single(open.Study.Spectra);
        Assert.Equal(("Deep red bar", SpectralScale.RadiantPower, 5), (taken.Name, taken.Scale, taken.Values.Count));
        Assert.Equal(EvidenceKind.Tested, taken.Source.Kind);
        Assert.Contains("Invented laboratory", taken.Source.Source, StringComparison.Ordinal);
        Assert.Equal("spectrum Deep red bar", open.Session.CanUndo);
    }

    [Fact]
    public async Task takes_a_spectrum_without_a_source_as_unsourced()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var page = await ReadAsync(open, "nm;W/nm\n400;1\n700;2,5\n", "lamp.csv");
        await PressAsync(page, "Take this spectrum in");
        Assert.Equal(EvidenceKind.Unsourced, Assert.Single(open.Study.Spectra).Source.Kind);
        Assert.Equal([1, 2.5], open.Study.Spectra[0].Values);
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll(".own-spectrum .unsourced")));
    }

    [Theory, InlineData("lamp.csv", "nm,W\n400,x\n410,1\n420,2\n", "not a number"), InlineData("lamp.xml", "<other/>", "not a TM-27 file"), InlineData("lamp.csv", "no numbers", "No rows of numbers")]
    public async Task tells_what_is_wrong_with_a_file_and_changes_nothing(string name, string text, string told)
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var page = await ReadAsync(open, text, name);
        Assert.Contains(told, page.Find(".import [role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Empty(open.Study.Spectra);
    }

    // 40 µmol/s of FL2 and 20 of LED-B3: lumens 40 · 76.51 + 20 · 69.77 over 60 µmol/s = 74.26 lx for one µmol.
    [Fact]
    public async Task makes_a_mixture_that_a_product_can_have()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var page = open.Page<SpectraPage>();
        foreach (var (number, spectrum, output) in new[] { (1, "FL2", "40"), (2, "LED-B3", "20") })
        {
            await page.Find($"#mix-spectrum-{number}").ChangeAsync(new() { Value = spectrum });
            await page.Find($"#mix-output-{number}").ChangeAsync(new() { Value = output });
        }
        await PressAsync(page, "Make the mixture");
        var mixture = Assert.Single(open.Study.Spectra);
        Assert.Equal(EvidenceKind.Computed, mixture.Source.Kind);
        await page.Find("select[aria-label^='Spectrum of 4 ft T8 direct-wire tube, 18 W']").ChangeAsync(new() { Value = $"s:{mixture.Id}" });
        Assert.Equal(74.26, ProductLights.Of(open.Study, "dw-4ft-t8-18").Conversion!.LuxPerMicromole, 0.05);
    }

    [Fact]
    public async Task gives_a_product_the_factor_of_a_family_or_an_own_one()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var page = open.Page<SpectraPage>();
        const string Row = "select[aria-label^='Spectrum of 4 ft T8 direct-wire tube, 18 W']";
        await page.Find(Row).ChangeAsync(new() { Value = "f:White LED, spectrum unknown" });
        Assert.Equal(67.5, ProductLights.Of(open.Study, "dw-4ft-t8-18").Conversion!.LuxPerMicromole);
        await page.Find(Row).ChangeAsync(new() { Value = "typed" });
        await page.Find("[id$=conversion-luxpermicromole]").ChangeAsync(new() { Value = "65.5" });
        Assert.Equal(new LuxConversion(65.5, 0.07, Provenance.None), ProductLights.Of(open.Study, "dw-4ft-t8-18").Conversion);
        await page.Find(Row).ChangeAsync(new() { Value = "sheet" });
        Assert.Empty(open.Study.Products);
    }

    [Fact]
    public async Task offers_products_no_spectrum_that_cannot_tell_photons_from_lux()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes() with { Spectra = [new("red", "Red end", new(EvidenceKind.Invented, "invented")) { Nanometres = [600, 700], Values = [1, 1] }] });
        var option = open.Page<SpectraPage>().Find("select[aria-label^='Spectrum of 4 ft T8 direct-wire tube, 18 W'] option[value='s:red']");
        Assert.True(option.HasAttribute("disabled"));
        Assert.Equal("Red end – does not reach over 400–700 nm", option.TextContent);
    }

    [Fact]
    public async Task lists_every_shipped_spectrum_with_its_source_and_licence()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack());
        var page = open.Page<SpectraPage>();
        Assert.Equal(ShippedSpectra.All.Count, page.FindAll(".spectrum-names li").Count);
        Assert.Contains("BSD 3-clause licence", page.Markup, StringComparison.Ordinal);
        Assert.Contains("CIE 15, illuminants FL1–12", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task leaves_out_a_spectrum_that_is_none()
    {
        await using var open = await OpenStudy.Of(SmallStudies.OneRack() with { Spectra = [new("torn", "Torn", Provenance.None) { Nanometres = [400], Values = [1] }] });
        Assert.Null(StudySpectra.Find(open.Study, "torn"));
        Assert.DoesNotContain(StudySpectra.All(open.Study), usable => usable.Own);
        Assert.Contains("1 samples from 400", open.Page<SpectraPage>().Markup.Replace("\u00A0", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }
}
