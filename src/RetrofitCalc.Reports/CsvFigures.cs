using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>One row of the results table. Empty where a figure does not apply or never comes about.</summary>
internal sealed record CsvFigure(string Name, string Unit, double? Now, IReadOnlyList<double?> Options);

/// <summary>The rows of the results table, in fixed order: site, areas, seasons, money, ranges, cash flow.</summary>
internal static class CsvFigures
{
    public static IEnumerable<CsvFigure> Of(StudyResult result)
    {
        var money = result.Study.Tariff.Currency;
        CsvFigure Case(string name, string unit, Func<LightingCase, double?> figure) => new(name, unit, figure(result.Now), [.. result.Options.Select(o => figure(o.After))]);
        CsvFigure Option(string name, string unit, Func<OptionResult, double?> figure) => new(name, unit, null, [.. result.Options.Select(figure)]);
        return
        [
            .. Shares("site", money, lighting => lighting.Site, Case),
            .. result.Now.Areas.SelectMany((area, i) => Shares($"area {area.Name}", money, lighting => lighting.Areas.FirstOrDefault(a => a.Id == area.Id), Case)),
            .. result.Now.Seasons.SelectMany(season => Shares($"season {season.Name}", money, lighting => lighting.Seasons.FirstOrDefault(s => s.Name == season.Name), Case)),
            Case("replacements within the study", money, lighting => lighting.Replacements.Sum(due => due.Cost.Units)),
            .. Carbon(new CarbonFigures(result), Case, Option),
            .. Money(money, Option),
            .. Bill(result, money),
            .. Ranges(money, Option),
            .. LightCsv.Of(result, money),
            .. Enumerable.Range(0, result.Study.Assumptions.StudyYears + 1).SelectMany(year => Year(year, money, Option)),
        ];
    }

    private static IEnumerable<CsvFigure> Shares(string what, string money, Func<LightingCase, ShareFigures?> share, Func<string, string, Func<LightingCase, double?>, CsvFigure> row) =>
    [
        row($"{what}: connected load", "W", l => share(l)?.Connected.Watts),
        row($"{what}: ballast loss", "W", l => share(l)?.BallastLoss.Watts),
        row($"{what}: heat", "BTU/h", l => share(l)?.Heat.BtuPerHour),
        row($"{what}: hours with light", "h/yr", l => share(l)?.Hours.Hours),
        row($"{what}: lighting energy", "kWh/yr", l => share(l)?.Lighting.KilowattHours),
        row($"{what}: plant energy", "kWh/yr", l => share(l)?.Plant.KilowattHours),
        row($"{what}: fuel saved by the lights' heat", "therm/yr", l => share(l)?.FuelTherms),
        row($"{what}: moisture while on", "kg/h", l => share(l)?.MoisturePerHour),
        row($"{what}: cost", money + "/yr", l => share(l)?.Cost.Units),
    ];

    private static IEnumerable<CsvFigure> Carbon(
        CarbonFigures carbon, Func<string, string, Func<LightingCase, double?>, CsvFigure> lighting, Func<string, string, Func<OptionResult, double?>, CsvFigure> option) =>
    [
        lighting("carbon, average of the grid", "kg CO2e/yr; empty = not known", carbon.Inventory),
        option("carbon saved by the change", "kg CO2e/yr; empty = not known", carbon.Saved),
        option("lamps taken out", "count", o => carbon.Retired(o).Lamps),
        option("mercury in lamps taken out", "g; lamps of unknown content left out", o => carbon.Retired(o).MercuryGrams),
    ];

    private static IEnumerable<CsvFigure> Money(string money, Func<string, string, Func<OptionResult, double?>, CsvFigure> row) =>
    [
        row("first cost", money, o => o.FirstCost.Total.Units),
        row("incentive", money, o => o.FirstCost.Incentive.Units),
        row("bill and fuel saved, steady year", money + "/yr", o => o.AnnualBillSaving.Units),
        row("bill and fuel saved, first year", money, o => o.FirstYearBillSaving.Units),
        row("simple payback", "yr; empty = never", o => o.SimplePayback.Years),
        row("simple payback lost again", "1 = yes", o => o.SimplePayback.LostAgain ? 1 : 0),
        row("payback without price rises or replacements", "yr; empty = never", o => o.PlainPayback.Years),
        row("discounted payback", "yr; empty = never", o => o.DiscountedPayback.Years),
        row("net present value", money, o => o.NetPresentValue.Units),
        row("internal rate of return", "1/yr; empty = none or several", o => o.InternalRates.Count == 1 ? o.InternalRates[0] : null),
        row("internal rates found", "count", o => o.InternalRates.Count),
    ];

    /// <summary>Each charge of the bill over the year, then what is saved: in a steady year and in the first.</summary>
    private static IEnumerable<CsvFigure> Bill(StudyResult result, string money)
    {
        CsvFigure Saved(string name, string unit, Func<BillSaving, double?> figure) => new(name, unit, null, [.. result.Options.Select(o => figure(o.Bill))]);
        ChargeSaving? Find(OptionResult option, ChargeSaving charge) => option.Bill.Charges.FirstOrDefault(c => (c.Kind, c.Charge) == (charge.Kind, charge.Charge));
        var charges = result.Options.SelectMany(option => option.Bill.Charges).DistinctBy(charge => (charge.Kind, charge.Charge));
        return
        [
            .. charges.OrderBy(charge => (charge.Kind, charge.Charge)).Select(charge =>
                new CsvFigure($"bill: {charge.Kind.ToString().ToLowerInvariant()} {charge.Charge + 1} {charge.Name}", money + "/yr", charge.Now.Units,
                    [.. result.Options.Select(option => Find(option, charge)?.After.Units ?? 0)])),
            Saved("bill saved in a steady year", money + "/yr", bill => bill.Total.Units),
            Saved("bill saved in the first year", money, bill => bill.FirstYearTotal.Units),
            Saved("bill saved on demand in a steady year", money + "/yr", bill => bill.Demand.Units),
            Saved("bill saved on demand in the first year", money, bill => bill.FirstYearDemand.Units),
            Saved("energy saved on the meter", "kWh/yr", bill => bill.Energy.KilowattHours),
            Saved("average price now", money + "/kWh", bill => bill.BlendedPrice?.PerKilowattHour),
            Saved("saving the average price would promise", money + "/yr", bill => bill.BlendedTotal?.Units),
        ];
    }

    private static IEnumerable<CsvFigure> Ranges(string money, Func<string, string, Func<OptionResult, double?>, CsvFigure> row) =>
    [
        row("payback, low", "yr; empty = never", o => o.Ranges.Payback.Low),
        row("payback, high", "yr; empty = never", o => o.Ranges.Payback.High),
        row("net present value, low", money, o => o.Ranges.NetPresentValue.Low.Units),
        row("net present value, high", money, o => o.Ranges.NetPresentValue.High.Units),
        row("bill saved, low", money, o => o.Ranges.AnnualBillSaving.Low.Units),
        row("bill saved, high", money, o => o.Ranges.AnnualBillSaving.High.Units),
        row("first cost, low", money, o => o.Ranges.FirstCost.Low.Units),
        row("first cost, high", money, o => o.Ranges.FirstCost.High.Units),
    ];

    private static IEnumerable<CsvFigure> Year(int year, string money, Func<string, string, Func<OptionResult, double?>, CsvFigure> row) =>
    [
        row($"year {year}: net flow", money, o => o.CashFlow.ElementAtOrDefault(year)?.Net.Units),
        row($"year {year}: cumulative", money, o => o.CashFlow.ElementAtOrDefault(year)?.Cumulative.Units),
        row($"year {year}: cumulative, discounted", money, o => o.CashFlow.ElementAtOrDefault(year)?.CumulativeDiscounted.Units),
    ];
}
