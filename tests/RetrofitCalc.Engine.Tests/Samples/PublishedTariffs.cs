using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.Samples;

/// <summary>
/// Published schedules whose prices were read in the source named. Where the source gives no bill, the expected lines in
/// <c>Published_bills_line_by_line</c> are worked from the prices and marked derived.
/// </summary>
internal static class PublishedTariffs
{
    private static readonly AnnualDate FirstOfJune = new(6, 1);
    private static readonly AnnualDate EndOfSeptember = new(9, 30);

    /// <summary>Energy-management handbook, section 18.5, general service, a June bill. The source gives the amount of demand, not its price.</summary>
    public static Tariff GeneralService => Of("General service", [Flat("Energy", 0.09444)]) with
    {
        Fixed = [new("Service charge", Money.FromUnits(3.74))],
        Adjustments = [Adjustment("Adjustment", -0.017192)],
        Demand = [Demand("Demand", 262.34 / 30)],
    };

    /// <summary>IAEI magazine, July 2007, commercial rates part 3, medium general service.</summary>
    public static Tariff MediumGeneralService => Of("Medium general service", [Summer("Energy, summer", 0.062533), Winter("Energy, winter", 0.069533)]) with
    {
        Fixed = [new("Customer charge", Money.FromUnits(25.42))],
        Demand = [Demand("Demand, summer", 22.6935) with { When = SummerHours() }, Demand("Demand, winter", 14.7419) with { When = WinterHours() }],
    };

    /// <summary>City of Seymour, Texas, electric billing examples, winter: blocks of 250 and 450 kWh.</summary>
    public static Tariff Seymour => Of("Residential, winter", [SampleTariff.Charge("Energy", new(), Block(250, 0.064), Block(700, 0.049), Block(null, 0.0446))]) with
    {
        Fixed = [new("Base", Money.FromUnits(7.50))],
        Adjustments = [Adjustment("Power cost", 0.085)],
        Taxes = [new("Tax", 0.01)],
    };

    /// <summary>River Falls, Wisconsin, time-of-day page of 2020-09-29; the hours of the periods and the fixed charge (inferred from the totals) are not printed there.</summary>
    public static Tariff RiverFalls => Of("Time of day", [
        SampleTariff.Charge("On-peak", new() { Windows = [new(DayKind.Weekday, new(8, 0), new(20, 0))] }, Block(null, 0.191)),
        Flat("Off-peak", 0.066)]) with { Fixed = [new("Fixed", Money.FromUnits(14))] };

    /// <summary>City of Batavia, Illinois, large general service, 2015-05-01: measured demand grows by a hundredth for each point below 90 %.</summary>
    public static Tariff Batavia => Of("Large general service", [Flat("Energy", 0.04362)]) with
    {
        Fixed = [new("Customer charge", Money.FromUnits(100))],
        Demand = [Demand("Demand", 17.25)],
        PowerFactor = new AddedPerPoint(0.90, 0.01),
    };

    /// <summary>Columbia River PUD, schedule A-16-LP: demand grows by 2 % for each point below 95 %, blocks by hours of use.</summary>
    public static Tariff ColumbiaRiver => Of("Schedule A-16-LP", [
        SampleTariff.Charge("Energy", new(), Block(200, 0.077), Block(400, 0.051), Block(null, 0.044)) with { BlockUnit = BlockUnit.PerKilowatt }]) with
    {
        Fixed = [new("Basic charge", Money.FromUnits(275))],
        Demand = [Demand("Demand", 10)],
        PowerFactor = new AddedPerPoint(0.95, 0.02),
    };

    /// <summary>South Whitley, Indiana, code § 53.19: kVA, 60 % of the highest of the preceding twelve months (eleven here), blocks by hours of use.</summary>
    public static Tariff SouthWhitley => Of("Power service", [
        SampleTariff.Charge("Energy", new(), Block(300, 0.0241), Block(null, 0.0195)) with { BlockUnit = BlockUnit.PerKilowatt }]) with
    {
        Demand = [Demand("Maximum load", 3.08) with { Ratchet = new(0.6) }],
        PowerFactor = new BilledInKilovoltAmperes(),
    };

    /// <summary>Sioux Falls, South Dakota, C/IP primary rate from 2023-01-01.</summary>
    public static Tariff SiouxFalls => Of("C/IP primary", [Flat("Energy", 0.0443)]) with
    {
        Fixed = [new("Fixed", Money.FromUnits(17.29))],
        Demand = [Demand("Demand", 17.29)],
    };

    /// <summary>
    /// Riverland (Wisconsin), time of use from 2023-05-01: on-peak summer weekdays 14–18 h without Independence Day and Labor Day, winter
    /// 17–21 h without New Year's Day, Memorial Day, Thanksgiving and Christmas; winter is read as weekdays too, which the page does not say.
    /// </summary>
    public static Tariff Riverland => Of("Time of use", [
        SampleTariff.Charge("On-peak, summer", SummerHours() with { Windows = [new(DayKind.Weekday, new(14, 0), new(18, 0))] }, Block(null, 0.3843)),
        SampleTariff.Charge("On-peak, winter", WinterHours() with { Windows = [new(DayKind.Weekday, new(17, 0), new(21, 0))] }, Block(null, 0.3843)),
        Flat("Off-peak", 0.0818)]) with
    {
        Fixed = [new("Base service", Money.FromUnits(1.26), ChargedPer.Day)],
        Holidays =
        [
            new FixedHoliday(new(7, 4)), new WeekdayHoliday(1, IsoDayOfWeek.Monday, 9), new FixedHoliday(new(1, 1)),
            new WeekdayHoliday(-1, IsoDayOfWeek.Monday, 5), new WeekdayHoliday(4, IsoDayOfWeek.Thursday, 11), new FixedHoliday(new(12, 25)),
        ],
    };

    /// <summary>A municipal large-power schedule, quoted without its town in a public electricians' forum thread: credit above 365 hours of use.</summary>
    public static Tariff LargePowerWithCredit => Of("Large power", [Flat("Energy", 0.0291)]) with
    {
        Fixed = [new("Customer charge", Money.FromUnits(150))],
        Demand = [Demand("Demand", 3.79), Demand("Second demand charge", 1.09), Demand("Secondary voltage", 1.70)],
        LoadFactorCredit = new("Load-factor credit", 365, DemandPrice.FromPerKilowatt(0.005)),
    };

    public static EnergyBlock Block(double? upTo, double price) => new(upTo is { } kwh ? Energy.FromKilowattHours(kwh) : null, SampleTariff.Price(price));

    public static DemandCharge Demand(string name, double price) => new() { Name = name, Price = DemandPrice.FromPerKilowatt(price) };

    public static EnergyAdjustment Adjustment(string name, params double[] prices) => new() { Name = name, Prices = [.. prices.Select(SampleTariff.Price)] };

    private static Tariff Of(string name, IReadOnlyList<EnergyCharge> energy) => new() { Name = name, Energy = energy };

    private static EnergyCharge Flat(string name, double price) => SampleTariff.Charge(name, new(), Block(null, price));

    private static EnergyCharge Summer(string name, double price) => SampleTariff.Charge(name, SummerHours(), Block(null, price));

    private static EnergyCharge Winter(string name, double price) => SampleTariff.Charge(name, WinterHours(), Block(null, price));

    private static TariffHours SummerHours() => new() { Start = FirstOfJune, End = EndOfSeptember };

    private static TariffHours WinterHours() => new() { Start = new(10, 1), End = new(5, 31) };
}
