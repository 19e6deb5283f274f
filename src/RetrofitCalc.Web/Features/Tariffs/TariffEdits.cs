using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Tariffs.Periods;
using RetrofitCalc.Web.Shared;
using RetrofitCalc.Web.Shared.Fields;

namespace RetrofitCalc.Web.Features.Tariffs;

/// <summary>Changes of the tariff: pure functions of the study.</summary>
public static class TariffEdits
{
    private static readonly (AnnualDate Start, AnnualDate End) Summer = (new(6, 1), new(9, 30));
    private static readonly (AnnualDate Start, AnnualDate End) Winter = (new(10, 1), new(5, 31));

    public static Study With(Study study, Func<Tariff, Tariff> change) => study with { Tariff = change(study.Tariff) };

    public static Study Energy(Study study, int index, Func<EnergyCharge, EnergyCharge> change) =>
        With(study, t => t with { Energy = t.Energy.At(index, change) });

    public static Study Demand(Study study, int index, Func<DemandCharge, DemandCharge> change) =>
        With(study, t => t with { Demand = t.Demand.At(index, change) });

    public static Study Fixed(Study study, int index, Func<FixedCharge, FixedCharge> change) =>
        With(study, t => t with { Fixed = t.Fixed.At(index, change) });

    public static bool IsFlat(Tariff tariff) =>
        tariff is { Demand.Count: 0, Fixed.Count: 0, Adjustments.Count: 0, Taxes.Count: 0, PowerFactor: null, LoadFactorCredit: null, MinimumBill: null }
        && tariff is { Energy: [{ When: { Start: null, End: null, Windows.Count: 0 }, Blocks.Count: 1 }], Reading: { DayOfMonth: 1, Dates.Count: 0 } };

    /// <summary>One price at all hours; name, currency, source and dates stay.</summary>
    public static Tariff ToFlat(Tariff tariff, EnergyPrice price) => Tariff.Flat(price, tariff.Currency) with { Name = tariff.Name, Source = tariff.Source, ValidFrom = tariff.ValidFrom, ValidTo = tariff.ValidTo };

    /// <summary>Two seasons with two periods each, all at the present price: the bill moves only when real prices are typed.</summary>
    public static Tariff ToSeasons(Tariff tariff)
    {
        var price = tariff.Energy[0].Blocks[0].Price;
        return tariff with { Energy = [.. Periods("Summer", Summer, price), .. Periods("Winter", Winter, price)] };
    }

    /// <summary>Prices that held all year now hold in summer, and a copy in winter; else the last season is copied to the day after it ends.</summary>
    public static Tariff AddSeason(Tariff tariff)
    {
        var last = TariffSeason.Of(tariff)[^1];
        var copies = last.Charges.Select(i => tariff.Energy[i]).ToList();
        if (last.Start is not { } || last.End is not { } end) return tariff with
        {
            Energy = [.. tariff.Energy.Select(c => Dated(c, Summer, c.Name)), .. copies.Select(c => Dated(c, Winter, $"{c.Name}, winter"))],
        };
        var next = end.InYear(2027).PlusDays(1);
        var dates = (new AnnualDate(next.Month, next.Day), end);
        return tariff with { Energy = [.. tariff.Energy, .. copies.Select(c => Dated(c, dates, $"{c.Name}, next season"))] };
    }

    public static Tariff AddPeriod(Tariff tariff, TariffSeason season) => tariff with
    {
        Energy =
        [
            .. tariff.Energy,
            new EnergyCharge
            {
                Name = $"Period {season.Charges.Count + 1}",
                When = new() { Start = season.Start, End = season.End, Windows = [Afternoon] },
                Blocks = [new(null, tariff.Energy[season.Charges[0]].Blocks[^1].Price)],
            },
        ],
    };

    public static Tariff AddDemand(Tariff tariff) =>
        tariff with { Demand = [.. tariff.Demand, new DemandCharge { Name = tariff.Demand.Count == 0 ? "Demand" : $"Demand {tariff.Demand.Count + 1}", Price = default }] };

    public static Tariff AddFixed(Tariff tariff) =>
        tariff with { Fixed = [.. tariff.Fixed, new FixedCharge(tariff.Fixed.Count == 0 ? "Customer charge" : $"Fixed charge {tariff.Fixed.Count + 1}", Money.Zero)] };

    public static EditState Remove(EditState state, string list, int index, Func<Tariff, Tariff> without) =>
        new(With(state.Study, without), state.Drafts.AfterDeleting("Tariff." + list, index));

    public static TariffWindow Afternoon { get; } = new(DayKind.Weekday, new(12, 0), new(20, 0));

    private static EnergyCharge[] Periods(string season, (AnnualDate Start, AnnualDate End) dates, EnergyPrice price) =>
    [
        new() { Name = $"{season} on-peak", When = new() { Start = dates.Start, End = dates.End, Windows = [Afternoon] }, Blocks = [new(null, price)] },
        new() { Name = $"{season} off-peak", When = new() { Start = dates.Start, End = dates.End }, Blocks = [new(null, price)] },
    ];

    private static EnergyCharge Dated(EnergyCharge charge, (AnnualDate Start, AnnualDate End) dates, string name) =>
        charge with { Name = name, When = charge.When with { Start = dates.Start, End = dates.End } };
}
