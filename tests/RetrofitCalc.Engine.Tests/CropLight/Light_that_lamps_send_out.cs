using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.CropLight;

/// <summary>Three lamps on ballasts of factor 0.88; 2950 lm and 40 µmol/s each. All invented.</summary>
public class Light_that_lamps_send_out
{
    private static readonly Lamp Lamp = SampleCatalogue.LampT8 with { InitialFlux = LuminousFlux.FromLumens(2950), PhotonFlux = PhotonFlux.FromMicromolesPerSecond(40) };

    [Fact]
    public void counts_the_ballast_factor()
    {
        var output = FittedOutput.Of(Lamps(Lamp));
        Assert.Equal(3 * 0.88 * 2950, output.Lumens!.Value.Lumens, 1e-9);
        Assert.Equal(105.6, output.Photons!.Value.MicromolesPerSecond, 1e-9); // 3 · 0.88 · 40
        Assert.Equal(35.2, output.PerLamp!.Value.MicromolesPerSecond, 1e-9);
        Assert.Equal((3, 0.0, null), (output.Lamps, output.Uncertainty, output.Missing));
    }

    [Fact]
    public void is_that_of_the_lamps_of_the_lit_step()
    {
        var output = FittedOutput.Of(Lamps(Lamp), SampleCatalogue.OneLamp);
        Assert.Equal((1, 35.2), (output.Lamps, Math.Round(output.Photons!.Value.MicromolesPerSecond, 9)));
        Assert.Equal(3, FittedOutput.Of(Lamps(Lamp), "a step it does not have").Lamps);
    }

    [Fact]
    public void is_not_known_behind_a_ballast_nobody_has_looked_at()
    {
        var fitting = new BallastedFitting(SampleCatalogue.ThreeT8InTwoSteps, Lamp, [SampleCatalogue.Electronic, null]);
        var all = FittedOutput.Of(Line(fitting));
        Assert.Equal((null, null), (all.Lumens, all.Photons));
        Assert.Equal("the ballast factor of 3 × T8, two steps", all.Missing);
        Assert.Equal(35.2, FittedOutput.Of(Line(fitting), SampleCatalogue.OneLamp).Photons!.Value.MicromolesPerSecond, 1e-9);
    }

    [Fact]
    public void becomes_photons_by_the_studys_conversion_where_the_catalogue_gives_lumens_only()
    {
        var line = Lamps(Lamp with { PhotonFlux = null });
        Assert.Equal("how the lumens of 4 ft T8 lamp become photons: its spectrum or kind of lamp", FittedOutput.Of(line, null, Context()).Missing);
        var output = FittedOutput.Of(line, null, Context(new ProductLight("lamp-t8") { Conversion = new(73.75, 0.07, Provenance.None) }));
        Assert.Equal(105.6, output.Photons!.Value.MicromolesPerSecond, 1e-9); // 2950/73.75 = 40
        Assert.Equal((0.07, null), (output.Uncertainty, output.Missing));
    }

    [Fact]
    public void becomes_lumens_the_other_way_where_the_catalogue_gives_photons_only()
    {
        var bar = new LuminaireFitting(SampleCatalogue.NewLuminaire with { PhotonFlux = PhotonFlux.FromMicromolesPerSecond(136) });
        Assert.Null(FittedOutput.Of(Line(bar)).Lumens);
        var output = FittedOutput.Of(Line(bar), null, Context(new ProductLight("strip") { Conversion = new(70, 0.1, Provenance.None) }));
        Assert.Equal(9520, output.Lumens!.Value.Lumens, 1e-9);
        Assert.Equal(0, output.Uncertainty); // the photons are the catalogue's own
    }

    [Fact]
    public void keeps_the_share_of_a_step_when_tubes_replace_lamps()
    {
        var tubes = new TubeFitting(SampleCatalogue.TubeT8 with { PhotonFlux = PhotonFlux.FromMicromolesPerSecond(30) }, 3);
        var output = FittedOutput.Of(Line(tubes), SampleCatalogue.OneLamp, Context());
        Assert.Equal((1, 30), (output.Lamps, output.Photons!.Value.MicromolesPerSecond));
        Assert.Equal(90, FittedOutput.Of(Line(tubes), null, Context()).Photons!.Value.MicromolesPerSecond, 1e-9);
    }

    [Fact]
    public void is_asked_for_where_a_sheet_gives_none() =>
        Assert.Equal("the photons or lumens of 4 ft tube, 15 W", FittedOutput.Of(Line(new TubeFitting(SampleCatalogue.TubeT8, 3))).Missing);

    private static FittedLine Lamps(Lamp lamp) =>
        Line(new BallastedFitting(SampleCatalogue.ThreeT8InTwoSteps, lamp, [SampleCatalogue.Electronic, SampleCatalogue.Electronic]));

    private static FittedLine Line(Fitting fitting) => new(SampleStudy.Line("shelves", "room", SampleCatalogue.ThreeT8InTwoSteps.Id, 12), SampleStudy.Room, fitting, 12);

    private static StudyContext Context(params ProductLight[] products) => new(SampleStudy.Small with { Products = products });
}
