using System.Globalization;
using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Typing;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Tariffs;

/// <summary>Sentences about the tariff and its bills.</summary>
public static class TariffText
{
    public static string Title(StudyResult? result, bool stale)
    {
        if (result is null || stale) return "What does electricity cost here?";
        var text = QuantityText.For(result.Study);
        var year = BillYear.Of(result);
        return year.After is { } after && year.Now != after
            ? $"The meter costs {text.Money(year.Now)} a year now, {text.Money(after)} proposed"
            : $"The meter costs {text.Money(year.Now)} a year now";
    }

    public static string Lead(Study study, StudyResult? result)
    {
        var text = QuantityText.For(study);
        var load = study.Meter is { } meter ? $"Bills rest on the meter’s own readings: {meter.Name}, every {meter.IntervalMinutes} minutes."
            : study.Site.BaseLoad.Watts > 0
            ? $"Bills rest on a stated load of everything else: {text.Kilowatts(study.Site.BaseLoad)}, day and night."
            : "No load of anything else is stated: the lights are billed as if they were alone on the meter.";
        return result is null ? load : $"{load} Savings are the difference of two bills, not kilowatt-hours times an average price.";
    }

    public static string Dates(AnnualDate? start, AnnualDate? end, CultureInfo culture) =>
        start is { } s && end is { } e ? $"{AnnualDayText.Write(s, culture)} to {AnnualDayText.Write(e, culture)}" : "All year";

    /// <summary>Where a tariff comes from and when it holds, in one line.</summary>
    public static string Origin(Tariff tariff)
    {
        var source = tariff.Source.Source.Length > 0 ? tariff.Source.Source.TrimEnd('.') : "no source given";
        return (tariff.ValidFrom, tariff.ValidTo) switch
        {
            ({ } from, { } to) => $"{source}; in force {DateText.Write(from)} to {DateText.Write(to)}",
            ({ } from, null) => $"{source}; in force from {DateText.Write(from)}",
            (null, { } to) => $"{source}; in force to {DateText.Write(to)}",
            _ => source,
        };
    }

    public static string Evidence(EvidenceKind kind) => kind switch
    {
        EvidenceKind.Measured => "measured",
        EvidenceKind.Tested => "published tariff sheet",
        EvidenceKind.Computed => "worked out from bills",
        EvidenceKind.Nameplate => "read from a bill",
        EvidenceKind.Practice => "from memory or common practice",
        EvidenceKind.Invented => "invented",
        _ => "unsourced",
    };
}
