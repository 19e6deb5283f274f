using CsCheck;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.CropLight;

public class A_field_of_many_tubes
{
    private static readonly Gen<PlacedTube> Tubes =
        from emission in Gen.Enum<TubeEmission>()
        from length in Gen.Double[0.1, 3]
        from output in Gen.Double[1, 500]
        from height in Gen.Double[0.05, 3]
        from x in Gen.Double[-2, 2]
        from y in Gen.Double[-2, 2]
        from axis in Gen.Double[-180, 180]
        from tilt in Gen.OneOf(Gen.Const(0.0), Gen.Double[-90, 90])
        select new PlacedTube(emission, Length.FromMetres(length), PhotonFlux.FromMicromolesPerSecond(output), Length.FromMetres(height))
        {
            Centre = new(x, y), AxisDegrees = axis, TiltDegrees = tilt,
        };

    private static readonly Gen<PlanePoint> Points = Gen.Select(Gen.Double[-4, 4], Gen.Double[-4, 4]).Select((x, y) => new PlanePoint(x, y));

    // The formula of a tube, point by point, is what can be read; both agree to 1e-12. Behind a turned strip nothing is left of what was
    // taken away, and beyond the end of a tube its two ends nearly cancel: there they agree to 1e-12 of the light facing down, and to
    // 1e-15 of the light beside the tube's middle.
    [Fact]
    public void is_the_sum_of_its_tubes_point_by_point() =>
        Gen.Select(Tubes.List[1, 9], Points.List[0, 30]).Sample((tubes, points) =>
        {
            var field = LightField.Over(tubes, points);
            Assert.Equal(points.Count, field.Count);
            foreach (var (point, light) in points.Zip(field))
                Assert.Equal(
                    LightField.At(tubes, point).MicromolesPerSquareMetre, light.MicromolesPerSquareMetre,
                    tolerance: tubes.Sum(tube => 1e-12 * Light(Level(tube), point) + 1e-15 * Light(Beside(Level(tube), point), point)));
        }, iter: 500);

    private static double Light(PlacedTube tube, PlanePoint point) => tube.At(point).MicromolesPerSquareMetre;

    private static PlacedTube Level(PlacedTube tube) => tube with { TiltDegrees = 0 };

    /// <summary>The tube drawn along its axis until its middle is beside the point.</summary>
    private static PlacedTube Beside(PlacedTube tube, PlanePoint point)
    {
        var (sine, cosine) = Math.SinCos(tube.AxisDegrees * Math.PI / 180);
        var along = (point.X - tube.Centre.X) * cosine + (point.Y - tube.Centre.Y) * sine;
        return tube with { Centre = new(tube.Centre.X + along * cosine, tube.Centre.Y + along * sine) };
    }

    [Fact]
    public void is_that_of_lamps_and_luminaires_together() =>
        Gen.Select(Tubes, Tubes, Points).Sample((first, second, point) =>
        {
            double[] angles = [0, 30, 60, 90];
            var file = new LuminousIntensityDistribution(PhotometricType.C, angles, [0], [[400.0, 350, 200, 0]]);
            LightSource[] sources = [new(first), new(second, file)];
            var sum = first.At(point) + sources[1].Over([point])[0];
            Assert.Equal(sum.MicromolesPerSquareMetre, LightField.Over(sources, [point])[0].MicromolesPerSquareMetre, tolerance: 1e-12 * (1 + sum.MicromolesPerSquareMetre));
        }, iter: 100);

    [Fact]
    public void is_dark_without_tubes() => Assert.Equal([PhotonFluxDensity.Zero, PhotonFluxDensity.Zero], LightField.Over(Array.Empty<PlacedTube>(), [default, new(1, 1)]));
}
