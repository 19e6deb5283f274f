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
                .. tariff.Fixed.Select(charge => new ReportRow([charge.Name, "each month", text.Cents(charge.Amount)])),
                .. tariff.Energy.SelectMany(charge => charge.Blocks.Select(block => new ReportRow([charge.Name, When(charge.When) + Upto(block, text), text.Price(block.Price)]))),
                .. tariff.Demand.Select(charge => new ReportRow([charge.Name, $"{When(charge.When)}; highest {charge.WindowMinutes} minutes of the month{Ratchet(charge, text)}", text.Price(charge.Price)])),
            ]);
    }

    private static string Upto(EnergyBlock block, QuantityText text) => block.UpTo is { } end ? $"; up to {text.KilowattHours(end)} a month" : "";

    private static string Ratchet(DemandCharge charge, QuantityText text) =>
        charge.Ratchet is { } ratchet ? $", at least {text.Percent(ratchet.Share)} of the highest of {ratchet.Months} months before" : "";

    private static string When(TariffHours when)
    {
        var dates = when is { Start: { } start, End: { } end } ? $"{Day(start)} – {Day(end)}" : "all year";
        return when.Windows.Count == 0 ? $"{dates}, all other hours" : $"{dates}, {string.Join("; ", when.Windows.Select(Window))}";
    }

    private static string Window(TariffWindow window) =>
        $"{(window.Days == DayKind.All ? "every day" : window.Days == DayKind.Weekday ? "weekdays" : "weekends")} {Clock(window.From)} – {(window.To == NodaTime.LocalTime.Midnight ? "24:00" : Clock(window.To))}";

    private static string Clock(NodaTime.LocalTime time) => NodaTime.Text.LocalTimePattern.CreateWithInvariantCulture("HH:mm").Format(time);

    private static string Day(NodaTime.AnnualDate day) => NodaTime.Text.AnnualDatePattern.CreateWithInvariantCulture("d MMM").Format(day);
}
