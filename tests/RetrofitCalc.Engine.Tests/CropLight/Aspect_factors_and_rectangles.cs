using CsCheck;
using MathNet.Numerics.Integration;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.CropLight;

public class Aspect_factors_and_rectangles
{
    private static double Intensity(AxialClass line, double angle)
    {
        var cosine = Math.Cos(angle);
        return line switch
        {
            AxialClass.A => cosine,
            AxialClass.B => (cosine + cosine * cosine) / 2,
            AxialClass.C => Math.Pow(cosine, 2),
            AxialClass.D => Math.Pow(cosine, 3),
            _ => Math.Pow(cosine, 4),
        };
    }

    [Fact]
    public void of_a_line_are_the_integrals_that_define_them() =>
        Gen.Select(Gen.Enum<AxialClass>(), Gen.Double[-Math.PI / 2, Math.PI / 2]).Sample((line, angle) =>
        {
            Assert.Equal(Integral(a => Intensity(line, a) * Math.Cos(a), angle), AspectFactors.Parallel(line, angle), tolerance: 1e-9);
            Assert.Equal(Integral(a => Intensity(line, a) * Math.Sin(a), angle), AspectFactors.Perpendicular(line, angle), tolerance: 1e-9);
        }, iter: 200);

    [Theory, InlineData(1.5708), InlineData(double.NaN)]
    public void of_a_line_end_at_a_right_angle(double angle) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => AspectFactors.Parallel(AxialClass.A, angle));

    // A diffuse piece dA gives M dA cos²/(π r²) = M dA h²/(π r⁴) to a parallel level.
    [Fact]
    public void of_a_rectangle_are_what_its_pieces_give_together() =>
        Gen.Select(Gen.Double[0.2, 2], Gen.Double[0.2, 2], Gen.Double[0.3, 2], Gen.Select(Gen.Double[-2, 2], Gen.Double[-2, 2])).Sample((a, b, h, p) =>
        {
            var pieces = GaussLegendreRule.Integrate((x, y) => h * h / (Math.PI * Math.Pow(Square(x - p.Item1) + Square(y - p.Item2) + h * h, 2)), -a / 2, a / 2, -b / 2, b / 2, 128);
            var light = RectangleSource.At(Metres(a), Metres(b), PhotonFlux.FromMicromolesPerSecond(a * b), (new(p.Item1, p.Item2), Metres(h)));
            Assert.Equal(pieces, light.MicromolesPerSquareMetre, tolerance: 1e-8);
        }, iter: 100);

    // Two equal rectangles: the mean over one of what reaches it from the other.
    [Fact]
    public void between_equal_rectangles_are_the_mean_over_one_of_the_light_of_the_other() =>
        Gen.Select(Gen.Double[0.3, 2], Gen.Double[0.3, 2], Gen.Double[0.3, 2]).Sample((a, b, h) =>
        {
            var sum = GaussLegendreRule.Integrate(
                (x, y) => RectangleSource.At(Metres(a), Metres(b), PhotonFlux.FromMicromolesPerSecond(1), (new(x, y), Metres(h))).MicromolesPerSquareMetre,
                -a / 2, a / 2, -b / 2, b / 2, 64);
            Assert.Equal(sum, RectangleSource.ExchangeFactor(Metres(a), Metres(b), Metres(h)), tolerance: 1e-7);
        }, iter: 50);

    private static double Integral(Func<double, double> part, double angle) => angle == 0 ? 0 : GaussKronrodRule.Integrate(part, 0, angle, out _, out _, 1e-12);

    private static double Square(double value) => value * value;

    private static Length Metres(double value) => Length.FromMetres(value);
}
