using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Checks;

/// <summary>One thing wrong at a time: the problem names the path and says value and range.</summary>
public class Problems_of_a_study
{
    public static TheoryData<string, string, Func<Study, Study>> Wrong => new()
    {
        { "Site.TimeZone", "\"Mars/Base\" is not known", s => s with { Site = s.Site with { TimeZone = "Mars/Base" } } },
        { "Site.Plant.CooledShare", "is 1.2; it must be 0 to 1", s => s with { Site = s.Site with { Plant = new() { CooledShare = 1.2 } } } },
        { "Site.Plant.Method", "need a weather file", s => s with { Site = s.Site with { Plant = new() { Method = PlantMethod.Hourly } } } },
        { "Site.Plant.HeatingBalance", "heated below 15 °C and cooled from 12 °C", s => s with { Site = s.Site with { Plant = new() { HeatingBalance = 15 } } } },
        { "Site.GridRegion", "\"MOON\" is not a grid region", s => s with { Site = s.Site with { GridRegion = "MOON" } } },
        { "Areas[1].Plant.InteractionFactor", "is 3; it must be 0 to 2", s => WithHall(s, hall => hall with { Plant = new() { InteractionFactor = 3 } }) },
        { "Areas[1].Plant.LatentShare", "is 1; it must be 0 to 0.9", s => WithHall(s, hall => hall with { Plant = new() { LatentShare = 1 } }) },
        { "Weather.DryBulb", "has 3 hours; it must have 8760", s => s with { Weather = new() { Name = "Short", DryBulb = [1, 2, 3] } } },
        { "Weather.DryBulb[8759]", "temperature of hour 8760 of the weather year is 99.9 °C", s => s with { Weather = new() { Name = "Hot", DryBulb = [.. SampleWeather.Steady(5).DryBulb.Take(8759), 99.9] } } },
        { "Lines[0].Reading.Amperes", "is 0; it must be 0.001 to 200", s => WithLine(s, line => line with { Reading = new(Power.FromWatts(60), new(2026, 1, 1)) { Amperes = 0 } }) },
        { "Lines[0].Count", "is -3; it must be 0 to", s => WithLine(s, line => line with { Count = -3 }) },
        { "Lines[0].LampsOut", "81 lamps are out", s => WithLine(s, line => line with { LampsOut = 81 }) },
        { "Lines[0].DeadBallasts", "41 ballasts are dead", s => WithLine(s, line => line with { DeadBallasts = 41 }) },
        { "Lines[0].Area", "\"cellar\"", s => WithLine(s, line => line with { Area = "cellar" }) },
        { "Lines[0].SetUp", "\"9-t9\"", s => WithLine(s, line => line with { SetUp = "9-t9" }) },
        { "Lines[1].Id", "used twice", s => s with { Lines = [s.Lines[0], s.Lines[1] with { Id = "racks" }] , Options = [] } },
        { "Areas[0].Seasons[1]", "overlap on 10 May", s => WithSeason(s, season => season with { Start = new(3, 1), End = new(5, 10) }) },
        { "Areas[0].Seasons[0].Stages", "take 200 days, but the season has 152", s => WithSeason(s, season => season with { Stages = [season.Stages[0] with { Days = 200 }] }) },
        { "Areas[0].Seasons[0].Stages[0].Days", "has no length", s => WithSeason(s, season => season with { Stages = [season.Stages[0] with { Days = null }, season.Stages[1]] }) },
        { "Areas[0].Seasons[0].Stages[0].Dimming", "is 0; it must be 0.01 to 1", s => WithSeason(s, season => season with { Stages = [season.Stages[0] with { Dimming = 0 }] }) },
        { "Areas[1].Weekly.Hours[1]", "overlap", s => WithHall(s, hall => hall with { Weekly = new() { Hours = [hall.Weekly!.Hours[0], new([IsoDayOfWeek.Friday], new(16, 0), new(18, 0))] } }) },
        { "Areas[1].Weekly.Hours[1]", "overlap", s => WithHall(s, hall => hall with { Weekly = new() { Hours = [new([IsoDayOfWeek.Sunday], new(22, 0), new(7, 0)), hall.Weekly!.Hours[0]] } }) },
        { "Tariff.Energy", "No energy price applies on 1 June", s => WithTariff(s, t => t with { Energy = [t.Energy[0], t.Energy[2]] }) },
        { "Tariff.Energy", "2 energy prices apply", s => WithTariff(s, t => t with { Energy = [.. t.Energy, t.Energy[2] with { Name = "Again" }] }) },
        { "Tariff.Energy[0].When.Windows[0]", "must end later than it begins", s => WithTariff(s, t => t with { Energy = [t.Energy[0] with { When = t.Energy[0].When with { Windows = [new(DayKind.Weekday, new(20, 0), new(12, 0))] } }, .. t.Energy.Skip(1)] }) },
        { "Tariff.Energy[2].Blocks[1].UpTo", "must have no upper end", s => WithTariff(s, t => t with { Energy = [t.Energy[0], t.Energy[1], t.Energy[2] with { Blocks = [t.Energy[2].Blocks[0], new(Energy.FromKilowattHours(9000), SampleTariff.Price(1))] }] }) },
        { "Tariff.Demand[0].WindowMinutes", "is 20 minutes", s => WithTariff(s, t => t with { Demand = [t.Demand[0] with { WindowMinutes = 20 }] }) },
        { "Tariff.Demand[0].Ratchet.Months", "is 12; it must be 1 to 11", s => WithTariff(s, t => t with { Demand = [t.Demand[0] with { Ratchet = new(0.8, 12) }] }) },
        { "Options[0].Measures[0].Line", "\"attic\"", s => s with { Options = [s.Options[0] with { Measures = [new("attic", new KeepAsIs())] }] } },
        { "ChosenOption", "\"best\"", s => s with { ChosenOption = "best" } },
        { "Assumptions.StudyYears", "is 41; it must be 1 to 40", s => s with { Assumptions = new() { StudyYears = 41 } } },
        { "Tariff.Energy[0].Blocks[0].Price", "is 1E+308; it must be zero or more and at most 1000000000", s => WithTariff(s, t => t with { Energy = [t.Energy[0] with { Blocks = [new(null, SampleTariff.Price(1e308))] }, .. t.Energy.Skip(1)] }) },
        { "Tariff.Demand[0].Price", "is 1E+30; it must be", s => WithTariff(s, t => t with { Demand = [t.Demand[0] with { Price = DemandPrice.FromPerKilowatt(1e30) }] }) },
        { "Tariff.Fixed[0].Amount", "is 1E+30; it must be", s => WithTariff(s, t => t with { Fixed = [new("Meter", Money.FromUnits(1e30))] }) },
        { "Site.BaseLoad", "is 1E+30; it must be", s => s with { Site = s.Site with { BaseLoad = Power.FromWatts(1e30) } } },
        { "Assumptions.BallastTime", "is 1E+300; it must be", s => s with { Assumptions = new() { BallastTime = OperatingTime.FromHours(1e300) } } },
        { "Catalogue.Lamps[0].Lives[0].Life", "is 1E-300; it must be 100 to 1000000", s => s with { Catalogue = s.Catalogue with { Lamps = [s.Catalogue.Lamps[0] with { Lives = [new(3, null, OperatingTime.FromHours(1e-300))] }, .. s.Catalogue.Lamps.Skip(1)] } } },
        { "Catalogue.Ballasts[0].RatedLife", "is 0.001; it must be 100 to 1000000", s => s with { Catalogue = s.Catalogue with { Ballasts = [s.Catalogue.Ballasts[0] with { RatedLife = OperatingTime.FromHours(0.001) }, .. s.Catalogue.Ballasts.Skip(1)] } } },
        { "Catalogue.SetUps[0].Ballasts[0].LampsDriven", "is 2147483647; it must be 1 to 100", s => s with { Catalogue = s.Catalogue with { SetUps = [s.Catalogue.SetUps[0] with { Ballasts = [new(null, int.MaxValue), new(null, int.MaxValue)] }, .. s.Catalogue.SetUps.Skip(1)] } } },
        { "Catalogue.SetUps[0].Lamp", "\"candle\"", s => s with { Catalogue = s.Catalogue with { SetUps = [s.Catalogue.SetUps[0] with { Lamp = "candle" }, .. s.Catalogue.SetUps.Skip(1)] } } },
    };

    [Theory, MemberData(nameof(Wrong), DisableDiscoveryEnumeration = true)]
    public void name_the_place_the_value_and_what_is_allowed(string path, string text, Func<Study, Study> spoil)
    {
        var problems = StudyEvaluation.Check(spoil(SampleStudy.Small));
        Assert.Contains(problems, problem => problem.Path == path && problem.Message.Contains(text, StringComparison.Ordinal));
    }

    [Fact]
    public void are_all_told_together_when_the_study_is_evaluated_all_the_same()
    {
        var spoilt = SampleStudy.Small with { ChosenOption = "best", Assumptions = new() { StudyYears = 0 } };
        var thrown = Assert.Throws<InvalidStudyException>(() => StudyEvaluation.Run(spoilt, new()));
        Assert.Equal(["ChosenOption", "Assumptions.StudyYears"], thrown.Problems.Select(problem => problem.Path));
    }

    private static Study WithLine(Study study, Func<SurveyLine, SurveyLine> change) => study with { Lines = [change(study.Lines[0]), .. study.Lines.Skip(1)] };

    private static Study WithSeason(Study study, Func<Season, Season> change) =>
        study with { Areas = [study.Areas[0] with { Seasons = [change(study.Areas[0].Seasons[0]), study.Areas[0].Seasons[1]] }, study.Areas[1]] };

    private static Study WithHall(Study study, Func<Area, Area> change) => study with { Areas = [study.Areas[0], change(study.Areas[1])] };

    private static Study WithTariff(Study study, Func<Tariff, Tariff> change) => study with { Tariff = change(study.Tariff) };
}
