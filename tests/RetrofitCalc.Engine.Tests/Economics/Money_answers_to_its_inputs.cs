using CsCheck;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;

namespace RetrofitCalc.Engine.Tests.Economics;

public class Money_answers_to_its_inputs
{
    [Fact]
    public void more_expensive_electricity_never_lengthens_payback() =>
        Gen.Select(Gen.Double[0.02, 1], Gen.Double[1, 4], Gen.Double[8, 29]).Sample((price, dearer, tubeWatts) =>
        {
            var (cheap, dear) = (Years(At(price, tubeWatts)), Years(At(price * dearer, tubeWatts)));
            return dear <= cheap + 1e-9;
        }, iter: 60);

    [Fact]
    public void a_higher_discount_rate_never_raises_the_net_present_value_of_a_plain_investment() =>
        Gen.Select(Gen.Double[-0.2, 0.5], Gen.Double[0.01, 0.3]).Sample((rate, more) =>
        {
            Money Worth(double discount) => An_option_against_keeping.Evaluate(Discounted(discount)).NetPresentValue;
            return Worth(rate + more) <= Worth(rate);
        }, iter: 60);

    [Fact]
    public void the_internal_rate_is_the_discount_rate_at_which_it_is_worth_nothing()
    {
        var rate = Assert.Single(An_option_against_keeping.Evaluate(SmallRoom.Study).InternalRates);
        Assert.Equal(0, An_option_against_keeping.Evaluate(Discounted(rate)).NetPresentValue.Units, 1e-6);
    }

    private static double Years(Study study) => An_option_against_keeping.Evaluate(study).SimplePayback.Years ?? double.PositiveInfinity;

    private static Study Discounted(double rate) => SmallRoom.Study with { Assumptions = new() { DiscountRate = rate } };

    private static Study At(double price, double tubeWatts) => SmallRoom.Study with
    {
        Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(price)),
        Catalogue = SmallRoom.Study.Catalogue with { Tubes = [SmallRoom.Tube with { LinePower = Power.FromWatts(tubeWatts) }] },
    };
}
