using NodaTime;
using RetrofitCalc.Engine.Metering;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Meters;
using RetrofitCalc.Web.Features.Meter;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Meter;

public class Readings_under_review
{
    [Fact]
    public void of_a_calendar_year_offer_it_complete()
    {
        var review = Review(new(2026, 1, 1), new(2027, 1, 1));
        Assert.Equal((new LocalDate(2026, 1, 1), 0), (Assert.Single(review.Spans).First, review.Missing));
        Assert.True(review.CanBeTaken);
        Assert.Equal(8760, review.Filled!.Watts.Count);
        Assert.Empty(review.Filled.Filled);
    }

    [Fact]
    public void of_three_years_offer_the_newest_billing_year_each_before_it_and_calendar_years()
    {
        // From 10 February 2024 to 20 May 2027: the newest whole billing months end on 30 April 2027.
        var review = Review(new(2024, 2, 10), new(2027, 5, 21));
        Assert.Equal(["2026-05-01", "2026-01-01", "2025-05-01", "2025-01-01", "2024-05-01", "2024-03-01"], review.Spans.Select(span => Iso(span.First)));
    }

    [Fact]
    public void follow_the_day_on_which_the_tariff_reads_the_meter()
    {
        var review = Review(new(2025, 12, 1), new(2027, 1, 1), new MeterReading { DayOfMonth = 15 });
        Assert.Equal(["2025-12-15"], review.Spans.Select(span => Iso(span.First)));
    }

    [Fact]
    public void with_a_gap_are_filled_only_in_the_copy_to_be_agreed_to()
    {
        var review = Review(new(2026, 1, 1), new(2027, 1, 1), without: new LocalDate(2026, 8, 3));
        Assert.Equal(24, review.Missing);
        Assert.Equal(24, review.Filled!.Filled.Sum(gap => gap.Count));
        Assert.Empty(review.Year!.Filled);
        Assert.Equal(0, review.Filled.Watts.Count(watts => watts is null));
    }

    [Fact]
    public void of_half_a_year_hold_no_year()
    {
        var review = Review(new(2026, 1, 1), new(2026, 7, 1));
        Assert.Empty(review.Spans);
        Assert.False(review.CanBeTaken);
    }

    [Fact]
    public void a_month_short_of_a_year_are_offered_with_what_is_missing()
    {
        // January to November of 2026: December's 744 hours are missing.
        var review = Review(new(2026, 1, 1), new(2026, 12, 1));
        Assert.Equal((new LocalDate(2026, 1, 1), 744), (review.Spans[0].First, review.Spans[0].Missing));
    }

    private static MeterReview Review(LocalDate from, LocalDate to, MeterReading? reading = null, LocalDate? without = null)
    {
        var zone = MeterSamples.Zone;
        var readings = new List<RawReading>();
        for (var at = zone.AtStartOfDay(from).ToInstant(); at < zone.AtStartOfDay(to).ToInstant(); at += Duration.FromHours(1))
            if (at.InZone(zone).Date != without)
                readings.Add(new RawReading(at.ToUnixTimeSeconds(), 3600, 30_000));
        var study = SmallStudies.OneRack() with { Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.12)) with { Reading = reading ?? new() } };
        return MeterReview.Of(new MeterSource("Invented meter", "energy", readings, []), study, zone);
    }

    private static string Iso(LocalDate day) => NodaTime.Text.LocalDatePattern.Iso.Format(day);
}
