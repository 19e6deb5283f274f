using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Checks;

/// <summary>One thing wrong in a tariff with everything in it: the problem names the path and says what is allowed.</summary>
public class Problems_of_a_tariff
{
    private static readonly LocalDate[] Readings = [.. Enumerable.Range(0, 13).Select(month => new LocalDate(2027, 1, 12).PlusMonths(month))];

    /// <summary>The sample tariff with every clause there is, without a problem.</summary>
    private static readonly Tariff Full = SampleTariff.TimeOfUse with
    {
        Energy = [.. SampleTariff.TimeOfUse.Energy.Take(2), SampleTariff.TimeOfUse.Energy[2] with { BlockUnit = BlockUnit.PerKilowatt, BlocksByDemand = "Demand" }],
        Adjustments = [PublishedTariffs.Adjustment("Fuel", [.. Enumerable.Repeat(-0.01, 12)])],
        Demand =
        [
            SampleTariff.TimeOfUse.Demand[0] with
            {
                Blocks = [Block(10), Block(20)], Minimum = Power.FromKilowatts(5), Rounding = new(Power.FromKilowatts(1)),
                Ratchet = new(0.8) { PeakMonths = [6, 7] },
            },
            SampleTariff.TimeOfUse.Demand[1],
        ],
        PowerFactor = new TargetPowerFactor(0.9) { On = ["Demand"] },
        LoadFactorCredit = new("Credit", 365, DemandPrice.Zero) { Demand = "Demand" },
        MinimumBill = Money.FromUnits(100),
        Taxes = [new("Tax", 0.05) { On = ["Customer charge", "Summer rest", "Fuel", "Demand", "Credit", "Reactive demand", "Minimum bill"] }],
        Holidays = [new FixedHoliday(new(7, 4)), new WeekdayHoliday(-1, IsoDayOfWeek.Monday, 5, 1), new EasterHoliday(-2), new SingleHoliday(new(2027, 3, 3))],
        Reading = new() { Dates = Readings },
    };

    public static TheoryData<string, string, Func<Tariff, Tariff>> Wrong => new()
    {
        { "Tariff.ValidTo", "lies before its first", t => t with { ValidFrom = new(2027, 2, 1), ValidTo = new(2027, 1, 1) } },
        { "Tariff.Fixed[0].Amount", "Daily amount of \"Meter\"", t => t with { Fixed = [new("Meter", Money.FromUnits(1e30), ChargedPer.Day)], Taxes = [] } },
        { "Tariff.Energy[2].BlocksByDemand", "\"Night\", but the tariff has none", t => WithEnergy(t, charge => charge with { BlocksByDemand = "Night" }) },
        { "Tariff.Energy[2].BlocksByDemand", "2 demand charges are called so", t => WithDemand(t, charge => charge with { Name = "Summer peak demand" }) with { Energy = [t.Energy[0], t.Energy[1], t.Energy[2] with { BlocksByDemand = "Summer peak demand" }] } },
        { "Tariff.Energy[2].BlocksByDemand", "on 1 January no demand charge for them is in force", t => WithEnergy(t, charge => charge with { BlocksByDemand = "Summer peak demand" }) },
        { "Tariff.Energy[2].BlocksByDemand", "need a demand charge", t => WithEnergy(t, charge => charge with { BlocksByDemand = null }) with { Demand = [] } },
        { "Tariff.Energy[2].Blocks[0].UpTo", "ends at 0 kWh for each kW; it must end above 0", t => WithEnergy(t, charge => charge with { Blocks = [new(Energy.Zero, SampleTariff.Price(1)), charge.Blocks[1]] }) },
        { "Tariff.Energy[2].Blocks[0].UpTo", "at most 1000000000", t => WithEnergy(t, charge => charge with { Blocks = [new(Energy.FromKilowattHours(1e12), SampleTariff.Price(1)), charge.Blocks[1]] }) },
        { "Tariff.Energy", "No energy price applies on 29 February", t => t with { Energy = [t.Energy[0], t.Energy[1], t.Energy[2] with { When = new() { Start = new(10, 1), End = new(2, 28) } }, t.Energy[2] with { When = new() { Start = new(3, 1), End = new(5, 31) } }] } },
        { "Tariff.Energy", "and so on 87 days up to 30 September", t => t with { Energy = [t.Energy[0], t.Energy[2]], Taxes = [] } },
        { "Tariff.Adjustments[0].Prices", "has 2 prices; give one for all months or twelve", t => t with { Adjustments = [PublishedTariffs.Adjustment("Fuel", 1, 2)] } },
        { "Tariff.Adjustments[0].Prices[0]", "is 1E+300; it must be", t => t with { Adjustments = [PublishedTariffs.Adjustment("Fuel", 1e300)] } },
        { "Tariff.Adjustments[0].When", "has only one of first and last day", t => t with { Adjustments = [t.Adjustments[0] with { When = new() { Start = new(1, 1) } }] } },
        { "Tariff.Demand[0].Blocks[1].UpTo", "ends at 10 kW; it must end above 10 kW", t => WithDemand(t, charge => charge with { Blocks = [Block(10), Block(10)] }) },
        { "Tariff.Demand[0].Blocks[0].Price", "is 1E+30; it must be", t => WithDemand(t, charge => charge with { Blocks = [new(Power.FromKilowatts(1), DemandPrice.FromPerKilowatt(1e30))] }) },
        { "Tariff.Demand[0].Minimum", "is -1; it must be zero or more", t => WithDemand(t, charge => charge with { Minimum = Power.FromKilowatts(-1) }) },
        { "Tariff.Demand[0].Rounding.Step", "is 0; it must be 0.001 to 1000", t => WithDemand(t, charge => charge with { Rounding = new(Power.Zero) }) },
        { "Tariff.Demand[0].Ratchet.Share", "is 80; it must be 0 to 1", t => WithDemand(t, charge => charge with { Ratchet = new(80) }) },
        { "Tariff.Demand[0].Ratchet.Months", "is 0; it must be 1 to 11", t => WithDemand(t, charge => charge with { Ratchet = new(0.8, 0) }) },
        { "Tariff.Demand[0].Ratchet.PeakMonths[1]", "is 13; it must be 1 to 12", t => WithDemand(t, charge => charge with { Ratchet = new(0.8) { PeakMonths = [6, 13] } }) },
        { "Tariff.PowerFactor", "has no demand charge", t => t with { Demand = [] } },
        { "Tariff.PowerFactor.On[0]", "\"Night\", but the tariff has none", t => t with { PowerFactor = new BilledInKilovoltAmperes { On = ["Night"] } } },
        { "Tariff.PowerFactor.Target", "is 90; it must be 0.5 to 1", t => t with { PowerFactor = new TargetPowerFactor(90) } },
        { "Tariff.PowerFactor.Threshold", "is 95; it must be 0.5 to 1", t => t with { PowerFactor = new AddedPerPoint(95, 0.02) } },
        { "Tariff.PowerFactor.SharePerPoint", "is 2; it must be 0 to 0.1", t => t with { PowerFactor = new AddedPerPoint(0.95, 2) } },
        { "Tariff.PowerFactor.FreeShare", "is 33; it must be 0 to 1", t => t with { PowerFactor = new ReactiveAboveShare(33, DemandPrice.Zero) } },
        { "Tariff.PowerFactor.PricePerKilovar", "is 1E+30; it must be", t => t with { PowerFactor = new ReactiveAboveShare(0.3, DemandPrice.FromPerKilowatt(1e30)) } },
        { "Tariff.LoadFactorCredit.AboveHours", "is 8760; it must be 0 to 744", t => t with { LoadFactorCredit = t.LoadFactorCredit! with { AboveHours = 8760 } } },
        { "Tariff.LoadFactorCredit.Demand", "\"Night\", but the tariff has none", t => t with { LoadFactorCredit = t.LoadFactorCredit! with { Demand = "Night" } } },
        { "Tariff.MinimumBill", "is -5; it must be zero or more", t => t with { MinimumBill = Money.FromUnits(-5) } },
        { "Tariff.AmountDecimals", "is 5; it must be 0 to 4", t => t with { AmountDecimals = 5 } },
        { "Tariff.Taxes[0].Rate", "is 19; it must be -1 to 1", t => t with { Taxes = [new("Tax", 19)] } },
        { "Tariff.Taxes[0].On[0]", "no charge of that name", t => t with { Taxes = [new("Tax", 0.19) { On = ["Tax"] }] } },
        { "Tariff.Holidays[0].Nth", "weekday number 5 of its month", t => t with { Holidays = [new WeekdayHoliday(5, IsoDayOfWeek.Monday, 5)] } },
        { "Tariff.Holidays[0].Weekday", "no day of the week", t => t with { Holidays = [new WeekdayHoliday(1, IsoDayOfWeek.None, 5)] } },
        { "Tariff.Holidays[0].Month", "is 13; it must be 1 to 12", t => t with { Holidays = [new WeekdayHoliday(1, IsoDayOfWeek.Monday, 13)] } },
        { "Tariff.Holidays[0].DaysAfter", "is 8; it must be -7 to 7", t => t with { Holidays = [new WeekdayHoliday(1, IsoDayOfWeek.Monday, 1, 8)] } },
        { "Tariff.Holidays[0].DaysAfter", "is 61; it must be -60 to 60", t => t with { Holidays = [new EasterHoliday(61)] } },
        { "Tariff.Reading.DayOfMonth", "is 29; it must be 1 to 28", t => t with { Reading = new() { DayOfMonth = 29 } } },
        { "Tariff.Reading.Dates", "There are 12 reading dates; give thirteen", t => t with { Reading = new() { Dates = Readings[..12] } } },
        { "Tariff.Reading.Dates[1]", "59 days; a billing month has 15 to 45. A reading seems to be missing", t => t with { Reading = new() { Dates = [Readings[0], .. Readings[2..], Readings[12].PlusDays(30)] } } },
        { "Tariff.Reading.Dates[2]", "1 days; a billing month has 15 to 45. A reading seems to stand twice", t => t with { Reading = new() { Dates = [Readings[0], Readings[1], Readings[1].PlusDays(1), .. Readings[3..]] } } },
        { "Tariff.Reading.Dates[1]", "does not come after", t => t with { Reading = new() { Dates = [Readings[1], Readings[0], .. Readings[2..]] } } },
        { "Tariff.Reading.Dates", "span 381 days; a year of bills has 362 to 368", t => t with { Reading = new() { Dates = [.. Readings[..12], Readings[12].PlusDays(16)] } } },
        { "Tariff.Energy[0].When.Windows[0]", "whole minutes", t => t with { Energy = [t.Energy[0] with { When = t.Energy[0].When with { Windows = [new(DayKind.Weekday, new(12, 0, 30), new(20, 0))] } }, .. t.Energy.Skip(1)] } },
    };

    [Theory, MemberData(nameof(Wrong), DisableDiscoveryEnumeration = true)]
    public void name_the_place_the_value_and_what_is_allowed(string path, string text, Func<Tariff, Tariff> spoil)
    {
        var problems = StudyEvaluation.Check(With(spoil(Full)));
        Assert.Contains(problems, problem => problem.Path == path && problem.Message.Contains(text, StringComparison.Ordinal));
    }

    [Fact]
    public void are_none_in_a_tariff_with_every_clause() => Assert.Empty(StudyEvaluation.Check(With(Full)));

    [Theory, InlineData(null, "is not given; take it from a bill"), InlineData(0.1, "is 0.1; it must be 0.3 to 1")]
    public void ask_for_the_power_factor_of_the_site(double? powerFactor, string text)
    {
        var study = With(Full) with { Site = SampleStudy.Small.Site with { PowerFactor = powerFactor } };
        Assert.Contains(text, Assert.Single(StudyEvaluation.Check(study), problem => problem.Path == "Site.PowerFactor").Message);
    }

    // 12 November 2027 is a Friday. On a Saturday, as in 2022, or as the season of a whole month, its weekday windows leave weekend hours without a price.
    [Fact]
    public void name_hours_without_a_price_on_a_kind_of_day_that_the_season_does_not_meet_this_year()
    {
        EnergyCharge charge(string name, AnnualDate start, AnnualDate end, params TariffWindow[] windows) =>
            SampleTariff.Charge(name, new() { Start = start, End = end, Windows = windows }, new EnergyBlock(null, SampleTariff.Price(0.1)));
        var tariff = Tariff.Flat(SampleTariff.Price(0.1)) with
        {
            Energy = [charge("One day", new(11, 12), new(11, 12), new TariffWindow(DayKind.Weekday, LocalTime.Midnight, LocalTime.Midnight)), charge("Rest", new(11, 13), new(11, 11))],
        };
        Assert.Contains("No energy price applies on 12 November (a weekend day or holiday)", Assert.Single(StudyEvaluation.Check(With(tariff))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void reach_the_holidays_of_weekly_schedules()
    {
        var hall = SampleStudy.Small.Areas[1];
        var study = SampleStudy.Small with { Areas = [SampleStudy.Small.Areas[0], hall with { Weekly = hall.Weekly! with { Holidays = [new EasterHoliday(99)] } }] };
        Assert.Equal(["Areas[1].Weekly.Holidays[0].DaysAfter"], StudyEvaluation.Check(study).Select(problem => problem.Path));
    }

    private static Study With(Tariff tariff) => SampleStudy.Small with { Tariff = tariff, Site = SampleStudy.Small.Site with { PowerFactor = 0.85 } };

    private static Tariff WithEnergy(Tariff tariff, Func<EnergyCharge, EnergyCharge> change) => tariff with { Energy = [tariff.Energy[0], tariff.Energy[1], change(tariff.Energy[2])] };

    private static Tariff WithDemand(Tariff tariff, Func<DemandCharge, DemandCharge> change) => tariff with { Demand = [change(tariff.Demand[0]), tariff.Demand[1]] };

    private static DemandBlock Block(double upTo) => new(Power.FromKilowatts(upTo), DemandPrice.FromPerKilowatt(1));
}
