using CsCheck;
using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.Billing;

/// <summary>Tariffs with anything a tariff can have, sound by construction: at each minute one energy charge.</summary>
internal static class AnyTariff
{
    // Within the hours in which clocks change a boundary would have no single meaning, so those are left to whole hours.
    private static readonly Gen<int> Minute = Gen.Int[0, 287].Select(five => five * 5 / 60 is 1 or 2 ? five * 5 / 60 * 60 : five * 5);

    private static readonly Gen<AnnualDate> Date = Gen.Select(Gen.Int[1, 12], Gen.Int[1, 28], (month, day) => new AnnualDate(month, day));

    private static readonly Gen<DayKind> Days = Gen.Int[0, 2].Select(i => (DayKind)i);

    private static readonly Gen<double> Price = Gen.Int[1, 99_999].Select(i => i / 100_000.0);

    private static readonly Gen<double> LargePrice = Gen.Int[0, 999_999].Select(i => i / 10_000.0);

    private static readonly Gen<Holiday> Holidays = Gen.OneOf(
        Gen.Select(Date, Gen.Int[0, 2], (date, moves) => (Holiday)new FixedHoliday(date, (WeekendMove)moves)),
        Gen.Select(Gen.Int[1, 4], Gen.Int[1, 7], Gen.Int[1, 12], Gen.Int[-2, 2], (nth, weekday, month, after) => (Holiday)new WeekdayHoliday(nth, (IsoDayOfWeek)weekday, month, after)),
        Gen.Int[-3, 40].Select(days => (Holiday)new EasterHoliday(days)));

    /// <summary>Whether charges hold all year or in two parts of it.</summary>
    private static readonly Gen<(AnnualDate? Start, AnnualDate? End)[]> Seasons = Gen.Select(Gen.Bool, Date, Date, (two, a, b) =>
        two && a != b ? new (AnnualDate?, AnnualDate?)[] { (a, Before(b)), (b, Before(a)) } : [(null, null)]);

    private static readonly Gen<EnergyBlock[]> Blocks = Gen.Select(Price, Price, Price, Gen.Int[0, 2], (a, b, c, ends) => new[] { (5.3, a), (17.1, b), (-1, c) }[(2 - ends)..]
        .Select(block => new EnergyBlock(block.Item1 < 0 ? null : Energy.FromKilowattHours(block.Item1 * 10), EnergyPrice.FromPerKilowattHour(block.Item2))).ToArray());

    private static readonly Gen<EnergyCharge[]> Energies = Gen.Select(Seasons, Gen.Select(Minute, Days).Array[3], Blocks.Array[6], Gen.Int[0, 2], (seasons, cuts, blocks, unit) =>
        seasons.SelectMany((season, s) =>
        {
            int[] at = [.. cuts.Select(cut => cut.Item1).Append(1440).Distinct().Order()];
            EnergyCharge charge(string name, int i, params TariffWindow[] windows) => new()
            {
                Name = $"{name} {s}", Blocks = blocks[s * 3 + i], BlockUnit = (BlockUnit)unit, When = new() { Start = season.Start, End = season.End, Windows = windows },
            };
            TariffWindow window(int i) => new(cuts[i].Item2, Time(at[i]), Time(at[i + 1]));
            return new[] { at.Length > 1 ? charge("First", 0, window(0)) : null, at.Length > 2 ? charge("Second", 1, window(1)) : null, charge("Rest", 2) }.OfType<EnergyCharge>();
        }).ToArray());

    private static readonly Gen<TariffHours> Hours = Gen.Select(Seasons, Gen.Bool, Gen.Int[0, 22], Gen.Int[1, 23], Days, (seasons, all, from, length, days) => new TariffHours
    {
        Start = seasons[0].Start, End = seasons[0].End,
        Windows = all ? [] : [new(days, new(from, 0), from + length >= 24 ? LocalTime.Midnight : new(from + length, 0))],
    });

    private static readonly Gen<EnergyAdjustment> Adjustments = Gen.Select(Hours, Price.Array[12], Gen.Bool, (hours, prices, one) => new EnergyAdjustment
    {
        Name = "", When = hours, Prices = [.. prices.Take(one ? 1 : 12).Select((price, i) => EnergyPrice.FromPerKilowattHour(i % 3 == 1 ? -price : price))],
    });

    private static readonly Gen<Ratchet?> Ratchets = Gen.Select(Gen.Int[0, 100], Gen.Int[1, 11], Gen.Bool, Gen.Int[0, 2], (share, months, across, peaks) => share < 30
        ? null
        : new Ratchet(share / 100.0, months) { AcrossCharges = across, PeakMonths = peaks == 0 ? [6, 7, 8, 9] : [] });

    private static readonly Gen<DemandRounding?> Roundings = Gen.Select(Gen.Bool, Gen.Int[1, 20], Gen.Int[0, 2], (none, step, way) =>
        none ? null : new DemandRounding(Power.FromKilowatts(step / 4.0), (RoundingDirection)way));

    private static readonly Gen<DemandCharge> Demands = Gen.Select(Hours, LargePrice.Array[3], Gen.Int[0, 2], Gen.Int[0, 2], Ratchets, Roundings, Gen.Int[0, 60], (hours, prices, window, blocks, ratchet, rounding, least) => new DemandCharge
    {
        Name = "", When = hours, Price = DemandPrice.FromPerKilowatt(prices[0]), WindowMinutes = new[] { 15, 30, 60 }[window], Ratchet = ratchet, Rounding = rounding,
        Blocks = [.. Enumerable.Range(1, blocks).Select(i => new DemandBlock(Power.FromKilowatts(i * 11.5), DemandPrice.FromPerKilowatt(prices[i])))],
        Minimum = least > 30 ? Power.FromKilowatts(least) : null,
    });

    private static readonly Gen<PowerFactorClause?> Clauses = Gen.Select(Gen.Int[0, 4], Gen.Bool, Gen.Int[80, 100], LargePrice, (kind, named, percent, price) =>
    {
        PowerFactorClause? clause = kind switch
        {
            1 => new BilledInKilovoltAmperes(), 2 => new TargetPowerFactor(percent / 100.0), 3 => new AddedPerPoint(percent / 100.0, 0.02), 4 => new ReactiveAboveShare((percent - 70) / 100.0, DemandPrice.FromPerKilowatt(price)), _ => null,
        };
        return named && clause is not null ? clause with { On = ["Demand 0"] } : clause;
    });

    private static readonly Gen<(LoadFactorCredit? Credit, Money? Minimum, BillTax[] Taxes)> Rest = Gen.Select(Gen.Int[0, 40], Gen.Int[0, 900], Gen.Int[-10, 30], Gen.Int[0, 2], (hours, least, rate, taxes) => (
        hours > 20 ? new LoadFactorCredit("Credit", hours, DemandPrice.FromPerKilowatt(0.0137)) : null,
        least > 450 ? Money.FromUnits(least) : (Money?)null,
        new BillTax[] { new("On some", rate / 100.0) { On = ["Rest 0", "Demand 0", "By the day", "Adjustment 0"] }, new("On all", 0.0625) }[..taxes]));

    private static readonly Gen<(EnergyCharge[] Energy, DemandCharge[] Demand, EnergyAdjustment[] Adjustments)> Charges =
        Gen.Select(Energies, Demands.Array[0, 3], Adjustments.Array[0, 2], (energy, demand, adjustments) => (energy, demand, adjustments));

    public static readonly Gen<Tariff> Generated = Gen.Select(Charges, Clauses, Rest, Holidays.Array[0, 4], Gen.Int[0, 4], Gen.Int[0, 2], LargePrice,
        (charges, clause, rest, holidays, decimals, change, amount) => new Tariff
        {
            Name = "Any", Energy = charges.Energy, PowerFactor = clause, LoadFactorCredit = rest.Credit, MinimumBill = rest.Minimum, Taxes = rest.Taxes,
            Holidays = holidays, AmountDecimals = decimals, SeasonChange = (SeasonChange)change,
            Fixed = [new("By the month", Money.FromUnits(amount)), new("By the day", Money.FromUnits(amount / 7), ChargedPer.Day)],
            Demand = [.. charges.Demand.Select((charge, i) => charge with { Name = $"Demand {i}" })],
            Adjustments = [.. charges.Adjustments.Select((adjustment, i) => adjustment with { Name = $"Adjustment {i}" })],
        });

    private static AnnualDate Before(AnnualDate date)
    {
        // By a leap year: the day before 1 March is the last of February, whichever it is, and no tariff leaves 29 February without a price.
        var before = date.InYear(2028).PlusDays(-1);
        return new(before.Month, before.Day);
    }

    private static LocalTime Time(int minute) => minute >= 1440 ? LocalTime.Midnight : new(minute / 60, minute % 60);
}
