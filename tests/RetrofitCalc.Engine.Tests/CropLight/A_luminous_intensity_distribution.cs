using CsCheck;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.CropLight;

public class A_luminous_intensity_distribution
{
    private static LuminousIntensityDistribution Made(PhotometricType type, double[] verticals, double[] horizontals, Func<double, double, double> candelas) =>
        new(type, verticals, horizontals, [.. horizontals.Select(h => verticals.Select(v => candelas(v, h)).ToArray())]);

    private static double[] Steps(double from, double to, double step) => [.. Enumerable.Range(0, (int)Math.Round((to - from) / step) + 1).Select(i => from + i * step)];

    // The same light all around is 4π lumens for each candela, in every type and symmetry.
    [Theory]
    [InlineData(PhotometricType.C, 0, 180, 0, 0, 4)]
    [InlineData(PhotometricType.C, 0, 180, 0, 90, 4)]
    [InlineData(PhotometricType.C, 0, 180, 0, 180, 4)]
    [InlineData(PhotometricType.C, 0, 180, 90, 270, 4)]
    [InlineData(PhotometricType.C, 0, 180, 0, 360, 4)]
    [InlineData(PhotometricType.C, 0, 180, 0, 330, 4)]
    [InlineData(PhotometricType.C, 0, 90, 0, 0, 2)]
    [InlineData(PhotometricType.B, -90, 90, -90, 90, 2)]
    [InlineData(PhotometricType.B, -90, 90, 0, 90, 2)]
    [InlineData(PhotometricType.A, -90, 90, -90, 90, 2)]
    [InlineData(PhotometricType.A, 0, 90, 0, 90, 2)]
    public void of_even_light_has_the_flux_of_its_solid_angle(PhotometricType type, double v1, double v2, double h1, double h2, double pies)
    {
        var light = Made(type, Steps(v1, v2, 7.5), Steps(h1, h2, 30), (_, _) => 10);
        Assert.Equal(10 * pies * Math.PI, light.TotalFlux.Lumens, tolerance: 1e-9);
    }

    // I = I₀ cos γ down: π I₀, whatever the type; straight lines between angles of 1° miss less than 1 in 1000.
    [Fact]
    public void of_diffuse_light_has_the_same_flux_in_every_type()
    {
        static double Cos(double degrees) => Math.Max(0, Math.Cos(degrees * Math.PI / 180));
        var c = Made(PhotometricType.C, Steps(0, 90, 1), [0], (v, _) => 1000 * Cos(v));
        var b = Made(PhotometricType.B, Steps(-90, 90, 1), Steps(-90, 90, 1), (v, h) => 1000 * Cos(v) * Cos(h));
        var a = Made(PhotometricType.A, Steps(-90, 90, 1), Steps(-90, 90, 1), (v, h) => 1000 * Cos(v) * Cos(h));
        foreach (var light in new[] { c, b, a })
        {
            Assert.Equal(1000 * Math.PI, light.TotalFlux.Lumens, tolerance: 3);
            Assert.Equal(1000 * 0.5 / Math.Sqrt(0.3 * 0.3 + 0.4 * 0.4 + 0.5 * 0.5), light.IntensityTowards(0.3, 0.4, 0.5), tolerance: 1);
        }
    }

    // Straight lines in both angles: halfway between 10 and 20, and between planes 10/20 and 30/40.
    [Fact]
    public void follows_straight_lines_between_its_angles()
    {
        var light = Made(PhotometricType.C, [0, 90], [0, 90], (v, h) => 10 + (v > 0 ? 10 : 0) + (h > 0 ? 20 : 0));
        Assert.Equal(15, light.IntensityAt(45, 0));
        Assert.Equal(25, light.IntensityAt(45, 45));
        Assert.Equal(0, light.IntensityAt(90.001, 0));
    }

    // Mirror images by symmetry; every whole turn is the same.
    [Theory]
    [InlineData(0, 90, new[] { 30.0, 150, 210, 330, -30, 390 })]
    [InlineData(0, 180, new[] { 30.0, 330, -30, 390 })]
    [InlineData(90, 270, new[] { 150.0, 30, 390, -330 })]
    public void repeats_what_its_planes_leave_out(double first, double last, double[] same)
    {
        var light = Made(PhotometricType.C, [0, 90], Steps(first, last, 30), (_, h) => h + 1);
        Assert.All(same, horizontal => Assert.Equal(light.IntensityAt(45, same[0]), light.IntensityAt(45, horizontal), tolerance: 1e-9));
    }

    // Planes 0 … 330: halfway from 330 back to 0.
    [Fact]
    public void goes_on_from_the_last_plane_to_the_first()
    {
        var light = Made(PhotometricType.C, [0, 90], Steps(0, 330, 30), (_, h) => h);
        Assert.Equal(165, light.IntensityAt(45, 345), tolerance: 1e-9);
    }

    // A point of I cd at h: I/h² lux below it. A diffuse line with flux Φ gives what the strip of the closed form does.
    [Fact]
    public void over_a_level_gives_the_light_of_a_point_or_of_a_line()
    {
        var point = Made(PhotometricType.C, Steps(0, 90, 1), [0], (v, _) => 1000 * Math.Cos(v * Math.PI / 180) + 1e-12);
        Assert.Equal(250, new PlacedLuminaire(point, Length.FromMetres(2)).IlluminanceAt(default).Lux, tolerance: 1e-6);
        Gen.Select(Gen.Double[0.2, 2], Gen.Double[0, 1.5], Gen.Double[0, 1], Gen.Double[-180, 180]).Sample((height, x, y, axis) =>
        {
            var line = new LuminousIntensityDistribution(PhotometricType.C, point.VerticalDegrees, [0], point.Candelas) { Opening = new(0, 1.2, 0) };
            var lux = new PlacedLuminaire(line, Length.FromMetres(height)) { AxisDegrees = axis }.IlluminanceAt(new(x, y)).Lux;
            var strip = new PlacedTube(TubeEmission.DownFacingStrip, Length.FromMetres(1.2), PhotonFlux.FromMicromolesPerSecond(1000 * Math.PI), Length.FromMetres(height)) { AxisDegrees = axis };
            Assert.Equal(strip.At(new(x, y)).MicromolesPerSquareMetre, lux, tolerance: 0.02 * lux);
        }, iter: 100);
    }

    [Fact]
    public void needs_angles_that_rise_and_light_of_zero_or_more()
    {
        Assert.Throws<ArgumentException>(() => Made(PhotometricType.C, [0, 0], [0], (_, _) => 1));
        Assert.Throws<ArgumentException>(() => Made(PhotometricType.C, [0], [0], (_, _) => 1));
        Assert.Throws<ArgumentException>(() => Made(PhotometricType.B, [0, 90], [0], (_, _) => 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Made(PhotometricType.C, [0, 181], [0], (_, _) => 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Made(PhotometricType.C, [0, 90], [0], (_, _) => -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new PlacedLuminaire(Made(PhotometricType.C, [0, 90], [0], (_, _) => 1), Length.Zero));
    }
}
