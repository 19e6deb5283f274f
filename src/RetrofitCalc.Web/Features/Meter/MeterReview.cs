using NodaTime;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Metering;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Meters;

namespace RetrofitCalc.Web.Features.Meter;

/// <summary>Readings on their way into a study: which meter, which twelve months, what was found, and what filling would do.</summary>
public sealed class MeterReview
{
    private readonly Study _study;
    private readonly DateTimeZone _zone;

    private MeterReview(MeterSource source, CleanedMeter cleaned, IReadOnlyList<MeterSpan> spans, int chosen, (Study Study, DateTimeZone Zone) site)
    {
        (Source, Cleaned, Spans, Chosen, _study, _zone) = (source, cleaned, spans, chosen, site.Study, site.Zone);
        if (spans.Count == 0) return;
        Year = cleaned.Year(spans[chosen].First, source.Name, new Provenance(EvidenceKind.Measured, source.About));
        Filled = Missing > 0 ? GapFilling.Fill(Year, _zone) : Year;
        Problems = [.. StudyEvaluation.Check(_study with { Meter = Filled }).Where(problem => problem.Path.StartsWith("Meter", StringComparison.Ordinal)).Select(problem => problem.Message)];
    }

    public MeterSource Source { get; }

    public CleanedMeter Cleaned { get; }

    /// <summary>Twelve months to choose from, newest first.</summary>
    public IReadOnlyList<MeterSpan> Spans { get; }

    public int Chosen { get; }

    /// <summary>The year as read, gaps left open; null when the readings hold no twelve months.</summary>
    public MeterYear? Year { get; }

    /// <summary>The year with its gaps filled and marked, to be taken only when the user agrees.</summary>
    public MeterYear? Filled { get; }

    /// <summary>Why the year cannot be billed, even with its gaps filled.</summary>
    public IReadOnlyList<string> Problems { get; } = [];

    public int Missing => Year?.Watts.Count(watts => watts is null) ?? 0;

    public bool CanBeTaken => Filled is not null && Problems.Count == 0;

    public static MeterReview Of(MeterSource source, Study study, DateTimeZone zone)
    {
        var cleaned = MeterCleaning.Of(source.Readings, zone);
        var spans = BillingSpans.Of(cleaned, study.Tariff.Reading);
        return new MeterReview(source, cleaned, spans, 0, (study, zone));
    }

    public MeterReview Choose(int span) => new(Source, Cleaned, Spans, span, (_study, _zone));
}
