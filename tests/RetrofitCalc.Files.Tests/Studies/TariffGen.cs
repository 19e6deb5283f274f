using CsCheck;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using static RetrofitCalc.Files.Tests.Studies.StudyGen;

namespace RetrofitCalc.Files.Tests.Studies;

/// <summary>Makes tariffs of every shape the types allow; their prices need not make sense.</summary>
internal static class TariffGen
{
    private static readonly Gen<EnergyPrice> Credit = Gen.Double[-1, 1].Select(EnergyPrice.FromPerKilowattHour);
    private static readonly Gen<DemandPrice> PerKilowatt = Number.Select(DemandPrice.FromPerKilowatt);

    private static readonly Gen<TariffHours> Hours = Gen.Select(Maybe(Day), Maybe(Day), List(Gen.Select(Enum<DayKind>(), Time, Time, (k, f, t) => new TariffWindow(k, f, t))),
        (start, end, windows) => new TariffHours { Start = start, End = end, Windows = windows });

    private static readonly Gen<EnergyCharge> Energy = Gen.Select(Text, Hours, Enum<BlockUnit>(), MaybeRef(Text),
        List(Gen.Select(Maybe(Number), Number, (upTo, price) => new EnergyBlock(upTo is { } end ? Engine.Quantities.Energy.FromKilowattHours(end) : null, EnergyPrice.FromPerKilowattHour(price)))),
        (name, when, unit, demand, blocks) => new EnergyCharge { Name = name, When = when, Blocks = blocks, BlockUnit = unit, BlocksByDemand = demand });

    private static readonly Gen<EnergyAdjustment> Adjustments = Gen.Select(Text, Hours, List(Credit), (name, when, prices) => new EnergyAdjustment { Name = name, When = when, Prices = prices });

    private static readonly Gen<Ratchet> Ratchets = Gen.Select(Share, Gen.Int[1, 11], List(Gen.Int[1, 12]), Gen.Bool,
        (share, months, peaks, across) => new Ratchet(share, months) { PeakMonths = peaks, AcrossCharges = across });

    private static readonly Gen<DemandCharge> Demand = Gen.Select(Text, Hours, PerKilowatt, MaybeRef(Ratchets), Maybe(Number),
        MaybeRef(Enum<RoundingDirection>().Select(way => new DemandRounding(Power.FromKilowatts(1), way))),
        List(Gen.Select(Number, PerKilowatt, (upTo, price) => new DemandBlock(Power.FromWatts(upTo), price))),
        (name, when, price, ratchet, least, rounding, blocks) => new DemandCharge
        {
            Name = name, When = when, Price = price, Ratchet = ratchet, Minimum = least is { } w ? Power.FromWatts(w) : null, Rounding = rounding, Blocks = blocks,
        });

    private static readonly Gen<PowerFactorClause> Clauses = Gen.OneOf<PowerFactorClause>(
        List(Text).Select(on => (PowerFactorClause)new BilledInKilovoltAmperes { On = on }),
        Gen.Select(Share, List(Text), (target, on) => (PowerFactorClause)new TargetPowerFactor(target) { On = on }),
        Gen.Select(Share, Share, (from, share) => (PowerFactorClause)new AddedPerPoint(from, share)),
        Gen.Select(Share, PerKilowatt, (share, price) => (PowerFactorClause)new ReactiveAboveShare(share, price)));

    private static readonly Gen<LoadFactorCredit> Credits = Gen.Select(Text, Number, PerKilowatt, MaybeRef(Text),
        (name, above, price, demand) => new LoadFactorCredit(name, above, price) { Demand = demand });

    private static readonly Gen<MeterReading> Readings = Gen.Select(Gen.Int[1, 28], List(Date), (day, dates) => new MeterReading { DayOfMonth = day, Dates = dates });

    public static readonly Gen<Tariff> Tariffs = Gen.Select(Gen.Select(Text, Source, Maybe(Date), Maybe(Number)), List(Energy), List(Demand), List(Adjustments),
        Gen.Select(MaybeRef(Clauses), MaybeRef(Credits), Readings, Enum<SeasonChange>()), Enum<ChargedPer>(), List(Holidays),
        List(Gen.Select(Text, Share, List(Text), (name, rate, on) => new BillTax(name, rate) { On = on })),
        (head, energy, demand, adjustments, clauses, per, holidays, taxes) => new Tariff
        {
            Name = head.Item1, Source = head.Item2, ValidFrom = head.Item3, ValidTo = head.Item3, MinimumBill = head.Item4 is { } least ? Money.FromUnits(least) : null,
            Energy = energy, Demand = demand, Adjustments = adjustments, Holidays = holidays, Taxes = taxes, Fixed = [new FixedCharge(head.Item1, Money.FromUnits(3), per)],
            PowerFactor = clauses.Item1, LoadFactorCredit = clauses.Item2, Reading = clauses.Item3, SeasonChange = clauses.Item4,
        });
}
