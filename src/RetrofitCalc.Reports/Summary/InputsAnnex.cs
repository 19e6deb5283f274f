using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>Annex A: everything that was put in, with its evidence.</summary>
internal static class InputsAnnex
{
    public static IReadOnlyList<ReportSection> Of(SummaryContext context) =>
    [
        new("Survey", [], [Survey(context)]),
        new("Schedules", [], [ScheduleTable.Of(context)]),
        new("Tariff", [], [TariffTable.Of(context)]),
        .. context.Study.Options.Select(option => new ReportSection($"Option: {option.Name}", [Rates(option, context)], [Measures(option, context)])),
    ];

    private static ReportTable Survey(SummaryContext context)
    {
        var figures = context.Result.Now.Lines.ToDictionary(line => line.Line);
        return new ReportTable("",
            [
                new("Line", 1.7), new("Area", 1.2), new("Set-up", 2), new("Count", 0.6, true), new("Out", 0.5, true),
                new("W each", 0.7, true), new("Ballast W", 0.8, true), new("Line W", 0.8, true), new("Evidence", 1.1),
            ],
            [
                .. context.Study.Lines.Select(line => SurveyRow(context, line, figures.GetValueOrDefault(line.Id))),
                new ReportRow(["Sum of the lines", "", "", "", "", "", context.Text.Number(context.Now.BallastLoss.Watts), context.Text.Number(context.Now.Connected.Watts), ""], Strong: true),
            ]);
    }

    private static ReportRow SurveyRow(SummaryContext context, SurveyLine line, LineFigures? figures)
    {
        var text = context.Text;
        return new ReportRow([
            context.LineName(line.Id), context.AreaName(line.Area), context.EntryName(line.SetUp),
            line.Count is { } count ? text.Number(count) : QuantityText.NotKnown,
            line.LampsOut is { } dark ? text.Number(dark) : "?",
            figures is null ? "–" : text.Number(figures.PerLuminaire.Total.Watts),
            figures is null ? "–" : figures.BallastLoss is { } loss ? text.Number(loss.Watts) : "?",
            figures is null ? "not counted" : text.Number(figures.Connected.Watts),
            figures is null ? "–" : Evidence(figures.PerLuminaire, line, text)]);
    }

    private static string Evidence(InputPower power, SurveyLine line, QuantityText text) =>
        power.Evidence == EvidenceKind.Measured && line.Reading is { } reading
            ? $"measured {text.Date(reading.Date)}"
            : SourceWords.Kind(power.Evidence) + (power.Source.FromMemory ? ", from memory" : "");

    private static string Rates(RetrofitOption option, SummaryContext context)
    {
        var (c, text) = (option.Costs, context.Text);
        var perEnergy = c.IncentivePerKilowattHour == default ? "" : $"; incentive {text.Price(c.IncentivePerKilowattHour)} saved in the first year";
        var cap = c.IncentiveCap is { } share ? $"; incentives at most {text.Percent(share)} of first cost" : "";
        return $"Licensed electrician {text.Cents(c.ElectricianRate)} an hour; fixed sums {text.Money(c.FixedSum)}; recycling {text.Cents(c.DisposalPerLamp)} a lamp and "
            + $"{text.Cents(c.DisposalPerBallast)} a ballast; contingency {text.Percent(c.Contingency)}{perEnergy}{cap}.";
    }

    private static ReportTable Measures(RetrofitOption option, SummaryContext context)
    {
        var text = context.Text;
        return new ReportTable("",
            [new("Line", 2), new("What is done", 3), new("Parts each", 1.1, true), new("Labour each", 0.9, true), new("Incentive each", 1, true)],
            [.. option.Measures.Select(m => new ReportRow([
                context.LineName(m.Line), Words(m.Measure, context),
                m.PartsPerLuminaire is { } parts ? text.Cents(parts) : "catalogue",
                m.LabourPerLuminaire is { } time ? text.Number(time.Minutes) + "\u00A0min" : "default",
                m.IncentivePerLuminaire == default ? QuantityText.DoesNotApply : text.Cents(m.IncentivePerLuminaire)]))]);
    }

    private static string Words(Measure measure, SummaryContext context) => measure switch
    {
        KeepAsIs => "keep as it is",
        RenewLikeForLike => "new lamps and ballasts of the same kind",
        DirectWire d => "direct-wire: " + (d.TubesPerLuminaire is { } n ? $"{n} × " : "") + context.EntryName(d.Tube) + Marked(d.Tube, context),
        ReplaceLuminaire r => "new luminaire: " + (r.PerExisting == 1 ? "" : context.Text.Count(r.PerExisting) + " × ") + context.EntryName(r.Luminaire) + Marked(r.Luminaire, context),
        _ => measure.GetType().Name,
    };

    private static string Marked(string id, SummaryContext context) => context.Entry(id)?.Source.FromMemory == true ? " (from memory)" : "";
}
