using CsCheck;
using MathNet.Numerics.Integration;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.CropLight;

// All six sides of a closed box together get what a source inside sends out: what the closed forms say of the base, and what the
// definition (small pieces, each a point with dI · cos/r²) says of the other five.
public class Light_that_is_kept_in_a_box
{
    private static readonly Gen<PlacedTube> Tubes =
        from emission in Gen.Enum<TubeEmission>()
        from length in Gen.Double[0.3, 1.0]
        from height in Gen.Double[0.35, 0.7]
        from across in Gen.Double[-0.2, 0.2]
        from tilt in Gen.Double[-90, 90]
        select new PlacedTube(emission, Length.FromMetres(length), PhotonFlux.FromMicromolesPerSecond(100), Length.FromMetres(height))
        {
            Centre = new(0, across), TiltDegrees = tilt,
        };

    private const double HalfLength = 0.9, HalfWidth = 0.6, Top = 1.0;

    [Fact]
    public void is_all_that_a_tube_sends_out() => Tubes.Sample(tube =>
    {
        var onBase = Over((x, y) => tube.At(new(x, y)).MicromolesPerSquareMetre, HalfLength, (-HalfWidth, HalfWidth));
        var pieces = Over((x, y) => Pieces(tube, (x, y, 0), (0, 0, 1)), HalfLength, (-HalfWidth, HalfWidth));
        Assert.Equal(pieces, onBase, tolerance: 0.15);
        var onTop = Over((x, y) => Pieces(tube, (x, y, Top), (0, 0, -1)), HalfLength, (-HalfWidth, HalfWidth));
        var onSides = new[] { -1, 1 }.Sum(side =>
            Over((x, z) => Pieces(tube, (x, side * HalfWidth, z), (0, -side, 0)), HalfLength, (0, Top))
            + Over((y, z) => Pieces(tube, (side * HalfLength, y, z), (-side, 0, 0)), HalfWidth, (0, Top)));
        Assert.Equal(100, onBase + onTop + onSides, tolerance: 0.5);
    }, iter: 12);

    // What the box model says falls first on its surfaces is all of the output too, and with reflectance 0 the base has only the direct light.
    [Fact]
    public void is_the_same_with_every_reflection() =>
        Gen.Select(Tubes, Gen.Double[0, 0.95], Gen.Double[0, 0.95], Gen.Double[0, 0.95]).Sample((tube, floor, sides, top) =>
        {
            // Kept by the base alone, with all else white as far as it goes, cannot be more than was sent out.
            var box = Box(new(floor, sides, top));
            var onBase = Mean(tube, box) * box.Length.Metres * box.Width.Metres * (1 - floor);
            Assert.InRange(onBase, 0, 100 * (1 + 1e-6));
            Assert.Equal(0, ShelfLight.Reflected([tube], Box(default)).MicromolesPerSquareMetre, tolerance: 1e-9);
        }, iter: 40);

    // A box whose other surfaces throw back nearly everything leaves nearly all of the light to a base that keeps all.
    [Fact]
    public void falls_on_the_base_where_all_else_throws_it_back()
    {
        var tube = new PlacedTube(TubeEmission.BareTube, Length.FromMetres(0.8), PhotonFlux.FromMicromolesPerSecond(100), Length.FromMetres(0.7));
        var box = Box(new(0, 0.99, 0.99));
        Assert.InRange(Mean(tube, box) * box.Length.Metres * box.Width.Metres, 93, 100);
    }

    private static double Mean(PlacedTube tube, ReflectingCavity box) =>
        Over((x, y) => tube.At(new(x, y)).MicromolesPerSquareMetre, HalfLength, (-HalfWidth, HalfWidth)) / (box.Length.Metres * box.Width.Metres)
        + ShelfLight.Reflected([tube], box).MicromolesPerSquareMetre;

    private static ReflectingCavity Box(CavityShare reflectance) =>
        new(Length.FromMetres(2 * HalfLength), Length.FromMetres(2 * HalfWidth), Length.FromMetres(Top), reflectance);

    /// <summary>Light at a place on a surface that faces a way, by pieces of the tube.</summary>
    private static double Pieces(PlacedTube tube, (double X, double Y, double Z) at, (double X, double Y, double Z) faces)
    {
        var tilt = tube.TiltDegrees * Math.PI / 180;
        double y = at.Y - tube.Centre.Y, z = at.Z - tube.Height.Metres, perMetre = tube.Output.MicromolesPerSecond / tube.Length.Metres;
        return GaussLegendreRule.Integrate(along =>
        {
            double x = at.X - along, r = Math.Sqrt(x * x + y * y + z * z);
            var intensity = tube.Emission == TubeEmission.BareTube
                ? perMetre / (Math.PI * Math.PI) * Math.Sqrt(1 - x * x / (r * r))
                : perMetre / Math.PI * Math.Max(0, y * Math.Sin(tilt) - z * Math.Cos(tilt)) / r;
            return intensity * Math.Max(0, -(x * faces.X + y * faces.Y + z * faces.Z)) / (r * r * r);
        }, -tube.Length.Metres / 2, tube.Length.Metres / 2, 64);
    }

    private static double Over(Func<double, double, double> light, double half, (double Low, double High) other) =>
        GaussLegendreRule.Integrate(light, -half, half, other.Low, other.High, 64);
}
