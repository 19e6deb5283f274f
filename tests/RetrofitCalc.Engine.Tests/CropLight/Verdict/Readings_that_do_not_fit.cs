using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.CropLight.Verdict;

/// <summary>E-62 on the sample bench, whose 24 readings show 80 % of the lamps' light: what one taken in the shade of a hand does to the model.</summary>
public class Readings_that_do_not_fit
{
    private const int Shaded = 6; // second row, third column

    private static Study Shade(params int[] confirmed) => Changed((set, place, value) => set == "low" && place == Shaded ? 0.5 * value : value, confirmed);

    private static Study Changed(Func<string, int, double?, double?> value, params int[] confirmed) => SampleBench.Study.WithLight(light => light with
    {
        Readings = [.. light.Readings.Select(set => set with
        {
            Values = [.. set.Values.Select((row, at) => row.Select((read, column) => value(set.Id, at * row.Count + column, read)).ToArray())],
            Confirmed = set.Id == "low" ? confirmed : [],
        })],
    });

    private static FittedLight Fit(Study study) => LightMaps.Of(study, "bench", null)!.Fit!;

    [Fact]
    public void are_left_out_of_the_model_which_then_meets_all_others()
    {
        var fit = Fit(Shade());
        Assert.Equal([Shaded], fit.LeftOut);
        Assert.Equal((0.8, 0.0), (Math.Round(fit.Strip, 9), Math.Round(fit.RootMeanSquare, 9)));
        Assert.Equal(1, fit.Residuals[Shaded], 1e-9); // half was read of what the model says
        Assert.Equal(24, fit.Residuals.Count);
    }

    [Fact]
    public void are_said_to_be_left_out()
    {
        Assert.Contains("One reading does not fit those around it and is left out of the model", Fit(Shade()).Determined, StringComparison.Ordinal);
        Assert.Contains("One reading does not fit those around it and is left out of the model", Shade().Verdict().RestsOn, StringComparison.Ordinal);
        Assert.DoesNotContain("left out", SampleBench.Study.Verdict().RestsOn, StringComparison.Ordinal);
    }

    // An inner place of a quarter of 4 × 3 places counts 1 of 3 · 2 cells: half of its reading goes from the mean as 1/12 of it.
    [Fact]
    public void still_count_in_the_mean() =>
        Assert.Equal(SampleBench.Light.Readings[0].Values[1][2]!.Value / 12,
            SampleBench.Study.Verdict().Now!.Mean.MicromolesPerSquareMetre - Shade().Verdict().Now!.Mean.MicromolesPerSquareMetre, 1e-9);

    [Fact]
    public void count_once_someone_has_confirmed_them()
    {
        var fit = Fit(Shade(Shaded));
        Assert.Empty(fit.LeftOut);
        Assert.True(fit.RootMeanSquare > 0.05);
        Assert.True(fit.Strip < 0.8);
    }

    // 80 % · 1.5 = 120 % of the rated light, the meter good for 5 %; 80 % · 1.3 = 104 % may be the meter.
    [Theory]
    [InlineData(1.5, true)]
    [InlineData(1.3, false)]
    public void raise_a_question_where_they_find_more_than_lamps_are_rated_for(double factor, bool asked)
    {
        var study = Changed((_, _, value) => factor * value);
        Assert.Equal(asked, study.Verdict().Warnings.Any(warning => warning.Contains("120 % of the light the lamps are rated for", StringComparison.Ordinal)));
        Assert.Equal(asked, Fit(study).TooMuch is not null);
    }
}
