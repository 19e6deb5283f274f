using NodaTime;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Tariffs;
using RetrofitCalc.Web.Features.Tariffs.Clauses;
using RetrofitCalc.Web.Features.Tariffs.Periods;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Tariffs;

public class Changes_of_the_tariff
{
    private static readonly Study Flat = SmallStudies.OneRack();

    [Fact]
    public void a_season_added_to_prices_that_held_all_year_splits_the_year_without_a_gap()
    {
        var study = Flat with { Tariff = TariffEdits.AddSeason(Flat.Tariff) };
        Assert.Equal([(new AnnualDate(6, 1), new AnnualDate(9, 30)), (new AnnualDate(10, 1), new AnnualDate(5, 31))], TariffSeason.Of(study.Tariff).Select(s => (s.Start!.Value, s.End!.Value)));
        Assert.Empty(StudyEvaluation.Check(study));
    }

    [Fact]
    public void a_period_added_takes_weekday_afternoons_at_the_price_there_was()
    {
        var tariff = TariffEdits.ToSeasons(Flat.Tariff);
        var with = TariffEdits.AddPeriod(tariff, TariffSeason.Of(tariff)[0]);
        Assert.Equal(TariffEdits.Afternoon, Assert.Single(with.Energy[^1].When.Windows));
        Assert.Equal(0.12, with.Energy[^1].Blocks[0].Price.PerKilowattHour);
    }

    [Fact]
    public void only_one_price_at_all_hours_with_nothing_beside_it_is_flat()
    {
        Assert.True(TariffEdits.IsFlat(Flat.Tariff));
        Assert.False(TariffEdits.IsFlat(TariffEdits.AddFixed(Flat.Tariff)));
        Assert.False(TariffEdits.IsFlat(TariffEdits.AddDemand(Flat.Tariff)));
        Assert.False(TariffEdits.IsFlat(TariffEdits.ToSeasons(Flat.Tariff)));
        Assert.False(TariffEdits.IsFlat(ClauseEdits.AddTax(Flat.Tariff)));
        Assert.False(TariffEdits.IsFlat(ClauseEdits.AddAdjustment(Flat.Tariff)));
        Assert.False(TariffEdits.IsFlat(Flat.Tariff with { Reading = new() { DayOfMonth = 15 } }));
    }

    [Fact]
    public void the_picture_joins_pieces_with_the_same_price()
    {
        var june = TariffGrid.Of(TariffEdits.ToSeasons(Flat.Tariff), 2027, weekend: false)[1];
        Assert.Equal((new LocalDate(2027, 6, 1), new LocalDate(2027, 9, 30)), (june.First, june.Last));
        Assert.Equal([(1, 12L), (0, 20L), (1, 24L)], june.Pieces.Select(p => (p.Claims.Single(), p.To / NodaConstants.TicksPerHour)));
    }
}
