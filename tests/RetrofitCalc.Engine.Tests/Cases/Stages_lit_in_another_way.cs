using NodaTime;
using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Tests.Cases;

/// <summary>E-75 with numbers anyone can redo: a rack of 6 kW lit 6 to 14, and an option that lights it 8 to 14.</summary>
public class Stages_lit_in_another_way
{
    // 6 kW × 2 h × 365 days × 0.10 = 438.
    [Fact]
    public void save_the_hours_left_out()
    {
        var option = Evaluate(Rack());
        Assert.Equal(438, option.AnnualBillSaving.Units, 1e-6);
        Assert.Equal(6.0 * 365, option.After.Lines[0].Hours.Hours, 1e-9);
        Assert.Equal(6.0 * 365, option.After.Site.Hours.Hours, 1e-9);
        Assert.Equal(6.0 * 365, option.After.Seasons[0].Hours.Hours, 1e-9);
        Assert.Equal(6.0 * 6 * 365, option.After.Site.Lighting.KilowattHours, 1e-6);
    }

    // 11 kW on the meter while lit and 5 kW else: from 6 to 8 it shows 5 kW once the lights stay off, and 12 × 10 a kilowatt still bills 11 kW.
    [Fact]
    public void leave_everything_else_on_the_meter_as_it_is()
    {
        var option = Evaluate(Rack() with { Meter = Hourly(hour => hour is >= 6 and < 14 ? 11 : 5) });
        Assert.Equal(438, option.AnnualBillSaving.Units, 0.01);
        Assert.Equal((5.0 * 24 + 6 * 6) * 365, option.After.MeterEnergy.KilowattHours, 1e-6);
        Assert.All(option.After.Peaks, peak => Assert.Equal(11, peak.Total.Kilowatts, 1e-9));
    }

    // Something else draws 9 kW more from 6 to 8: 20 kW meet there now, 14 kW after; the rest of the day shows 11 kW.
    [Fact]
    public void take_their_own_peaks_off_the_meter()
    {
        var option = Evaluate(Rack() with { Meter = Hourly(hour => hour is 6 or 7 ? 20 : hour is >= 8 and < 14 ? 11 : 5) });
        Assert.All(option.After.Peaks, peak => Assert.Equal(14, peak.Total.Kilowatts, 1e-9));
        Assert.Equal(438 + 12 * 10 * 6, option.AnnualBillSaving.Units, 0.01);
    }

    // Watts that are 10 % higher save 10 % more; what else is on the meter is then less, and the same under both. Bills are rounded to the cent.
    [Fact]
    public void stand_against_todays_times_under_every_range()
    {
        var study = Rack() with { Meter = Hourly(hour => hour is >= 6 and < 14 ? 11 : 5) };
        study = study with { Lines = [study.Lines[0] with { Reading = null, Count = 105 }] };
        var now = new PresentCases(new StudyContext(study));
        var after = CasePlan.After(now.Context, study.Options[0]);
        double Saved(Perturbation inputs) => (now.Under(inputs).Cost - after.Totals(inputs).Cost).Units;
        Assert.Equal(1.1 * Saved(Perturbation.None), Saved(new() { ExistingWatts = 1.1 }), 0.13);
        Assert.Equal(0.9 * Saved(Perturbation.None), Saved(new() { Hours = 0.9 }), 0.13);
    }

    [Fact]
    public void give_the_figures_of_a_study_whose_schedule_was_changed_for_real()
    {
        StageChange[] changes =
        [
            new("room", "Winter crop", "Rooting") { LightsOn = new(20, 0), LitStep = "" },
            new("room", "Summer crop", "All") { LightsOff = new(19, 7) },
        ];
        var option = SampleStudy.TubesEverywhere with { Stages = changes };
        var study = SampleStudy.Small with { Options = [option] };
        var changed = study with { Areas = [StageChanges.Applied(study.Areas[0], changes), study.Areas[1]], Options = [option with { Stages = [] }] };
        var (after, real) = (StudyEvaluation.Run(study, new()).Options[0].After, StudyEvaluation.Run(changed, new()).Options[0].After);
        Assert.NotEqual(StudyEvaluation.Run(SampleStudy.Small, new()).Options[0].After.Site.Lighting, after.Site.Lighting);
        Assert.Equal(real.Bills.Select(bill => bill.Total.Units), after.Bills.Select(bill => bill.Total.Units));
        Assert.Equal(real.Areas, after.Areas);
        Assert.Equal(real.Seasons, after.Seasons);
        Assert.Equal(real.Site, after.Site);
        Assert.Equal(real.Lines.Select(line => (line.Hours, line.Starts, line.Energy, line.Cost)), after.Lines.Select(line => (line.Hours, line.Starts, line.Energy, line.Cost)));
        Assert.Equal(real.Replacements, after.Replacements);
    }

    // Lamps of 24,000 h burned 8 h a day for a year and 6 h a day from then on.
    [Fact]
    public void age_what_hangs_by_todays_hours()
    {
        var study = Rack();
        study = study with { Lines = [study.Lines[0] with { LampsInstalled = new(2026, 1, 1) }], Assumptions = new() { Start = new(2027, 1, 1) } };
        var option = Evaluate(study);
        var lamp = option.After.Lines[0].Clocks.Single(clock => clock.Part == WearPart.Lamp);
        var burned = 8.0 * 365 * 365 / 365.25;
        Assert.Equal((lamp.Life.Hours - burned) / (6 * 365), lamp.FirstDue!.Value, 1e-9);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void share_everything_with_the_present_where_nothing_differs(bool named)
    {
        var context = new StudyContext(Rack());
        var option = context.Study.Options[0] with { Stages = named ? [new("a", "Year", "Growing") { LightsOn = new(6, 0), Dimming = 1 }] : [] };
        Assert.Same(context, context.After(option));
    }

    [Theory]
    [InlineData("b", "Year", "Growing", null, "Options[0].Stages[0].Area")]
    [InlineData("a", "Winter", "Growing", null, "Options[0].Stages[0].Season")]
    [InlineData("a", "Year", "Rooting", null, "Options[0].Stages[0].Stage")]
    [InlineData("a", "Year", "Growing", "half", "Options[0].Stages[0].LitStep")]
    public void must_be_stages_the_study_has(string area, string season, string stage, string? step, string path)
    {
        var problem = Assert.Single(StudyEvaluation.Check(With(new StageChange(area, season, stage) { LitStep = step })));
        Assert.Equal(path, problem.Path);
        Assert.Contains("Option \"Shorter\"", problem.Message);
    }

    [Fact]
    public void may_be_named_once_and_dimmed_within_reason()
    {
        var change = new StageChange("a", "Year", "Growing");
        Assert.Equal("Options[0].Stages[1].Stage", Assert.Single(StudyEvaluation.Check(With(change, change with { Dimming = 0.5 }))).Path);
        Assert.Equal("Options[0].Stages[0].Dimming", Assert.Single(StudyEvaluation.Check(With(change with { Dimming = 1.5 }))).Path);
        Assert.Empty(StudyEvaluation.Check(With(change with { LitStep = "" })));
    }

    // 8 to 14 an hour earlier is 7 to 13: the option goes with the rack and keeps its six hours.
    [Fact]
    public void move_with_their_area_when_starts_are_staggered()
    {
        var dear = Rack() with { Tariff = DearFrom13() };
        var offer = Staggering.Offers(dear).Single();
        Assert.Equal(-60, offer.Shift);
        Assert.Equal(6 * 0.2 * 365, offer.SavingAfter!.Value.Units, 0.13);
    }

    private static Study With(params StageChange[] changes) => Rack() with { Options = [Rack().Options[0] with { Stages = changes }] };

    private static OptionResult Evaluate(Study study) => StudyEvaluation.Run(study, new()).Options[0];

    /// <summary>A hundred luminaires, measured at 60 W.</summary>
    private static Study Rack() => new()
    {
        Name = "A rack",
        Invented = true,
        Site = new() { Name = "Invented site", TimeZone = "Etc/UTC", Jurisdiction = "US" },
        Areas = [new()
        {
            Id = "a", Name = "Rack", GrowsCrop = true,
            Seasons = [new() { Name = "Year", Start = new(1, 1), End = new(12, 31), Stages = [new() { Name = "Growing", LightsOn = new(6, 0), LightsOff = new(14, 0) }] }],
        }],
        Lines = [new() { Id = "a", Name = "a", Area = "a", SetUp = SampleCatalogue.TwoT8.Id, Count = 100, Reading = new(Power.FromWatts(60), new LocalDate(2026, 5, 1)) }],
        Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.1)) with { Demand = [new DemandCharge { Name = "Demand", Price = DemandPrice.FromPerKilowatt(10) }] },
        Options = [new() { Id = "shorter", Name = "Shorter", Stages = [new("a", "Year", "Growing") { LightsOn = new(8, 0) }] }],
        Catalogue = SampleCatalogue.All,
    };

    private static Tariff DearFrom13() => new()
    {
        Name = "Invented",
        Energy =
        [
            new() { Name = "Dear", When = new() { Windows = [new(DayKind.All, new(13, 0), new(14, 0))] }, Blocks = [new(null, EnergyPrice.FromPerKilowattHour(0.3))] },
            new() { Name = "Cheap", Blocks = [new(null, EnergyPrice.FromPerKilowattHour(0.1))] },
        ],
    };

    private static MeterYear Hourly(Func<int, double> kilowatts) =>
        SampleMeter.Of(new LocalDate(2027, 1, 1), 60, Enumerable.Range(0, 8760).Select(hour => kilowatts(hour % 24)));
}
