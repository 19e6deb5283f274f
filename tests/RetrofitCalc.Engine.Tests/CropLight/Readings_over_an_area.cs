using CsCheck;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Tests.CropLight;

public class Readings_over_an_area
{
    private static readonly Gen<double[]> Places = Gen.Double[0.01, 1].Array[2, 8].Select(steps => steps.Select((_, i) => steps.Take(i).Sum()).ToArray());

    // The trapezoid rule is exact for a plane: its mean is the value in the middle.
    [Fact]
    public void at_crossings_give_the_mean_of_a_plane_however_uneven_they_lie() =>
        Gen.Select(Places, Places).Sample((x, y) =>
        {
            double Plane(double px, double py) => 10 + 3 * px + 5 * py;
            var found = Statistics([.. y.SelectMany(row => x.Select(column => Plane(column, row)))], AreaWeights.OfNodes(x, y));
            Assert.Equal(Plane((x[0] + x[^1]) / 2, (y[0] + y[^1]) / 2), found.Mean.MicromolesPerSquareMetre, tolerance: 1e-9);
        }, iter: 200);

    // A whole grid of 3 × 3 and its quadrant of 2 × 2 from the middle tell the same.
    [Fact]
    public void of_a_quadrant_mirrored_have_the_mean_of_the_whole()
    {
        double[] whole = [1, 2, 1, 2, 8, 2, 1, 2, 1], quadrant = [8, 2, 2, 1];
        Assert.Equal(
            Statistics(whole, AreaWeights.OfNodes([-1, 0, 1], [-1, 0, 1])).Mean.MicromolesPerSquareMetre,
            Statistics(quadrant, AreaWeights.OfNodes([0, 1], [0, 1])).Mean.MicromolesPerSquareMetre);
        Assert.Equal(
            Statistics(whole, AreaWeights.OfCells(9)).Mean.MicromolesPerSquareMetre,
            Statistics(quadrant, AreaWeights.OfMirroredNodes(2, 2)).Mean.MicromolesPerSquareMetre, tolerance: 1e-12);
    }

    // Rings cover the disc whole, whatever the radii: their weights are r² of the last, without π.
    [Fact]
    public void outwards_share_the_whole_disc_among_them() =>
        Gen.Double[0, 3].Array[1, 20].Where(radii => radii.Max() > 0).Sample(radii =>
            Assert.Equal(radii.Max() * radii.Max(), AreaWeights.OfRings(radii).Sum(), tolerance: 1e-9), iter: 200);

    // Two lines outwards with the example 200/185/150/110/80 on each: the same mean, 123.75.
    [Fact]
    public void outwards_on_two_lines_share_each_ring()
    {
        double[] radii = [0, 0.1, 0.2, 0.3, 0.4], readings = [200, 185, 150, 110, 80];
        var found = Statistics([.. readings, .. readings], AreaWeights.OfRings([.. radii, .. radii]));
        Assert.Equal(123.75, found.Mean.MicromolesPerSquareMetre, tolerance: 1e-9);
    }

    // 2 readings, areas 3 and 1: mean (300 + 60)/4 = 90, deviation √((3·10² + 30²)/4) = 17.32.
    [Fact]
    public void spread_and_share_count_by_area()
    {
        var found = Statistics([100, 60], [3, 1]);
        Assert.Equal(Math.Sqrt(300) / 90, found.CoefficientOfVariation!.Value, tolerance: 1e-12);
        Assert.Equal(0.75, found.ShareAtOrAbove(PhotonFluxDensity.FromMicromolesPerSquareMetre(100)));
        Assert.Equal(60.0 / 90, found.MinimumToMean!.Value, tolerance: 1e-12);
        Assert.Equal(90 * 16 * 0.0036, found.Daily(OperatingTime.FromHours(16)).MolesPerSquareMetre, tolerance: 1e-12);
    }

    [Fact]
    public void in_the_dark_have_no_uniformity()
    {
        var dark = Statistics([0, 0], [1, 1]);
        Assert.Null(dark.MinimumToMean);
        Assert.Null(dark.MinimumToMaximum);
        Assert.Null(dark.CoefficientOfVariation);
    }

    [Fact]
    public void need_a_weight_each()
    {
        Assert.Throws<ArgumentException>(() => Statistics([], []));
        Assert.Throws<ArgumentException>(() => Statistics([1, 2], [1]));
        Assert.Throws<ArgumentException>(() => Statistics([1, 2], [0, 0]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Statistics([1, 2], [2, -1]));
        Assert.Throws<ArgumentException>(() => AreaWeights.OfNodes([0, 0], [0, 1]));
        Assert.Throws<ArgumentException>(() => AreaWeights.OfRings([0]));
    }

    // 12 mol under 180: 18.52 h. A crop that bears 16 h, or a light of 100 (33 h), cannot have it.
    [Fact]
    public void cannot_reach_a_daily_light_with_more_hours_than_the_crop_bears()
    {
        var wanted = DailyLight.FromMolesPerSquareMetre(12);
        Assert.Equal(18.519, wanted.HoursUnder(Light(180), OperatingTime.FromHours(24))!.Value.Hours, tolerance: 1e-3);
        Assert.Null(wanted.HoursUnder(Light(180), OperatingTime.FromHours(16)));
        Assert.Null(wanted.HoursUnder(Light(100), OperatingTime.FromHours(24)));
        Assert.Null(wanted.HoursUnder(PhotonFluxDensity.Zero, OperatingTime.FromHours(24)));
        Assert.Equal(OperatingTime.Zero, DailyLight.FromMolesPerSquareMetre(0).HoursUnder(PhotonFluxDensity.Zero, OperatingTime.FromHours(24)));
    }

    // A shelf of 1.2 × 0.6 m: by its longer side 6 × 3, by its shorter 9 × 5; the finer is kept. 50 m: 10 m at most.
    [Fact]
    public void lie_as_close_as_the_finer_rule_says()
    {
        Assert.Equal(new GridSpacing(9, 5), GridSpacing.For(Length.FromMetres(1.2), Length.FromMetres(0.6)));
        Assert.Equal(10, GridSpacing.Largest(Length.FromMetres(1000)).Metres);
        Assert.Equal(new GridSpacing(10, 10), GridSpacing.For(Length.FromMetres(10), Length.FromMetres(10)));
    }

    private static LightStatistics Statistics(double[] readings, IReadOnlyList<double> weights) => LightStatistics.Of([.. readings.Select(Light)], weights);

    private static PhotonFluxDensity Light(double value) => PhotonFluxDensity.FromMicromolesPerSquareMetre(value);
}
