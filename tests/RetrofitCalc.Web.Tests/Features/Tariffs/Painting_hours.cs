using NodaTime;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Features.Tariffs;
using RetrofitCalc.Web.Features.Tariffs.Periods;
using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Tariffs;

/// <summary>Blocks of months and hours given one price. Four invented periods: A and B in summer, C and D in winter, peaks 12:00 to 20:00 on weekdays.</summary>
public class Painting_hours
{
    private static readonly Study Seasons = SmallStudies.OneRack() with { Tariff = TariffEdits.ToSeasons(SmallStudies.OneRack().Tariff) };
    private static readonly EditState Start = new(Seasons, []);

    [Fact]
    public void a_block_goes_to_the_period_and_no_hour_is_left_without_a_price()
    {
        var painted = new Painting(1, DayKind.Weekday, (6, 9), (18, 19)).On(Start).Study;
        Assert.Equal(new TariffWindow(DayKind.Weekday, new(12, 0), new(18, 0)), Assert.Single(painted.Tariff.Energy[0].When.Windows));
        Assert.Empty(StudyEvaluation.Check(painted));
    }

    [Fact]
    public void painting_what_already_holds_is_no_edit() =>
        Assert.Same(Start, new Painting(0, DayKind.Weekday, (6, 9), (12, 19)).On(Start));

    [Fact]
    public void a_new_period_takes_the_price_of_the_hour_it_begins_in_under_a_name_of_its_own()
    {
        var tariff = new Painting(null, DayKind.Weekend, (7, 7), (10, 11)).On(Start).Study.Tariff;
        var added = tariff.Energy.Single(c => c.Name == "Period 5");
        Assert.Equal(0.12, added.Blocks[0].Price.PerKilowattHour);
        Assert.Equal([new TariffWindow(DayKind.Weekend, new(10, 0), new(12, 0))], added.When.Windows);
        Assert.Equal(new AnnualDate(7, 1), added.When.Start);
    }

    [Fact]
    public void a_text_that_waits_to_be_mended_follows_its_price()
    {
        var winterPeak = new CellDraft("Tariff.Energy[2].Blocks[0]", "Price", "0,2", "could mean two things");
        // July's own peak hours make a charge more before it.
        var after = new Painting(0, DayKind.Weekday, (7, 7), (8, 8)).On(Start with { Drafts = [winterPeak] });
        var moved = Assert.Single(after.Drafts);
        var at = EnergyPeriod.Of(after.Study.Tariff.Energy).Single(p => p.Price.Name == "Winter on-peak");
        Assert.NotEqual(2, at.Charges[0]);
        Assert.Equal($"Tariff.Energy[{at.Charges[0]}].Blocks[0]", moved.Line);
    }

    [Fact]
    public void a_period_painted_over_is_named_and_undo_is_offered()
    {
        var after = new Painting(1, DayKind.All, (6, 9), (0, 23)).On(Start).Study.Tariff;
        Assert.Equal("Summer on-peak has no hours left and leaves the tariff. Undo brings it back.", PaintText.Gone(PeriodMarks.Of(Seasons.Tariff), PeriodMarks.Of(after)));
    }

    [Fact]
    public void letters_go_on_after_z() => Assert.Equal(["A", "Z", "A2"], new[] { 0, 25, 26 }.Select(PeriodMarks.Letter));
}
