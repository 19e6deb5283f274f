using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.CropLight.Verdict;

/// <summary>E-83 on the sample bench against a plain search through studies evaluated whole.</summary>
public class A_search_for_the_least_watts
{
    private static readonly CatalogueExtract More = new() { Tubes = [SampleBench.Tube("between", 31, 16.5)] };

    [Fact]
    public void finds_what_trying_every_study_finds()
    {
        var study = Wanting(0.55);
        var found = LightSearch.Of(study, "tubes", "bench", "Year", "Growing", More);
        var whole = study with { Catalogue = study.Catalogue with { Tubes = [.. study.Catalogue.Tubes, .. More.Tubes] } };
        var brute = (from way in found.Tried
                     let option = StudyEvaluation.Run(LightSearch.Apply(whole, "tubes", "bench", ("Year", "Growing"), way), new()).Options[0]
                     select (Way: way, Stage: option.Light.Stages[0], Watts: option.After.Site.Lighting.KilowattHours / 5840 * 1000)).ToList();
        Assert.All(brute, each => Assert.Equal((each.Stage.After, each.Stage.Verdict == LightVerdict.Keeps && Enough(each.Stage), Math.Round(each.Watts, 6)), (each.Way.Light, each.Way.Meets, Math.Round(each.Way.Power.Watts, 6))));
        Assert.Equal(brute.Where(each => each.Way.Meets).Min(each => each.Watts), found.Least!.Power.Watts, 1e-6);
    }

    // Readings at 0.4 and 0.6 m reach from 0.2 to 0.9 m: 29 heights; four tubes with two steps and a bar without.
    [Fact]
    public void tries_every_height_step_and_product()
    {
        var found = LightSearch.Of(Wanting(0.55), "tubes", "bench", "Year", "Growing", More);
        Assert.Equal(29 * (4 * 2 + 1), found.Tried.Count);
        Assert.Equal((0.2, 0.9), (Math.Round(found.Tried.Min(way => way.Height.Metres), 9), Math.Round(found.Tried.Max(way => way.Height.Metres), 9)));
    }

    // Read 0.4 to 20 m below: 0.2 to 30 m are 1,193 heights 2.5 cm apart, so 0.525 m (21 times as far) apart: 0.525 to 29.925 m.
    [Fact]
    public void lies_its_heights_further_apart_in_a_high_hall()
    {
        var heights = LightSearch.HeightsWithin((Quantities.Length.FromMetres(0.4), Quantities.Length.FromMetres(20)));
        Assert.Equal((57, 0.525, 29.925), (heights.Count, Math.Round(heights[0], 9), Math.Round(heights[^1], 9)));
        Assert.True(heights.Count <= LightSearch.MostHeights);
    }

    [Fact]
    public void stops_when_it_is_told_to()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => LightSearch.Of(Wanting(0.55), "tubes", "bench", "Year", "Growing", More, stop.Token));
    }

    // 2 sets of 81 × 81 readings times 80 luminaires of two lamps are 2,099,520.
    [Fact]
    public void refuses_more_than_can_be_tried()
    {
        IReadOnlyList<double> places = [.. Enumerable.Range(0, 81).Select(number => -0.2 + number * 0.005)];
        IReadOnlyList<double?> row = [.. places.Select(_ => (double?)100)];
        var large = Wanting(0.55).WithLight(light => light with
        {
            Layout = [.. Enumerable.Repeat(new LuminairePlace("bench", default), 80)],
            Readings = [.. light.Readings.Select(set => set with { Columns = places, Rows = places, Values = [.. places.Select(_ => row)] })],
        });
        var found = LightSearch.Of(large, "tubes", "bench", "Year", "Growing", More);
        Assert.Empty(found.Tried);
        Assert.Contains("readings times lamps are 2,099,520", found.Ask, StringComparison.Ordinal);
    }

    [Fact]
    public void draws_a_curve_that_no_way_beats()
    {
        var found = LightSearch.Of(Wanting(0.55), "tubes", "bench", "Year", "Growing", More);
        static bool Beats(LightTry one, LightTry other) =>
            one.Light.Mean >= other.Light.Mean && one.Light.MinimumToMean >= other.Light.MinimumToMean
            && (one.Light.Mean > other.Light.Mean || one.Light.MinimumToMean > other.Light.MinimumToMean);
        var unbeaten = found.Tried.Where(way => !found.Tried.Any(other => Beats(other, way))).Select(way => (way.Light.Mean, way.Light.MinimumToMean)).Distinct().OrderByDescending(each => each.Mean);
        Assert.Equal(unbeaten, found.Curve.Select(way => (way.Light.Mean, way.Light.MinimumToMean)));
        Assert.True(found.Curve.Count > 3);
    }

    // At least 0.55 and at most 0.65 of the light now: brighter ways meet the least, but are no answer.
    [Fact]
    public void does_not_take_a_way_that_gives_more_than_wanted()
    {
        var study = Wanting(0.55).WithStage(stage => stage with { Target = stage.Target! with { MostDaily = DailyLight.FromMolesPerSquareMetre(stage.Target.LeastDaily!.Value.MolesPerSquareMetre * 65 / 55) } });
        var found = LightSearch.Of(study, "tubes", "bench", "Year", "Growing", More);
        var most = LightWanted.Most(study.Areas[0].Seasons[0].Stages[0].Target, OperatingTime.FromHours(16))!.Value;
        Assert.Contains(found.Tried, way => way is { Meets: true, TooMuch: true });
        Assert.All(found.Tried, way => Assert.Equal(way.Light.Mean.MicromolesPerSquareMetre > most.MicromolesPerSquareMetre * (1 + 1e-6), way.TooMuch));
        Assert.True(found.Least is null or { TooMuch: false, Meets: true });
    }

    [Fact]
    public void has_no_answer_where_nothing_is_enough()
    {
        var found = LightSearch.Of(Wanting(20), "tubes", "bench", "Year", "Growing", new());
        Assert.Null(found.Least);
        Assert.NotEmpty(found.Tried);
    }

    [Fact]
    public void asks_for_a_layout()
    {
        var found = LightSearch.Of(Wanting(0.5).WithLight(light => light with { Layout = [] }), "tubes", "bench", "Year", "Growing", new());
        Assert.Empty(found.Tried);
        Assert.Contains("Lay out the luminaires", found.Ask, StringComparison.Ordinal);
    }

    private static bool Enough(StageLight stage) => stage.After!.Daily.CompareTo(stage.Target!.LeastDaily!.Value) >= 0;

    private static Study Wanting(double share) =>
        SampleBench.Study.WithStage(stage => stage with { Target = SampleBench.Target(share * SampleBench.Study.Verdict().Now!.Daily.MolesPerSquareMetre) });
}
