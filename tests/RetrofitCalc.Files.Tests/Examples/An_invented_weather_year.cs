using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Files.Examples;

namespace RetrofitCalc.Files.Tests.Examples;

public class An_invented_weather_year
{
    private static readonly IReadOnlyList<double> Hours = WorkedExample.Load().Weather!.DryBulb;

    [Fact]
    public void is_labelled_as_invented_with_its_seed()
    {
        var weather = WorkedExample.Load().Weather!;
        Assert.Equal(EvidenceKind.Invented, weather.Source.Kind);
        Assert.Contains("seed 20260107", weather.Source.Source);
        Assert.Contains("invented", weather.Name);
    }

    [Fact]
    public void is_the_same_every_time() => Assert.Equal(Hours, WorkedExample.Load().Weather!.DryBulb);

    // A temperate inland place: cold winters, warm summers, nights colder than afternoons.
    [Fact]
    public void has_seasons_and_days()
    {
        double Mean(Func<int, bool> taken) => Hours.Where((_, hour) => taken(hour)).Average();
        Assert.InRange(Mean(_ => true), 8, 13);
        Assert.InRange(Mean(hour => hour / 24 is >= 181 and < 212), 17, 28);
        Assert.InRange(Mean(hour => hour / 24 < 31), -10, 2);
        Assert.True(Mean(hour => hour % 24 == 16) > Mean(hour => hour % 24 == 4) + 5);
        Assert.InRange(Hours.Min(), -35, -8);
        Assert.InRange(Hours.Max(), 26, 42);
    }
}
