using System.Text;
using Bunit;
using Microsoft.AspNetCore.Components.Forms;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Photometry;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Features.Light.Layout.Photometry;
using RetrofitCalc.Web.Features.Light.Spectra;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Light.Layout;

public class Photometric_files_of_a_study
{
    /// <summary>A Lambertian disc of 100 cd facing down, I = 100 cos γ: π · 100 = 314 lm. Invented.</summary>
    internal static string Lambertian { get; } = string.Join("\r\n",
    [
        "IESNA:LM-63-2002", "[TEST] invented", "[TESTLAB] invented", "[ISSUEDATE] 2026", "[MANUFAC] invented", "[LUMINAIRE] Even strip", "TILT=NONE",
        "1 -1 1 19 1 1 2 0.1 1.2 0", "1 1 4", string.Join(' ', Enumerable.Range(0, 19).Select(i => i * 5)), "0",
        string.Join(' ', Enumerable.Range(0, 19).Select(i => FormattableString.Invariant($"{100 * Math.Cos(i * 5 * Math.PI / 180):0.###}"))), "",
    ]);

    private static readonly QuantityText Text = QuantityText.For(SmallStudies.OneRack());

    private static PhotometricFile File(string text) => Lm63File.Read(new MemoryStream(Encoding.ASCII.GetBytes(text))).Value!;

    private static async Task<IRenderedComponent<PhotometryPage>> ReadAsync(OpenStudy open, string text)
    {
        var page = open.Page<PhotometryPage>();
        page.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText(text, "strip.ies"));
        await page.WaitForAssertionAsync(() => Assert.NotEmpty(page.FindAll(".polar-svg, .cell-message")), TimeSpan.FromSeconds(60));
        return page;
    }

    [Fact]
    public async Task are_shown_first_and_taken_in_for_a_product_by_one_edit()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var page = await ReadAsync(open, Lambertian);
        Assert.Contains("lm, at most 100 cd, 100\u00A0% of it downward", page.Markup, StringComparison.Ordinal);
        Assert.Empty(open.Study.Distributions);
        await page.Find("#p-product").ChangeAsync(new() { Value = "dw-4ft-t8-18" });
        await page.FindAll("button").Single(button => button.TextContent == "Take this file in").ClickAsync(new());
        var taken = Assert.Single(open.Study.Distributions);
        Assert.Equal("Even strip", taken.Name);
        Assert.Equal(taken.Id, ProductLights.Of(open.Study, "dw-4ft-t8-18").Distribution);
        Assert.Equal("photometric file Even strip", open.Session.CanUndo);
        await open.Session.UndoAsync();
        Assert.Empty(open.Study.Distributions);
        Assert.Empty(open.Study.Products);
    }

    [Fact]
    public async Task that_cannot_be_read_are_told_and_change_nothing()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var page = await ReadAsync(open, Lambertian.Replace("19 1 1 2", "19 x 1 2", StringComparison.Ordinal));
        Assert.Contains("Nothing in the study was changed", page.Find(".import [role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Empty(open.Study.Distributions);
    }

    // The luminous part of 1.2 is said to be in feet.
    [Fact]
    public async Task with_feet_that_look_like_metres_are_doubted()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes());
        var page = await ReadAsync(open, Lambertian.Replace("19 1 1 2", "19 1 1 1", StringComparison.Ordinal));
        Assert.Contains("that would be a common length in metres", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void go_out_and_come_in_as_the_same_light()
    {
        var study = StudyDistributions.Add(SmallStudies.OneRack(), File(Lambertian), "Even strip", new(EvidenceKind.Tested, "invented"));
        var again = Lm63File.Read(new MemoryStream(StudyDistributions.Write(study.Distributions[0]))).Value!;
        Assert.Equal(study.Distributions[0].Candelas[0], again.Distribution.Candelas[0]);
        Assert.Equal(4, again.Distribution.InputPower!.Value.Watts);
        Assert.Equal("Even strip", again.Label("LUMINAIRE"));
    }

    [Fact]
    public void taken_out_leave_their_products()
    {
        var study = StudyDistributions.Add(SmallStudies.OneRack(), File(Lambertian), "x", Provenance.None);
        var used = ProductLights.Change(study, "tube", light => light with { Distribution = study.Distributions[0].Id, Emission = TubeEmission.BareTube });
        var without = StudyDistributions.Remove(used, study.Distributions[0].Id);
        Assert.Empty(without.Distributions);
        Assert.Equal(new ProductLight("tube") { Emission = TubeEmission.BareTube }, Assert.Single(without.Products));
    }

    // Uniform in all directions: half the light goes down. Lambertian downwards: all of it.
    [Fact]
    public void tell_how_much_goes_down()
    {
        double[] angles = [0, 45, 90, 135, 180];
        var even = new LuminousIntensityDistribution(PhotometricType.C, angles, [0], [[10, 10, 10, 10, 10]]);
        Assert.Equal(0.5, PhotometryText.Downward(even), 1e-9);
        Assert.Equal(1, PhotometryText.Downward(File(Lambertian).Distribution), 1e-9);
    }

    [Fact]
    public async Task that_are_damaged_within_a_study_are_shown_as_such()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes() with { Distributions = [new("x", "Torn", Provenance.None) { Vertical = [0, 90], Horizontal = [0], Candelas = [[1]] }] });
        Assert.Contains("cannot be drawn", open.Page<PhotometryPage>().Markup, StringComparison.Ordinal);
    }

    // 314 lm against 2,000 lm of the sheet.
    [Fact]
    public void with_other_lumens_than_the_sheet_are_doubted()
    {
        var product = new UsedProduct("t", "Tube", false, LuminousFlux.FromLumens(2000), null, Power.FromWatts(16), Provenance.None);
        Assert.Contains("the sheet of Tube 2,000 lm", PhotometryText.Against(File(Lambertian).Distribution, product, Text), StringComparison.Ordinal);
        Assert.Null(PhotometryText.Against(File(Lambertian).Distribution, product with { Flux = LuminousFlux.FromLumens(310) }, Text));
    }

    // 100 cd on rings of 50 and 100: straight down at the outer ring, sideways nothing.
    [Fact]
    public void are_drawn_with_down_below()
    {
        var plot = PolarPlot.Of(File(Lambertian).Distribution)!;
        Assert.Equal([50, 100], plot.Rings);
        Assert.Contains(plot.Along, point => Math.Abs(point.X - PolarPlot.Middle) < 1e-9 && Math.Abs(point.Y - PolarPlot.Middle - PolarPlot.Radius) < 1e-9);
        Assert.All(plot.Along, point => Assert.True(point.Y >= PolarPlot.Middle - 1e-6));
    }

    [Fact]
    public void of_types_A_and_B_are_drawn_over_the_angle_from_the_aim()
    {
        var flood = new LuminousIntensityDistribution(PhotometricType.B, [0, 90], [0, 90], [[500, 0], [200, 0]]);
        Assert.Null(PolarPlot.Of(flood));
        var figure = AngleChart.Of(flood, Text)!;
        Assert.Equal(500, figure.Spec.Series[0].Points.Single(point => point.X == 0).Y);
        Assert.Equal(200, figure.Spec.Series[0].Points.Single(point => point.X == 90).Y);
        Assert.Equal("−90°", figure.Twin.Rows[0][0]);
    }
}
