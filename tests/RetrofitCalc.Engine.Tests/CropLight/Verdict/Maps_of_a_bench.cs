using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.CropLight.Verdict;

public class Maps_of_a_bench
{
    [Fact]
    public void show_what_the_closed_forms_give_everywhere()
    {
        var maps = LightMaps.Of(SampleBench.Study, "bench", "tubes")!;
        var points = LightMap.GridOver(SampleBench.Light)!;
        var light = SampleBench.Closed(0.4, 0.8 * 36, points, -0.05, 0.05);
        var columns = maps.Now.X.Count;
        Assert.All(light.Index(), each => Assert.Equal(each.Item, maps.Now.Light[each.Index / columns, each.Index % columns], 1e-6));
        Assert.All(light.Index(), each => Assert.Equal(0.75 * each.Item, maps.After!.Light[each.Index / columns, each.Index % columns], 1e-6));
    }

    [Fact]
    public void share_one_scale_and_tell_how_the_model_meets_the_readings()
    {
        var maps = LightMaps.Of(SampleBench.Study, "bench", "tubes")!;
        Assert.Equal(maps.After!.Light.Cast<double>().Min(), maps.Scale.Low.MicromolesPerSquareMetre, 1e-9);
        Assert.Equal(maps.Now.Light.Cast<double>().Max(), maps.Scale.High.MicromolesPerSquareMetre, 1e-9);
        Assert.Equal(24, maps.Readings.Count);
        Assert.All(maps.Readings, reading => Assert.Equal(0, reading.Residual, 1e-6));
    }

    [Fact]
    public void are_the_readings_themselves_without_a_layout()
    {
        var maps = LightMaps.Of(SampleBench.Study.WithLight(light => light with { Layout = [] }), "bench", "tubes")!;
        Assert.Equal((4, 3), (maps.Now.X.Count, maps.Now.Y.Count));
        Assert.Equal(SampleBench.Light.Readings[0].Values[1][2]!.Value, maps.Now.Light[1, 2], 1e-9);
        Assert.Equal(0.75 * maps.Now.Light[1, 2], maps.After!.Light[1, 2], 1e-9);
        Assert.Null(maps.Fit);
    }

    [Fact]
    public void are_those_of_a_stage_where_one_is_named()
    {
        var study = SampleBench.Study.WithStage(stage => stage with { LitStep = SampleBench.Half });
        Assert.True(LightMaps.Of(study, "bench", null, ("Year", "Growing"))!.Scale.High < LightMaps.Of(study, "bench", null)!.Scale.High);
    }

    [Fact]
    public void are_not_drawn_without_readings() => Assert.Null(LightMaps.Of(SampleBench.Study.WithArea(area => area with { Light = null }), "bench", "tubes"));
}
