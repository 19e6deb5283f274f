using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports.Tests;

/// <summary>Number and currency forms: Unicode CLDR, locale data for en-US, de-DE, en-IN (read through the platform's ICU).</summary>
public class Text_of_a_quantity
{
    private static readonly QuantityText American = new("en-US", "USD", UnitSystem.UsCustomary);
    private static readonly QuantityText German = new("de-DE", "EUR", UnitSystem.Metric);
    private static readonly QuantityText Indian = new("en-IN", "INR", UnitSystem.Metric);

    [Fact]
    public void groups_thousands_as_the_culture_does()
    {
        Assert.Equal("27,778\u00A0W", American.Watts(Power.FromWatts(27778)));
        Assert.Equal("27.778\u00A0W", German.Watts(Power.FromWatts(27778)));
        Assert.Equal("1,72,301\u00A0kWh", Indian.KilowattHours(Energy.FromKilowattHours(172301)));
    }

    [Fact]
    public void prints_money_with_the_sign_and_place_of_the_culture()
    {
        var amount = Money.FromUnits(1234567.5);
        Assert.Equal("$1,234,568", American.Money(amount));
        Assert.Equal("1.234.567,50\u00A0€", German.Cents(amount));
        Assert.Equal("₹12,34,568", Indian.Money(amount));
    }

    [Fact]
    public void names_a_foreign_currency_by_its_code_when_its_sign_could_be_mistaken()
    {
        Assert.Equal("CAD\u00A01,200", new QuantityText("en-US", "CAD", UnitSystem.Metric).Money(Money.FromUnits(1200)));
        Assert.Equal("€1,200", new QuantityText("en-US", "EUR", UnitSystem.Metric).Money(Money.FromUnits(1200)));
    }

    [Fact]
    public void puts_a_true_minus_sign_before_the_currency_and_none_before_zero()
    {
        Assert.Equal("−$13,606", American.Money(Money.FromUnits(-13606.2)));
        Assert.Equal("−13.606\u00A0€", German.Money(Money.FromUnits(-13606.2)));
        Assert.Equal("$0", American.Money(Money.FromUnits(-0.4)));
    }

    [Theory, InlineData(0.5, "1"), InlineData(2.5, "3"), InlineData(-2.5, "−3"), InlineData(2.4999, "2")]
    public void rounds_halves_away_from_zero(double value, string text) => Assert.Equal(text, American.Number(value));

    [Fact]
    public void converts_heat_by_the_definitions_of_the_units()
    {
        // 10 kW × 3.412142 BTU/h per W = 34,121 BTU/h; over 12,000 = 2.84 tons (ASHRAE Handbook—Fundamentals, Units and Conversions, from memory)
        Assert.Equal("34,121\u00A0BTU/h", American.BtuPerHour(Power.FromKilowatts(10)));
        Assert.Equal("2.8\u00A0tons", American.Tons(Power.FromKilowatts(10)));
    }

    [Fact]
    public void says_never_in_words_when_the_money_does_not_come_back()
    {
        Assert.Equal("2.4\u00A0yr", American.Payback(2.43, 10));
        Assert.Equal("2,4\u00A0yr", German.Payback(2.43, 10));
        Assert.Equal("never in\u00A010\u00A0yr", American.Payback(new Payback(null), 10));
        Assert.Equal("2.1\u00A0yr, lost again", American.Payback(new Payback(2.1, LostAgain: true), 10));
    }

    [Fact]
    public void gives_ranges_low_end_first_and_never_last()
    {
        Assert.Equal("$42,312 to $54,170", American.Range(new Range<Money>(Money.FromUnits(54170), Money.FromUnits(46509), Money.FromUnits(42312))));
        Assert.Equal("2.1–3.1\u00A0yr", American.Range(new Range<double?>(3.1, 2.4, 2.1), 10));
        Assert.Equal("2.1\u00A0yr to never", American.Range(new Range<double?>(null, 4, 2.1), 10));
        Assert.Equal("never in\u00A010\u00A0yr", American.Range(new Range<double?>(null, null, null), 10));
    }

    [Fact]
    public void prints_lengths_in_feet_and_inches_or_in_metres()
    {
        Assert.Equal("9\u00A0ft\u00A04\u00A0in", American.Length(Length.FromMetres(2.84)));
        Assert.Equal("8\u00A0ft", American.Length(Length.FromFeet(7.99)));
        Assert.Equal("11\u00A0in", American.Length(Length.FromFeet(0.93)));
        Assert.Equal("2,84\u00A0m", German.Length(Length.FromMetres(2.84)));
    }

    [Fact]
    public void prints_prices_percentages_hours_and_dates()
    {
        Assert.Equal("$0.1375/kWh", American.Price(EnergyPrice.FromPerKilowattHour(0.1375)));
        Assert.Equal("12,50\u00A0€/kW", German.Price(DemandPrice.FromPerKilowatt(12.5)));
        Assert.Equal("49\u00A0%", American.Percent(0.488));
        Assert.Equal("5,840\u00A0h", American.Hours(OperatingTime.FromHours(5840)));
        Assert.Equal("November 25, 2026", American.Date(new LocalDate(2026, 11, 25)));
        Assert.Equal("25 November 2026", German.Date(new LocalDate(2026, 11, 25)));
    }

    [Fact]
    public void prints_part_luminaires_only_where_there_are_any()
    {
        Assert.Equal("320", American.Count(320));
        Assert.Equal("160.5", American.Count(160.5));
    }
}
