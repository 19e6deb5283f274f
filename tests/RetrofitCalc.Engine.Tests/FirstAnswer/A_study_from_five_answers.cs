using NodaTime;
using RetrofitCalc.Engine.FirstAnswer;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;

namespace RetrofitCalc.Engine.Tests.FirstAnswer;

public class A_study_from_five_answers
{
    private static readonly FirstFacts Facts = new(40, "set-up", 16, 0.15, "tube");

    [Fact]
    public void is_complete()
    {
        var study = From(Facts);
        Assert.Empty(StudyEvaluation.Check(study));
        Assert.Equal((40, "set-up"), (study.Lines.Single().Count, study.Lines.Single().SetUp));
        Assert.Equal(new DirectWire("tube"), study.Options.Single().Measures.Single().Measure);
        Assert.Equal(0.15, study.Tariff.Energy.Single().Blocks.Single().Price.PerKilowattHour);
    }

    [Fact]
    public void takes_along_only_the_catalogue_rows_it_uses() =>
        Assert.Equal(["set-up", "lamp", "ballast", "tube"], From(Facts).Catalogue.All.Select(row => row.Id));

    [Theory, InlineData(16, 22, 0), InlineData(18, 0, 0), InlineData(20, 2, 0), InlineData(0.5, 6, 30), InlineData(24, 6, 0)]
    public void lights_the_room_from_six_for_that_many_hours(double hours, int offHour, int offMinute)
    {
        var lit = From(Facts with { HoursPerDay = hours }).Areas.Single().Weekly!.Hours.Single();
        Assert.Equal((new LocalTime(6, 0), new LocalTime(offHour, offMinute)), (lit.On, lit.Off));
        Assert.Equal(7, lit.Days.Count);
    }

    [Fact]
    public void leaves_the_room_dark_for_no_hours() => Assert.Empty(From(Facts with { HoursPerDay = 0 }).Areas.Single().Weekly!.Hours);

    [Fact]
    public void replaces_whole_luminaires_when_one_is_chosen() =>
        Assert.Equal(new ReplaceLuminaire("luminaire"), From(Facts with { Replacement = "luminaire" }).Options.Single().Measures.Single().Measure);

    [Fact]
    public void has_no_option_when_none_is_chosen() => Assert.Empty(From(Facts with { Replacement = null }).Options);

    [Fact]
    public void is_less_sure_of_first_cost_than_of_the_rest()
    {
        var assumptions = From(Facts).Assumptions;
        Assert.Equal((0.25, 0.10, 0.10), (assumptions.FirstCostUncertainty, assumptions.HoursUncertainty, assumptions.PriceUncertainty));
    }

    public static TheoryData<FirstFacts, string> Wrong => new()
    {
        { Facts with { Luminaires = 0 }, nameof(Facts.Luminaires) },
        { Facts with { Luminaires = -4 }, nameof(Facts.Luminaires) },
        { Facts with { Luminaires = 100_001 }, nameof(Facts.Luminaires) },
        { Facts with { SetUp = "imagined" }, nameof(Facts.SetUp) },
        { Facts with { HoursPerDay = 24.5 }, nameof(Facts.HoursPerDay) },
        { Facts with { HoursPerDay = -1 }, nameof(Facts.HoursPerDay) },
        { Facts with { HoursPerDay = double.NaN }, nameof(Facts.HoursPerDay) },
        { Facts with { PricePerKilowattHour = 0 }, nameof(Facts.PricePerKilowattHour) },
        { Facts with { PricePerKilowattHour = 15 }, nameof(Facts.PricePerKilowattHour) },
        { Facts with { Replacement = "imagined" }, nameof(Facts.Replacement) },
    };

    [Theory, MemberData(nameof(Wrong))]
    public void is_refused_in_plain_words(FirstFacts facts, string field)
    {
        Assert.Equal(field, Assert.Single(FirstAnswerStudy.Check(facts, SmallRoom.Study.Catalogue)).Path);
        Assert.Throws<InvalidStudyException>(() => From(facts));
    }

    private static Study From(FirstFacts facts) => FirstAnswerStudy.From(facts, SmallRoom.Study.Catalogue);
}
