using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Spectra;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Features.Light.Spectra;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Light.Spectra;

public class Spectra_of_products
{
    private static readonly UsedProduct Lamp = new("lamp", "Lamp", true, LuminousFlux.FromLumens(3000), PhotonFlux.FromMicromolesPerSecond(40), Power.FromWatts(32), Provenance.None);
    private static readonly UsedProduct Tube = new("tube", "Tube", false, LuminousFlux.FromLumens(2000), null, Power.FromWatts(16), Provenance.None);
    private static readonly Study Study = SmallStudies.OneRack();
    private static readonly QuantityText Text = QuantityText.For(Study);

    // 3,000 lm over 40 µmol/s.
    [Fact]
    public void a_sheet_with_lumens_and_photons_gives_its_own_factor() =>
        Assert.Equal(75, ProductFactor.Of(Study, Lamp)!.Factor.LuxPerMicromole, 1e-9);

    [Fact]
    public void a_sheet_with_lumens_alone_gives_none() => Assert.Null(ProductFactor.Of(Study, Tube));

    // CIE FL2 and LED-B3: 76.51 and 69.77 lx per µmol, computed from the CIE tables by sums of 5 nm; ours split the samples at 400 and 700 nm.
    [Theory, InlineData("FL2", 76.51), InlineData("LED-B3", 69.77)]
    public void a_spectrum_brings_its_factor_into_the_study(string spectrum, double luxPerMicromole)
    {
        var light = Assert.Single(ProductFactor.UseSpectrum(Study, "tube", spectrum).Products);
        Assert.Equal(spectrum, light.Spectrum);
        Assert.Equal(luxPerMicromole, light.Conversion!.LuxPerMicromole, 0.05);
        Assert.Equal(0.07, light.Conversion.Uncertainty);
        Assert.StartsWith($"spectrum {spectrum}: CIE", light.Conversion.Source.Source, StringComparison.Ordinal);
    }

    // A study file may name the spectrum alone.
    [Fact]
    public void a_spectrum_without_a_factor_beside_it_gives_its_own()
    {
        var factor = ProductFactor.Of(Study with { Products = [new("lamp") { Spectrum = "FL2" }] }, Lamp)!;
        Assert.Equal(76.51, factor.Factor.LuxPerMicromole, 0.05);
        Assert.Equal(0.07, factor.Uncertainty);
    }

    // 75 lx by the sheet against 76.5 of FL2: no doubt; against 50.3 of incandescent light A: doubt.
    [Theory, InlineData("FL2", false), InlineData("A", true)]
    public void a_spectrum_far_from_the_sheet_is_doubted(string spectrum, bool doubted) =>
        Assert.Equal(doubted, SpectraText.Disagreements([Lamp], Study with { Products = [new("lamp") { Spectrum = spectrum }] }, Text).Any());

    [Fact]
    public void a_spectrum_nobody_has_changes_nothing() => Assert.Same(Study, ProductFactor.UseSpectrum(Study, "tube", "no such"));

    [Fact]
    public void a_product_back_at_its_sheet_leaves_no_row()
    {
        var chosen = ProductFactor.UseSpectrum(Study, "tube", "FL2");
        Assert.Empty(ProductFactor.UseSheet(chosen, "tube").Products);
    }

    [Fact]
    public void a_spectrum_taken_out_is_taken_from_its_products_too()
    {
        var with = StudySpectra.Add(Study, ShippedSpectra.Find("FL2")!, "Our lamp");
        var used = ProductFactor.UseSpectrum(with, "tube", with.Spectra[0].Id);
        Assert.Equal(0.03, used.Products[0].Conversion!.Uncertainty);
        var without = ProductFactor.RemoveSpectrum(used, with.Spectra[0].Id);
        Assert.Empty(without.Spectra);
        Assert.Empty(without.Products);
    }

    [Fact]
    public void a_spectrum_goes_into_a_study_and_comes_out_the_same()
    {
        var added = StudySpectra.Add(Study, ShippedSpectra.Find("LED-V1")!, "Ours");
        var again = StudySpectra.Find(added, added.Spectra[0].Id)!;
        Assert.Equal("Ours", again.Name);
        Assert.Equal(ShippedSpectra.Find("LED-V1")!.Curve.Samples, again.Curve.Samples);
    }

    // 76.51 to 69.77 lx per µmol: +9.7 % photons; the meter may read 1 − 69.77/76.51 = 8.8 % less.
    [Fact]
    public void equal_lux_is_said_with_the_numbers_of_the_study()
    {
        var change = new EqualLux(["Racks"], Lamp, Tube, new(new(76.51), 0.07, "FL2"), new(new(69.77), 0.07, "LED-B3"), 1000);
        Assert.Equal(
            "Racks: one µmol of Lamp reads 76.5 lx, one of Tube 69.8 lx. At the same lux the crop would get 10\u00A0% more photons; for the same photons the lux meter may read 9\u00A0% less. "
            + "The 1,000 lx read there are 13 µmol/m²·s now; the same 1,000 lx afterwards would be 14.",
            change.Sentence(Text));
    }

    [Fact]
    public void fewer_photons_at_equal_lux_are_said_as_well()
    {
        var change = new EqualLux(["Racks"], Lamp, Tube, new(new(60), null, ""), new(new(75), null, ""), null);
        Assert.EndsWith("the crop would get 20\u00A0% fewer photons; for the same photons the lux meter has to read 25\u00A0% more.", change.Sentence(Text));
    }

    [Fact]
    public void an_unknown_spectrum_is_asked_for()
    {
        var change = new EqualLux(["Racks"], Lamp, Tube, new(new(60), null, ""), null, null);
        Assert.Null(change.Gain);
        Assert.Equal("Racks: not known. Choose the spectrum of Tube above.", change.Sentence(Text));
    }

    [Fact]
    public async Task changes_of_alike_lines_are_said_once()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenWithTubes() with
        {
            Lines = [.. SmallStudies.TenLuminaires().Lines, new SurveyLine { Id = "second", Name = "Second shelf", Area = "rack", SetUp = "f32t8-2-is-nlo", Count = 4 }],
            Options = [new() { Id = "tubes", Name = "Tubes", Measures = [new("shelf", new DirectWire("dw-4ft-t8-18")), new("second", new DirectWire("dw-4ft-t8-18"))] }],
        });
        var change = Assert.Single(EqualLux.Of(open.Study, open.Study.Options[0]));
        Assert.Equal(["Shelf", "Second shelf"], change.Lines);
    }
}
