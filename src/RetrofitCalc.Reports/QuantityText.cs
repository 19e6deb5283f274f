using System.Globalization;
using NodaTime;
using NodaTime.Text;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>Every figure a reader sees, on paper and on a page: rounded once, here, in the site's culture and the tariff's currency.</summary>
/// <remarks>A true minus sign, no-break spaces before units, half away from zero. Words are English whatever the culture of the numbers.</remarks>
public sealed class QuantityText
{
    public const string NotKnown = "not known";
    public const string DoesNotApply = "–";
    private const string NoBreak = "\u00A0";
    private const string Minus = "\u2212";

    private readonly NumberFormatInfo _numbers;
    private readonly UnitSystem _units;
    private readonly bool _american;

    /// <exception cref="CultureNotFoundException">The culture is not one this machine knows.</exception>
    public QuantityText(string culture, string currency, UnitSystem units)
    {
        var info = CultureInfo.GetCultureInfo(culture);
        _numbers = CurrencyFormat.For(info, currency);
        _units = units;
        _american = info.Name is "en-US" or "";
        Currency = currency;
    }

    /// <summary>ISO 4217 code of the currency.</summary>
    public string Currency { get; }

    /// <summary>The sign printed with amounts: the culture's own, or the ISO code of a foreign currency.</summary>
    public string CurrencySign => _numbers.CurrencySymbol;

    /// <summary>Units of lengths, and whether foot-candles stand beside lux.</summary>
    public UnitSystem Units => _units;

    public static QuantityText For(Study study) => For(study, UnitSystems.Usual(study.Site));

    public static QuantityText For(Study study, UnitSystem units) => new(study.Site.Culture, study.Tariff.Currency, units);

    /// <summary>A plain number, for table cells whose unit stands in the head.</summary>
    public string Number(double value, int decimals = 0) => Signed(value, decimals, v => v.ToString("N" + decimals, _numbers));

    /// <summary>A count; new luminaires that replace several may be a fraction.</summary>
    public string Count(double value) => Number(value, value == Math.Round(value) ? 0 : 1);

    public string Watts(Power power) => Number(power.Watts) + NoBreak + "W";

    public string Kilowatts(Power power) => Number(power.Kilowatts, 1) + NoBreak + "kW";

    public string KilowattHours(Energy energy) => Number(energy.KilowattHours) + NoBreak + "kWh";

    public string BtuPerHour(Power heat) => Number(heat.BtuPerHour) + NoBreak + "BTU/h";

    public string Tons(Power heat) => Number(heat.TonsOfCooling, 1) + NoBreak + "tons";

    public string Hours(OperatingTime time) => Number(time.Hours) + NoBreak + "h";

    /// <summary>Whole currency units.</summary>
    public string Money(Money amount) => Currencied(amount.Units, 0);

    /// <summary>With cents, for unit prices and bill lines.</summary>
    public string Cents(Money amount) => Currencied(amount.Units, 2);

    public string Price(EnergyPrice price) => Currencied(price.PerKilowattHour, 4) + "/kWh";

    public string Price(DemandPrice price) => Currencied(price.PerKilowatt, 2) + "/kW";

    /// <summary>Price of one unit on a bill line: four decimals by the kilowatt-hour, else cents.</summary>
    public string UnitPrice(double price, string unit) => Currencied(price, unit == "kWh" ? 4 : 2) + "/" + unit;

    /// <summary>Quantity of a bill line: "1,234 kWh", "27.8 kW", "1 month".</summary>
    public string Quantity(double quantity, string unit) => Number(quantity, unit == "kW" ? 1 : 0) + NoBreak + unit;

    /// <summary>A share as a percentage: 0.49 gives "49 %".</summary>
    public string Percent(double share, int decimals = 0) => Number(share * 100, decimals) + NoBreak + "%";

    /// <summary>"2.4 yr".</summary>
    public string Years(double years) => Number(years, 1) + NoBreak + "yr";

    /// <summary>"2.4 yr", or "never in 10 yr" when the money does not come back within the study.</summary>
    public string Payback(double? years, int studyYears) => years is { } y ? Years(y) : $"never in{NoBreak}{studyYears}{NoBreak}yr";

    /// <summary>The same, saying so when a later replacement takes the sum below zero once more: such a payback may not stand alone.</summary>
    public string Payback(Payback payback, int studyYears) =>
        Payback(payback.Years, studyYears) + (payback.LostAgain ? ", lost again" : "");

    /// <summary>"$42,312 to $54,170", lower amount first.</summary>
    public string Range(Range<Money> range)
    {
        var (low, high) = range.Low <= range.High ? (range.Low, range.High) : (range.High, range.Low);
        return Money(low) + " to " + Money(high);
    }

    /// <summary>"2.1–3.1 yr", "2.1 yr to never", or "never in 10 yr".</summary>
    public string Range(Range<double?> range, int studyYears)
    {
        var (first, last) = Ordered(range.Low, range.High);
        return (first, last) switch
        {
            ({ } a, { } b) => Number(a, 1) + "–" + Years(b),
            ({ } a, null) => Years(a) + " to never",
            _ => Payback((double?)null, studyYears),
        };
    }

    /// <summary>"9 ft 4 in" or "2.84 m".</summary>
    public string Length(Length length)
    {
        if (_units == UnitSystem.Metric) return Number(length.Metres, 2) + NoBreak + "m";
        var inches = (int)Math.Round(length.Feet * 12, MidpointRounding.AwayFromZero);
        var (feet, rest) = Math.DivRem(inches, 12);
        return (feet, rest) switch
        {
            (0, _) => $"{rest}{NoBreak}in",
            (_, 0) => $"{Number(feet)}{NoBreak}ft",
            _ => $"{Number(feet)}{NoBreak}ft{NoBreak}{rest}{NoBreak}in",
        };
    }

    /// <summary>"November 25, 2026" for American readers, else "25 November 2026".</summary>
    public string Date(LocalDate date) =>
        LocalDatePattern.CreateWithInvariantCulture(_american ? "MMMM d, uuuu" : "d MMMM uuuu").Format(date);

    /// <summary>"Aug 2029".</summary>
    public string Month(LocalDate date) => LocalDatePattern.CreateWithInvariantCulture("MMM uuuu").Format(date);

    private string Currencied(double units, int decimals) =>
        Signed(units, decimals, v => CurrencyFormat.Clean(v.ToString("C" + decimals, _numbers)));

    private static string Signed(double value, int decimals, Func<double, string> format)
    {
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return (rounded < 0 ? Minus : "") + format(Math.Abs(rounded));
    }

    private static (double? First, double? Last) Ordered(double? a, double? b) =>
        a is null || a > b ? (b, a) : (a, b);
}
