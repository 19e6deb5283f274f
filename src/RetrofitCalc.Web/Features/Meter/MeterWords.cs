using NodaTime;
using RetrofitCalc.Engine.Metering;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Meter;

/// <summary>Sentences about meter data.</summary>
public static class MeterWords
{
    public const string FillingRule = "Up to two hours: a straight line between the readings before and after. Longer: the mean of the same time on the same kind of day, two weeks before and after. Common practice; no gap is filled with zero.";

    public static string Title(Study study, QuantityText text) => study.Meter is { } meter
        ? $"The meter’s own year: {text.KilowattHours(EnergyOf(meter))}, peak {text.Kilowatts(Power.FromWatts(meter.Watts.Max() ?? 0))}"
        : "No meter year is taken in yet";

    public static string Lead(Study study, QuantityText text) => (study.Meter, study.Site.BaseLoad > Power.Zero) switch
    {
        (not null, _) => "The present bill is the bill of this load. A later bill is that load less the lighting and the plant that are taken away.",
        (null, true) => $"Bills rest on a stated load of everything else, {text.Kilowatts(study.Site.BaseLoad)} day and night. A year of the meter’s own readings replaces it, and demand is no longer an estimate.",
        _ => "No load of anything else is stated: the lights are billed as if they were alone. A year of the meter’s own readings shows what the whole site draws, and when.",
    };

    /// <summary>Energy of what is known, export taken off.</summary>
    public static Energy EnergyOf(MeterYear meter) => Energy.FromKilowattHours(meter.Watts.Sum(watts => watts ?? 0) * meter.IntervalMinutes / 60_000.0);

    /// <summary>"January 1, 2026 to December 31, 2026".</summary>
    public static string Days(LocalDate first, LocalDate last, QuantityText text) => $"{text.Date(first)} to {text.Date(last)}";

    public static string Moment(LocalDateTime time, QuantityText text) =>
        $"{text.Date(time.Date)}, {NodaTime.Text.LocalTimePattern.CreateWithInvariantCulture("HH:mm").Format(time.TimeOfDay)}";

    public static string Share(MeterComparison comparison, QuantityText text) =>
        $"The surveyed lights explain {text.Percent(comparison.LightingShare)} of what the meter shows";

    /// <summary>What was found in a file, counted.</summary>
    public static string Finding(MeterFinding finding, QuantityText text)
    {
        var count = text.Number(finding.Count);
        var one = finding.Count == 1;
        return finding.Kind switch
        {
            MeterFindingKind.Missing => one ? "1 interval is missing" : $"{count} intervals are missing",
            MeterFindingKind.SameTwice => one ? "1 reading stands twice with the same value" : $"{count} readings stand twice with the same value",
            MeterFindingKind.DifferentTwice => one ? "1 reading stands twice with another value" : $"{count} readings stand twice with another value",
            MeterFindingKind.OutOfOrder => one ? "1 reading is out of order" : $"{count} readings are out of order",
            MeterFindingKind.Overlapping => one ? "1 reading overlaps the one before" : $"{count} readings overlap the one before",
            MeterFindingKind.Negative => one ? "1 reading is negative: the site sent out" : $"{count} readings are negative: the site sent out",
            MeterFindingKind.NoSuchLocalTime => one ? "1 reading has a time the clocks skipped" : $"{count} readings have a time the clocks skipped",
            MeterFindingKind.RepeatedHour => one ? "1 reading lies in the hour that came twice" : $"{count} readings lie in the hour that came twice",
            MeterFindingKind.OtherLength => one ? "1 reading is longer or shorter than most" : $"{count} readings are longer or shorter than most",
            MeterFindingKind.Estimated => one ? "1 value is marked as estimated or edited" : $"{count} values are marked as estimated or edited",
            _ => finding.Kind.ToString(),
        };
    }

    public static string Places(MeterFinding finding, QuantityText text)
    {
        var places = finding.First.Select(place => Moment(place.Time, text) + (place.Line > 0 ? $" (line {place.Line})" : ""));
        return $"{(finding.Count > finding.First.Count ? "The first" : "At")}: {string.Join("; ", places)}.";
    }
}
