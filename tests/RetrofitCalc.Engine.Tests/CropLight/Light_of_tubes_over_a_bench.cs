using CsCheck;
using MathNet.Numerics.Integration;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.CropLight;

public class Light_of_tubes_over_a_bench
{
    private static readonly Gen<PlacedTube> Tubes =
        from emission in Gen.Enum<TubeEmission>()
        from length in Gen.Double[0.1, 3]
        from output in Gen.Double[1, 500]
        from height in Gen.Double[0.05, 3]
        from x in Gen.Double[-1, 1]
        from y in Gen.Double[-1, 1]
        from axis in Gen.Double[-180, 180]
        from tilt in Gen.OneOf(Gen.Const(0.0), Gen.Double[-90, 90])
        select Tube(emission, length, output, height) with { Centre = new(x, y), AxisDegrees = axis, TiltDegrees = tilt };

    private static readonly Gen<PlanePoint> Points = Gen.Select(Gen.Double[-3, 3], Gen.Double[-3, 3]).Select((x, y) => new PlanePoint(x, y));

    // Definition: every small piece of the line is a point with intensity dI, and gives dI · cos/r². Adaptive Gauss-Kronrod of MathNet.
    [Fact]
    public void is_what_the_pieces_of_each_tube_give_together() =>
        Gen.Select(Tubes, Points).Sample((tube, point) =>
        {
            var pieces = GaussKronrodRule.Integrate(at => Piece(tube, point, at), -tube.Length.Metres / 2, tube.Length.Metres / 2, out _, out _, 1e-10);
            Assert.Equal(pieces, tube.At(point).MicromolesPerSquareMetre, tolerance: 1e-7 * tube.Output.MicromolesPerSecond + 1e-6 * pieces);
        }, iter: 300);

    private static double Piece(PlacedTube tube, PlanePoint point, double at)
    {
        double turn = tube.AxisDegrees * Math.PI / 180, tilt = tube.TiltDegrees * Math.PI / 180;
        double ux = Math.Cos(turn), uy = Math.Sin(turn), h = tube.Height.Metres;
        double dx = point.X - tube.Centre.X - at * ux, dy = point.Y - tube.Centre.Y - at * uy, r = Math.Sqrt(dx * dx + dy * dy + h * h);
        var along = (dx * ux + dy * uy) / r;
        var perMetre = tube.Output.MicromolesPerSecond / tube.Length.Metres;
        var intensity = tube.Emission == TubeEmission.BareTube
            ? perMetre / (Math.PI * Math.PI) * Math.Sqrt(1 - along * along)  // a diffuse cylinder: sine of the angle from its axis
            : perMetre / Math.PI * Math.Max(0, h * Math.Cos(tilt) + (dy * ux - dx * uy) * Math.Sin(tilt)) / r; // a flat diffuse piece: cosine from where it faces
        return intensity * (h / r) / (r * r);
    }

    [Fact]
    public void is_the_same_on_both_sides_and_both_ends() =>
        Gen.Select(Tubes, Points).Sample((tube, point) =>
        {
            var middle = tube with { Centre = default, AxisDegrees = 0, TiltDegrees = 0 };
            var light = middle.At(point).MicromolesPerSquareMetre;
            foreach (var mirrored in new PlanePoint[] { new(-point.X, point.Y), new(point.X, -point.Y), new(-point.X, -point.Y) })
                Assert.Equal(light, middle.At(mirrored).MicromolesPerSquareMetre, tolerance: 1e-9 * (1 + light));
        }, iter: 200);

    [Fact]
    public void turns_with_the_tube()
    {
        var along = Tube(TubeEmission.BareTube, 1.2, 54, 0.4);
        Assert.Equal(along.At(new(0.5, 0.2)).MicromolesPerSquareMetre, (along with { AxisDegrees = 90 }).At(new(-0.2, 0.5)).MicromolesPerSquareMetre, tolerance: 1e-12);
    }

    // Far away a flat source is a point with Φ/π straight down, a round one has Φ/π² across its axis.
    [Theory, InlineData(TubeEmission.DownFacingStrip, Math.PI), InlineData(TubeEmission.BareTube, Math.PI * Math.PI)]
    public void is_that_of_a_point_from_far_away(TubeEmission emission, double spread)
    {
        var light = Tube(emission, 1, 100, 100).At(default).MicromolesPerSquareMetre;
        Assert.Equal(100 / spread / (100.0 * 100), light, tolerance: 1e-4 * light);
    }

    // Bare or facing down with the same output: exactly 1/π straight below, at any height.
    [Theory, InlineData(0.1), InlineData(0.5), InlineData(4)]
    public void straight_below_a_bare_tube_is_a_third_of_that_below_a_strip(double height) =>
        Assert.Equal(1 / Math.PI, Tube(TubeEmission.BareTube, 1.2, 54, height).At(default) / Tube(TubeEmission.DownFacingStrip, 1.2, 54, height).At(default), tolerance: 1e-12);

    // 150 at 0.30 m: the inverse-square law would say 66.7 at 0.45 m; the line gives 93.4 (CAN-180).
    [Fact]
    public void between_rack_heights_does_not_follow_the_inverse_square()
    {
        var (near, far) = (Tube(TubeEmission.DownFacingStrip, 1.2, 54, 0.30).At(default), Tube(TubeEmission.DownFacingStrip, 1.2, 54, 0.45).At(default));
        Assert.True(far / near > 1.35 * Math.Pow(0.30 / 0.45, 2));
    }

    // All photons of a strip that faces down pass a wide enough level below it.
    [Fact]
    public void adds_up_to_the_output_over_a_wide_level()
    {
        var tube = Tube(TubeEmission.DownFacingStrip, 1, 100, 0.5);
        var total = GaussLegendreRule.Integrate((u, v) => Whole(tube, u, v), 0, Math.PI / 2, 0, Math.PI / 2, 128) * 4;
        Assert.Equal(100, total, tolerance: 0.05);
    }

    private static double Whole(PlacedTube tube, double u, double v)
    {
        double x = Math.Tan(u), y = Math.Tan(v);
        return tube.At(new(x, y)).MicromolesPerSquareMetre * (1 + x * x) * (1 + y * y);
    }

    // Turned the other way, the light lies on the other side; turned level, it leaves the place below dark.
    [Fact]
    public void turns_to_where_a_strip_faces() =>
        Gen.Select(Tubes, Points, Gen.Double[-90, 90]).Sample((tube, point, tilt) =>
        {
            PlacedTube middle = tube with { Centre = default, AxisDegrees = 0, TiltDegrees = tilt }, other = middle with { TiltDegrees = -tilt };
            var light = middle.At(point).MicromolesPerSquareMetre;
            Assert.Equal(light, other.At(new(point.X, -point.Y)).MicromolesPerSquareMetre, tolerance: 1e-9 * (1 + light));
            if (tube.Emission == TubeEmission.BareTube) Assert.Equal(light, (middle with { TiltDegrees = 0 }).At(point).MicromolesPerSquareMetre);
            else Assert.Equal(0, (middle with { TiltDegrees = 90 }).At(new(point.X, -Math.Abs(point.Y))).MicromolesPerSquareMetre, tolerance: 1e-9);
        }, iter: 200);

    // A level strip sends nothing up, one that stands on edge half; in between what passes down is what is not sent up.
    [Theory, InlineData(0), InlineData(40), InlineData(-75)]
    public void passes_down_what_a_turned_strip_does_not_send_up(double tilt)
    {
        var tube = Tube(TubeEmission.DownFacingStrip, 1, 100, 0.5) with { TiltDegrees = tilt };
        var total = GaussLegendreRule.Integrate((u, v) => Whole(tube, u, v), -Math.PI / 2, Math.PI / 2, -Math.PI / 2, Math.PI / 2, 256);
        Assert.Equal(100 - tube.Upwards.MicromolesPerSecond, total, tolerance: 0.1);
        Assert.Equal(50, (tube with { TiltDegrees = 90 }).Upwards.MicromolesPerSecond, tolerance: 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => tube with { TiltDegrees = 91 });
    }

    [Fact]
    public void adds_up_tube_by_tube()
    {
        var one = Tube(TubeEmission.DownFacingStrip, 1.2, 54, 0.3);
        Assert.Equal(2 * 71.9611, LightField.At([one, one], default).MicromolesPerSquareMetre, tolerance: 1e-3);
        Assert.Equal(PhotonFluxDensity.Zero, LightField.At([], default));
    }

    // At the level of the tube the closed form has no meaning.
    [Fact]
    public void needs_a_tube_with_length_above_the_level()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Tube(TubeEmission.BareTube, 1.2, 54, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Tube(TubeEmission.BareTube, 0, 54, 0.3));
    }

    private static PlacedTube Tube(TubeEmission emission, double length, double output, double height) =>
        new(emission, Length.FromMetres(length), PhotonFlux.FromMicromolesPerSecond(output), Length.FromMetres(height));
}
