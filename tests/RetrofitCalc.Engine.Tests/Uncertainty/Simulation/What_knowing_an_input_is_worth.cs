using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;
using RetrofitCalc.Engine.Uncertainty.Simulation;
using static RetrofitCalc.Engine.Tests.Uncertainty.Simulation.LevelRoom;

namespace RetrofitCalc.Engine.Tests.Uncertainty.Simulation;

public class What_knowing_an_input_is_worth
{
    [Fact] // classes of one fiftieth leave a few hundredths of the band, most of it in the widest classes at the ends
    public void is_everything_where_nothing_else_is_uncertain()
    {
        var drawn = Draw(Sure with { FirstCostUncertainty = 0.2 });
        var known = Assert.Single(drawn.Measurements);
        Assert.Equal("Get one written offer.", known.Ask);
        Assert.InRange(known.Explained, 0.99, 1);
        Assert.InRange(known.BandOnceKnown.Units / (drawn.NetPresentValue.P90 - drawn.NetPresentValue.P10), 0, 0.06);
        Assert.InRange(known.PaybackBandOnceKnown!.Value / (drawn.Payback.P90 - drawn.Payback.P10), 0, 0.06);
    }

    [Fact] // variances w²/7: price and hours (110,222 · 0.2)², watts now (220,444 · 0.1)², after (110,222 · 0.1)², first cost (64,625 · 0.3)²
    public void follows_its_share_of_the_variance()
    {
        var bill = Saving * YearsWorth;
        var parts = new Dictionary<string, double>
        {
            ["ElectricityPrice"] = Math.Pow(bill * 0.2, 2), ["Hours"] = Math.Pow(bill * 0.2, 2), ["ExistingWatts"] = Math.Pow(2 * bill * 0.1, 2),
            ["ProposedWatts"] = Math.Pow(bill * 0.1, 2), ["FirstCost"] = Math.Pow(FirstCost * 0.3, 2),
        };
        var drawn = Draw(Sure with { PriceUncertainty = 0.2, HoursUncertainty = 0.2, WattsUncertainty = 0.1, FirstCostUncertainty = 0.3 });
        Assert.Equal(parts.Keys.Order(), drawn.Measurements.Select(known => known.Input).Order());
        Assert.All(drawn.Measurements, known => Assert.Equal(parts[known.Input] / parts.Values.Sum(), known.Explained, 0.03));
        Assert.Equal(drawn.Measurements.OrderBy(known => known.BandOnceKnown), drawn.Measurements);
        Assert.Equal("ProposedWatts", drawn.Measurements[^1].Input);
    }

    [Fact] // of two equal and independent inputs one leaves 1/√2 of a band that is close to normal
    public void leaves_the_band_of_the_others()
    {
        var both = Draw(Sure with { PriceUncertainty = 0.2, HoursUncertainty = 0.2 });
        var one = Draw(Sure with { HoursUncertainty = 0.2 });
        var price = both.Measurements.Single(known => known.Input == "ElectricityPrice");
        Assert.Equal(1, price.BandOnceKnown.Units / (one.NetPresentValue.P90 - one.NetPresentValue.P10), 0.03);
    }

    [Fact] // at the edge of paying, half of |1 − f| is saved by knowing: E|1 − f| = w · 5/16 for beta of 3 and 3
    public void in_money_is_the_loss_it_spares()
    {
        var edge = Level with { Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.10 * FirstCost / (Saving * YearsWorth))) };
        var drawn = Draw(edge, Sure with { FirstCostUncertainty = 0.2 }, new() { Draws = 20_000 });
        Assert.Equal(FirstCost * 0.2 * 5 / 32, drawn.Measurements.Single().Worth.Units, FirstCost * 0.2 * 0.01);
    }

    [Fact]
    public void in_money_is_nothing_where_it_pays_in_any_case() =>
        Assert.All(Draw(new()).Measurements, known => Assert.Equal(Money.Zero, known.Worth));

    [Fact] // twenty years hold lamps, ballasts and tubes
    public void counts_what_it_tells_about_inputs_that_move_with_it()
    {
        double explained(double together) => Draw(SmallRoom.Study, Sure with { LifeUncertainty = 0.25, StudyYears = 20 }, new() { LivesTogether = together, Draws = 5_000 })
            .Measurements.Single(known => known.Input == "ReplacementLife").Explained;
        Assert.InRange(explained(1), 0.9, 1); // one life is then as good as the other
        Assert.InRange(explained(0), 0, explained(1) - 0.2);
    }

    [Fact]
    public void has_no_band_of_payback_where_it_may_never_pay() =>
        Assert.Contains(Draw(Sure with { FirstCostUncertainty = 0.4, PriceUncertainty = 0.4, StudyYears = 5 }).Measurements, known => known.PaybackBandOnceKnown is null);
}
