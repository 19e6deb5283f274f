using NodaTime;
using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Cases;

public class Present_lighting_by_the_interval
{
    /// <summary>Whatever the grid, its energy is that of the lighting and its plant; 2027 has 8,760 hours in New York.</summary>
    [Theory, InlineData(15, 35_040), InlineData(60, 8_760)]
    public void sums_to_the_energy_of_the_year(int minutes, int intervals)
    {
        var study = SampleStudy.Small;
        var now = StudyEvaluation.Run(study, new()).Now;
        var watts = PresentLoad.Watts(study, new LocalDate(2027, 1, 1), minutes);
        Assert.Equal(intervals, watts.Count);
        Assert.Equal((now.Site.Lighting + now.Site.Plant).KilowattHours, watts.Sum() * minutes / 60 / 1000, 1e-6);
    }
}
