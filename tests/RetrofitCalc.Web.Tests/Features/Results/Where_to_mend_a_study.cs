using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Tests.Features.Results;

public class Where_to_mend_a_study
{
    [Theory]
    [InlineData("Site.PowerFactor", "Tariff")] // the field stands with the clause that needs it
    [InlineData("Site.TimeZone", "Survey")]
    [InlineData("Lines[3].Count", "Survey")]
    [InlineData("Areas[2].Seasons[0].End", "Schedules")]
    [InlineData("Tariff.EnergyCharges[0].Price", "Tariff")]
    [InlineData("Assumptions.StudyYears", "Options")]
    [InlineData("Options[1].Measures[0]", "Options")]
    public void Is_the_place_that_shows_the_field(string path, string place) => Assert.Equal(place, ProblemPlace.Of(path).Name);
}
