using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>What electricity costs, charge by charge.</summary>
internal static class TariffTable
{
    public static ReportTable Of(SummaryContext context)
    {
        var (tariff, text) = (context.Study.Tariff, context.Text);
        return new ReportTable($"{tariff.Name}: {SourceWords.Kind(tariff.Source.Kind)}, {SourceWords.Full(tariff.Source)}",
            [new("Charge", 1.6), new("When", 3), new("Price", 1, true)],
            [
                .. tariff.Fixed.Select(charge => Row(charge.Name, charge.Per == ChargedPer.Day ? "each day" : "each month", text.Cents(charge.Amount))),
                .. tariff.Energy.SelectMany(charge => charge.Blocks.Select(block => Row(charge.Name, TariffTimes.When(charge.When, tariff.Energy.Count > 1 ? "all other hours" : "all hours") + UpTo(charge.BlockUnit, block, text), text.Price(block.Price)))),
                .. tariff.Adjustments.Select(charge => Row(charge.Name, "added, " + TariffTimes.When(charge.When), Prices(charge, text))),
                .. tariff.Demand.SelectMany(charge => Demand(charge, text)),
                .. TariffClauses.Rows(tariff, context.Study.Site.PowerFactor, text),
            ]);
    }

    internal static ReportRow Row(string charge, string when, string price) => new([charge, when, price]);

    private static string UpTo(BlockUnit unit, EnergyBlock block, QuantityText text) => block.UpTo is not { } end ? "" : unit switch
    {
        BlockUnit.PerKilowatt => $"; up to {text.Number(end.KilowattHours)} kWh for each kW billed",
        BlockUnit.PerDay => $"; up to {text.KilowattHours(end)} a day",
        _ => $"; up to {text.KilowattHours(end)} a month",
    };

    private static string Prices(EnergyAdjustment charge, QuantityText text) => charge.Prices.Distinct().Count() == 1
        ? text.Price(charge.Prices[0])
        : $"{text.Price(charge.Prices.MinBy(price => price.PerKilowattHour))} to {text.Price(charge.Prices.MaxBy(price => price.PerKilowattHour))}, by month";

    private static IEnumerable<ReportRow> Demand(DemandCharge charge, QuantityText text)
    {
        var when = $"{TariffTimes.When(charge.When)}; highest {charge.WindowMinutes} minutes of the month{Ratchet(charge, text)}{Least(charge, text)}{Rounding(charge, text)}";
        return
        [
            .. charge.Blocks.Select(block => Row(charge.Name, $"{when}; up to {text.Kilowatts(block.UpTo)}", text.Price(block.Price))),
            Row(charge.Name, charge.Blocks.Count == 0 ? when : when + "; above that", text.Price(charge.Price)),
        ];
    }

    private static string Ratchet(DemandCharge charge, QuantityText text) => charge.Ratchet is not { } ratchet ? ""
        : $", at least {text.Percent(ratchet.Share)} of the highest of {ratchet.Months} months before{TariffTimes.Months(ratchet.PeakMonths)}{(ratchet.AcrossCharges ? ", of all demand charges" : "")}";

    private static string Least(DemandCharge charge, QuantityText text) => charge.Minimum is { } least ? $", at least {text.Kilowatts(least)}" : "";

    private static string Rounding(DemandCharge charge, QuantityText text) => charge.Rounding is not { } rounding ? "" : rounding.Direction switch
    {
        RoundingDirection.Up => $", rounded up to {text.Kilowatts(rounding.Step)}",
        RoundingDirection.Down => $", rounded down to {text.Kilowatts(rounding.Step)}",
        _ => $", rounded to {text.Kilowatts(rounding.Step)}",
    };
}
