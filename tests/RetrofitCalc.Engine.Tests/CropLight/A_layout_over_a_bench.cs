using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.CropLight;

public class A_layout_over_a_bench
{
    private static readonly FittedSource Four = new(4, Length.FromMetres(1.2), PhotonFlux.FromMicromolesPerSecond(54), TubeEmission.BareTube);

    // Four lamps 0.1 m apart about the middle: −0.15, −0.05, 0.05, 0.15 across.
    [Theory, InlineData(0), InlineData(90), InlineData(30)]
    public void lays_lamps_side_by_side_across_the_luminaire(double axis)
    {
        var sources = Sources(new LuminairePlace("a", new(0.2, 0.3), axis), Four);
        var turn = axis * Math.PI / 180;
        Assert.Equal([-0.15, -0.05, 0.05, 0.15], sources.Select(source => Math.Round((source.Tube.Centre.Y - 0.3) * Math.Cos(turn) - (source.Tube.Centre.X - 0.2) * Math.Sin(turn), 12)));
        Assert.All(sources, source => Assert.Equal(0, (source.Tube.Centre.X - 0.2) * Math.Cos(turn) + (source.Tube.Centre.Y - 0.3) * Math.Sin(turn), tolerance: 1e-12));
        Assert.All(sources, source => Assert.Equal((axis, 0.4, 54.0), (source.Tube.AxisDegrees, source.Tube.Height.Metres, source.Tube.Output.MicromolesPerSecond)));
    }

    [Fact]
    public void lights_only_the_lamps_of_a_step()
    {
        var fitted = Four with { LitLamps = [0, 3], Steps = new Dictionary<string, IReadOnlyList<int>> { ["inner"] = [2, 1, 1, 9] } };
        double[] At(string? step) => [.. Sources(new("a", default), fitted, step).Select(source => Math.Round(source.Tube.Centre.Y, 12))];
        Assert.Equal([-0.15, 0.15], At(null));
        Assert.Equal([-0.05, 0.05], At("inner"));
        Assert.Equal([-0.15, 0.15], At("a step this luminaire does not have"));
        Assert.Empty(Sources(new("a", default), fitted with { LitLamps = [] }));
    }

    [Fact]
    public void takes_the_ballasts_of_a_step_to_feed_neighbouring_lamps()
    {
        var setUp = new SetUp
        {
            Id = "s", Name = "s", Source = Provenance.None, Lamp = "l", Ballasts = [new(null, 1), new(null, 2)],
            Steps = [new("one of three", [0]), new("two of three", [1])],
        };
        var steps = FittedSource.StepsOf(setUp);
        Assert.Equal([0], steps["one of three"]);
        Assert.Equal([1, 2], steps["two of three"]);
    }

    [Fact]
    public void hangs_and_turns_luminaires_as_they_are()
    {
        var source = Sources(new LuminairePlace("a", default) { HigherBy = 0.25, TiltDegrees = -20, LampSpacing = Length.FromMetres(0.3) }, Four with { Share = 0.5 })[3];
        Assert.Equal((0.65, -20, 27), (source.Tube.Height.Metres, source.Tube.TiltDegrees, source.Tube.Output.MicromolesPerSecond));
        Assert.Equal(0.45, source.Tube.Centre.Y, tolerance: 1e-12);
    }

    [Fact]
    public void has_no_light_from_lines_nobody_knows() => Assert.Empty(Sources(new("b", default), Four));

    // 1000 cd · cos γ: flux 1000 π lm, 1000 cd straight down gives 1000/0.16 = 6250 lx at 0.4 m; at 74 lx per µmol 84.5 µmol.
    [Fact]
    public void has_one_source_for_a_luminaire_with_a_file()
    {
        double[] angles = [.. Enumerable.Range(0, 91).Select(i => (double)i)];
        var file = new LuminousIntensityDistribution(PhotometricType.C, angles, [0], [angles.Select(a => 1000 * Math.Cos(a * Math.PI / 180)).ToArray()]);
        var source = Assert.Single(Sources(new("a", default), Four with { Distribution = file, Factor = new LuxFactor(74) }));
        Assert.Equal(1000 * Math.PI / 74, source.Tube.Output.MicromolesPerSecond, tolerance: 0.02);
        Assert.Equal(6250 / 74.0, source.Over([default])[0].MicromolesPerSquareMetre, tolerance: 1e-9);
        var half = Assert.Single(Sources(new("a", default), Four with { Distribution = file, Factor = new LuxFactor(74), LitLamps = [0, 1] }));
        Assert.Equal(6250 / 148.0, half.Over([default])[0].MicromolesPerSquareMetre, tolerance: 1e-9);
        var rated = Assert.Single(Sources(new("a", default), Four with { Distribution = file }));
        Assert.Equal(216, rated.Tube.Output.MicromolesPerSecond, tolerance: 1e-9);
        Assert.Equal(0, rated.Upwards.MicromolesPerSecond);
    }

    [Fact]
    public void has_an_even_grid_for_maps()
    {
        var bench = new AreaLight { BenchLength = Length.FromMetres(1.2), BenchWidth = Length.FromMetres(0.6) };
        var grid = LightMap.GridOver(bench)!;
        var map = LightMap.Of(grid, [.. grid.Select(point => PhotonFluxDensity.FromMicromolesPerSquareMetre(100 + point.X + 10 * point.Y))]);
        Assert.Equal((48, 24), (map.X.Count, map.Y.Count));
        Assert.Equal(-0.5875, map.X[0], tolerance: 1e-12);
        Assert.Equal(100 + map.X[5] + 10 * map.Y[7], map.Light[7, 5], tolerance: 1e-12);
        Assert.Null(LightMap.GridOver(new AreaLight { BenchLength = Length.FromMetres(1) }));
        Assert.Throws<ArgumentException>(() => LightMap.Of(grid, []));
    }

    private static IReadOnlyList<LightSource> Sources(LuminairePlace place, FittedSource fitted, string? step = null) => BenchLayout.Sources(
        new AreaLight { Layout = [place] }, new(new Dictionary<string, FittedSource> { ["a"] = fitted }), Length.FromMetres(0.4), step);
}
