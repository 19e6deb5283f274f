using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>What a tariff says beside its charges: power factor, credits, minimum, taxes, days.</summary>
internal static class TariffClauses
{
    public static IEnumerable<ReportRow> Rows(Tariff tariff, double? powerFactor, QuantityText text)
    {
        if (tariff.PowerFactor is { } clause)
            yield return TariffTable.Row("Power factor", Words(clause, text) + On(clause.On), powerFactor is { } known ? text.Number(known, 2) : QuantityText.NotKnown);
        if (tariff.LoadFactorCredit is { } credit)
            yield return TariffTable.Row(credit.Name, $"credit for each kW billed and hour of use above {text.Number(credit.AboveHours)} a month", text.Price(credit.PricePerKilowatt));
        if (tariff.MinimumBill is { } least)
            yield return TariffTable.Row("Minimum bill", "each month, before taxes", text.Cents(least));
        foreach (var tax in tariff.Taxes)
            yield return TariffTable.Row(tax.Name, tax.On.Count == 0 ? "on all lines" : "on " + string.Join(", ", tax.On), text.Percent(tax.Rate, 2));
        yield return TariffTable.Row("Days", $"{Reading(tariff, text)}; {Holidays(tariff, text)}; {Change(tariff)}", QuantityText.DoesNotApply);
    }

    private static string Words(PowerFactorClause clause, QuantityText text) => clause switch
    {
        BilledInKilovoltAmperes => "demand is billed in kVA: kW over the power factor",
        TargetPowerFactor target => $"below {text.Number(target.Target, 2)}, demand is billed times {text.Number(target.Target, 2)} over the power factor",
        AddedPerPoint points => $"for each 0.01 below {text.Number(points.Threshold, 2)}, demand grows by {text.Percent(points.SharePerPoint, 2)}",
        ReactiveAboveShare reactive => $"reactive demand above {text.Percent(reactive.FreeShare)} of kW costs {text.Cents(Engine.Quantities.Money.FromUnits(reactive.PricePerKilovar.PerKilowatt))}/kvar",
        _ => clause.GetType().Name,
    };

    private static string On(IReadOnlyList<string> charges) => charges.Count == 0 ? "" : $" ({string.Join(", ", charges)})";

    private static string Reading(Tariff tariff, QuantityText text) => tariff.Reading switch
    {
        { Dates: { Count: > 0 } dates } => $"meter read on {dates.Count} given dates, the first {text.Date(dates[0])}",
        { DayOfMonth: 1 } => "billed by calendar months",
        { DayOfMonth: var day } => $"billing months begin on day {day}",
    };

    private static string Holidays(Tariff tariff, QuantityText text) =>
        tariff.Holidays.Count switch { 0 => "no holidays", 1 => "one holiday billed as a weekend day", var count => $"{text.Number(count)} holidays billed as weekend days" };

    private static string Change(Tariff tariff) => tariff.SeasonChange switch
    {
        SeasonChange.SeasonOfFirstDay => "the season of a month’s first day holds for all of it",
        SeasonChange.SeasonOfLastDay => "the season of a month’s last day holds for all of it",
        _ => "a season counts its own days of a month",
    };
}
