using CsCheck;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.CropLight;

public class Light_of_turned_luminaires
{
    private static readonly double[] Down = [.. Enumerable.Range(0, 181).Select(i => i * 0.5)];

    // 1000 cd · cos γ is a flat diffuse piece: turned, it is a short strip turned the same way, within the straight lines between half degrees.
    [Fact]
    public void is_that_of_a_short_strip_where_the_file_is_diffuse() =>
        Gen.Select(Gen.Double[-90, 90], Gen.Double[-180, 180], Gen.Double[-2, 2], Gen.Double[-2, 2]).Sample((tilt, axis, x, y) =>
        {
            var height = Length.FromMetres(1.5);
            var luminaire = new PlacedLuminaire(Diffuse, height) { AxisDegrees = axis, TiltDegrees = tilt };
            var strip = new PlacedTube(TubeEmission.DownFacingStrip, Length.FromMetres(0.001), PhotonFlux.FromMicromolesPerSecond(1000 * Math.PI), height) { AxisDegrees = axis, TiltDegrees = tilt };
            Assert.Equal(strip.At(new(x, y)).MicromolesPerSquareMetre, luminaire.IlluminanceAt(new(x, y)).Lux, tolerance: 0.02);
        }, iter: 300);

    // (1 − cos τ)/2 of a flat diffuse piece goes above its level; of light that is the same all around, half, however it is turned.
    [Theory, InlineData(0), InlineData(30), InlineData(-60), InlineData(90)]
    public void goes_up_by_as_much_as_it_is_turned(double tilt)
    {
        Assert.Equal((1 - Math.Cos(tilt * Math.PI / 180)) / 2, Diffuse.UpwardShare(tilt), tolerance: 1e-3);
        var even = new LuminousIntensityDistribution(PhotometricType.C, [0, 90, 180], [0], [[10.0, 10, 10]]);
        Assert.Equal(0.5, even.UpwardShare(tilt), tolerance: 1e-9);
    }

    // A luminaire with a file in a box that reflects: like the strip it describes.
    [Fact]
    public void in_a_box_throws_back_what_the_strip_it_describes_does()
    {
        var box = new ReflectingCavity(Length.FromMetres(1.2), Length.FromMetres(0.8), Length.FromMetres(0.6), new(0.4, 0.7, 0.6));
        var tube = new PlacedTube(TubeEmission.DownFacingStrip, Length.FromMetres(0.001), PhotonFlux.FromMicromolesPerSecond(80), Length.FromMetres(0.5)) { TiltDegrees = 25 };
        var (strip, file) = (ShelfLight.Reflected([new LightSource(tube)], box), ShelfLight.Reflected([new LightSource(tube, Diffuse)], box));
        Assert.Equal(strip.MicromolesPerSquareMetre, file.MicromolesPerSquareMetre, tolerance: 2e-3 * strip.MicromolesPerSquareMetre);
    }

    private static LuminousIntensityDistribution Diffuse { get; } =
        new(PhotometricType.C, Down, [0], [Down.Select(angle => 1000 * Math.Cos(angle * Math.PI / 180)).ToArray()]);
}
