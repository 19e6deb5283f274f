using CsCheck;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.CropLight;

public class Light_in_a_reflecting_box
{
    private static readonly Gen<double> Sides = Gen.Double[0.2, 3];
    private static readonly Gen<CavityShare> Reflectances = Gen.Select(Gen.Double[0, 0.99], Gen.Double[0, 0.99], Gen.Double[0, 0.99]).Select((b, s, t) => new CavityShare(b, s, t));

    // What the six sides keep is what was sent out.
    [Fact]
    public void is_neither_made_nor_lost() =>
        Gen.Select(Sides, Sides, Sides, Reflectances, Reflectances).Sample((l, w, h, reflectance, direct) =>
        {
            var all = Box(l, w, h, reflectance).Spread(direct);
            var kept = all.Base * (1 - reflectance.Base) + all.Sides * (1 - reflectance.Sides) + all.Top * (1 - reflectance.Top);
            Assert.Equal(direct.Total, kept, tolerance: 1e-9 * (1 + all.Total));
        }, iter: 300);

    [Fact]
    public void is_direct_light_alone_where_nothing_reflects() =>
        Gen.Select(Sides, Sides, Sides).Sample((l, w, h) =>
        {
            PlacedTube[] tubes = [Strip(h)];
            Assert.Equal(LightField.Over(tubes, [new(0.1, 0.1)]), ShelfLight.Over(tubes, Box(l, w, h, default), [new(0.1, 0.1)]));
        }, iter: 30);

    // Every face of a cube equally lit and of reflectance 0.5: 1 + 0.5 + 0.25 + … = 2 times the first light.
    [Fact]
    public void is_the_sum_of_all_reflections_in_an_even_cube()
    {
        var all = Box(1, 1, 1, new(0.5, 0.5, 0.5)).Spread(new(1, 4, 1));
        Assert.Equal(2, all.Base, tolerance: 1e-3);
        Assert.Equal(8, all.Sides, tolerance: 1e-3);
        Assert.Equal(2, all.Top, tolerance: 1e-3);
    }

    [Fact]
    public void grows_with_the_reflectance_of_its_sides()
    {
        PlacedTube[] tubes = [Strip(0.4)];
        var (dull, bright) = (ShelfLight.Reflected(tubes, Box(1.2, 0.6, 0.4, new(0.1, 0.3, 0.5))), ShelfLight.Reflected(tubes, Box(1.2, 0.6, 0.4, new(0.1, 0.9, 0.5))));
        Assert.True(bright > dull && dull > PhotonFluxDensity.Zero);
    }

    [Fact]
    public void has_no_answer_where_everything_is_thrown_back() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Box(1, 1, 1, new(1, 1, 1)));

    private static PlacedTube Strip(double height) =>
        new(TubeEmission.DownFacingStrip, Length.FromMetres(1.2), PhotonFlux.FromMicromolesPerSecond(54), Length.FromMetres(height));

    private static ReflectingCavity Box(double length, double width, double height, CavityShare reflectance) =>
        new(Length.FromMetres(length), Length.FromMetres(width), Length.FromMetres(height), reflectance);
}
