using RetrofitCalc.Engine.Carbon;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>Annex B: rates and policies, conventions, how sure it is, and sources.</summary>
internal static class AssumptionsAnnex
{
    private const int MostEntries = 4;

    public static IReadOnlyList<ReportSection> Of(SummaryContext context) =>
    [
        new("Rates, periods and policies", [], [Rates(context)]),
        new("Conventions and estimates", context.Result.Remarks, []),
        .. context.Asked is { Ranges.Swings.Count: > 0 } option ? [new ReportSection("How sure it is", ["Each uncertain input alone, from its low to its high end, the whole model worked out anew."], [Swings(option, context)])] : Array.Empty<ReportSection>(),
        .. context.Result.Questions.Count > 0 ? [new ReportSection("Questions still open", [.. context.Result.Questions.Select(question => question.Text)], [])] : Array.Empty<ReportSection>(),
        new("Sources", ["Values cited from memory were not read again in the document named; check one before relying on it."], [Sources(context)]),
    ];

    private static ReportTable Rates(SummaryContext context)
    {
        var (a, text) = (context.Study.Assumptions, context.Text);
        (string Name, string Value)[] rows =
        [
            ("Start", text.Date(a.Start)),
            ("Length of the comparison", $"{a.StudyYears} years"),
            ("Discount rate, nominal", text.Percent(a.DiscountRate, 1)),
            ("Rise of energy prices a year", text.Percent(a.EnergyEscalation, 1)),
            ("Rise of parts and labour a year", text.Percent(a.CostEscalation, 1)),
            ("Present lighting counted", a.Baseline == Baseline.AsFound ? "as found, lamps out left out" : "as designed, all lamps working"),
            ("Lamps are changed", Relamping(a, text)),
            ("Maintenance worker, hour", text.Cents(a.MaintenanceRate)),
            ("Licensed electrician, hour", text.Cents(a.ElectricianRate)),
            ("Time for a lamp; for a ballast", $"{text.Number((a.RelampPolicy == RelampPolicy.Spot ? a.SpotLampTime : a.GroupLampTime).Minutes)} min; {text.Number(a.BallastTime.Minutes)} min"),
            ("Ranges: watts, price, hours, first cost, lives", string.Join(", ", new[] { a.WattsUncertainty, a.PriceUncertainty, a.HoursUncertainty, a.FirstCostUncertainty, a.LifeUncertainty }.Select(share => "± " + text.Percent(share)))),
            ("Everything else on the meter", EverythingElse(context.Study, text)),
            .. PlantText.Rows(context.Study, text),
        ];
        return new ReportTable("", [new("What", 1), new("Value", 2)], [.. rows.Select(row => new ReportRow([row.Name, row.Value]))]);
    }

    private static string Relamping(Assumptions assumptions, QuantityText text) => assumptions.RelampPolicy switch
    {
        RelampPolicy.Group => $"together at {text.Percent(assumptions.GroupRelampShare)} of rated life",
        RelampPolicy.Light => $"together, tubes and luminaires too, when their light has fallen to {text.Percent(assumptions.LightRelampShare)} of that when new, or at rated life",
        _ => "one by one as they fail",
    };

    private static string EverythingElse(Study study, QuantityText text) => study.Meter is { } meter
        ? $"by the readings of {meter.Name} every {meter.IntervalMinutes} minutes from {text.Date(meter.FirstDay)} on, {text.Number(meter.Filled.Sum(gap => gap.Count))} of {text.Number(meter.Watts.Count)} filled"
        : $"{text.Kilowatts(study.Site.BaseLoad)}, day and night, as stated";

    private static ReportTable Swings(OptionResult option, SummaryContext context)
    {
        var text = context.Text;
        return new ReportTable("",
            [new("Input", 1.2), new("Payback", 1, true), new("Net present value", 1.5, true), new("What would settle it", 2.4), new("Payback then", 1, true)],
            [.. option.Ranges.Swings.Select(s => new ReportRow([
                s.Name, text.Range(s.Payback, context.Years), text.Range(s.NetPresentValue), s.Ask, text.Range(s.PaybackWithout, context.Years)]))]);
    }

    /// <summary>One row for each source; which values rest on it, entry by entry, stands in the attached study file.</summary>
    private static ReportTable Sources(SummaryContext context)
    {
        var used = context.Study.Catalogue.All
            .SelectMany(entry => entry.FieldSources.Select(own => (What: Words(own.Key), entry.Name, own.Value)).Prepend((What: "", entry.Name, Value: entry.Source)))
            .Append((What: "tariff", context.Study.Tariff.Name, Value: context.Study.Tariff.Source))
            .Concat(Surroundings(context.Study));
        return new ReportTable("", [new("Source", 3), new("Evidence", 0.9), new("Values that rest on it", 3)],
            [.. used.GroupBy(row => row.Value).Select(same => new ReportRow([
                SourceWords.Full(same.Key), SourceWords.Kind(same.Key.Kind) + (same.Key.FromMemory ? ", from memory" : ""),
                Values([.. same.Select(row => row.What)], [.. same.Select(row => row.Name).Distinct()])]))]);
    }

    private static IEnumerable<(string What, string Name, Provenance Value)> Surroundings(Study study)
    {
        if (study.Weather is { } weather) yield return ("weather", weather.Name, weather.Source);
        if (GridFactors.Find(study.Site.GridRegion) is { } region) yield return ("emission factors", region.Name, GridFactors.Source);
    }

    private static string Values(IReadOnlyList<string> what, IReadOnlyList<string> entries)
    {
        var fields = string.Join(", ", what.Where(field => field.Length > 0).Distinct());
        var names = string.Join("; ", entries.Take(MostEntries)) + (entries.Count > MostEntries ? $" and {entries.Count - MostEntries} more" : "");
        return fields.Length == 0 ? names : $"{fields} of {names}";
    }

    /// <summary>"RatedLife" as "rated life".</summary>
    private static string Words(string property) =>
        string.Concat(property.Select((letter, index) => char.IsUpper(letter) ? (index > 0 ? " " : "") + char.ToLowerInvariant(letter) : letter.ToString()));
}
