using NodaTime;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Operation;

/// <summary>E-24: which twelve months are billed, and what they are called.</summary>
public class Billing_months
{
    [Theory]
    [InlineData(1, "2027-01-01", "2027-12-31")]
    [InlineData(15, "2027-01-15", "2028-01-14")]
    [InlineData(16, "2027-01-16", "2028-01-15")]
    [InlineData(17, "2026-12-17", "2027-12-16")]
    [InlineData(28, "2026-12-28", "2027-12-27")]
    public void begin_on_the_reading_day_and_are_called_January_to_December(int day, string first, string last)
    {
        var year = SiteYear.Of(ReadOn(day));
        Assert.Equal((first, last), (Iso(year.FirstDay), Iso(year.LastDay)));
        Assert.Equal(Enumerable.Range(1, 12).Select(month => new YearMonth(2027, month)), year.Months.Select(month => month.Name));
        Assert.Equal(365, year.Days.Count());
        Assert.Equal(day == 1, year.IsCalendarYear);
    }

    [Fact]
    public void of_a_leap_year_have_366_days() =>
        Assert.Equal(366, SiteYear.Of(ReadOn(1) with { Assumptions = new() { Start = new(2028, 5, 1) } }).Days.Count());

    // From 3 December 2025 every 30 days, and four more at the end: 364 days, the first month's middle on 18 December.
    [Fact]
    public void follow_reading_dates()
    {
        LocalDate[] dates = [.. Enumerable.Range(0, 13).Select(month => new LocalDate(2025, 12, 3).PlusDays(30 * month + (month == 12 ? 4 : 0)))];
        var result = StudyEvaluation.Run(WithReading(new() { Dates = dates }), new());
        Assert.Equal(dates.SkipLast(1), result.Now.Bills.Select(bill => bill.First));
        Assert.Equal(dates.Skip(1).Select(day => day.PlusDays(-1)), result.Now.Bills.Select(bill => bill.Last));
        Assert.Equal(new YearMonth(2025, 12), result.Now.Bills[0].Month);
        // 0.6 kW, 12 h a day, 364 days
        Assert.Equal(2620.8, result.Now.Site.Lighting.KilowattHours, 1e-9);
        Assert.Contains(result.Remarks, remark => remark.Contains("twelve billing months from 3 December 2025 to 1 December 2026, 364 days", StringComparison.Ordinal));
    }

    // Lights on from 18:00 to 6:00 in months from the 15th: each of the 365 nights counts whole, the two cut by the ends as halves of one.
    [Fact]
    public void lose_no_light_where_the_year_begins_and_ends_at_night()
    {
        var night = SmallRoom.Area with { Weekly = new() { Hours = [new([.. Enum.GetValues<IsoDayOfWeek>().Where(day => day != IsoDayOfWeek.None)], new(18, 0), new(6, 0))] } };
        var operation = new AreaOperation(night, SiteYear.Of(ReadOn(15)));
        Assert.Equal((365 * 12.0, 365), (operation.Hours.Hours, operation.Starts));
    }

    [Theory]
    [InlineData(1, "2026-03-10", "2026-04-01")]
    [InlineData(10, "2026-03-10", "2026-03-10")]
    [InlineData(15, "2026-03-10", "2026-03-15")]
    public void begin_with_the_first_that_the_meter_shows_whole(int day, string firstReading, string first)
    {
        var meter = SampleMeter.Even(NodaTime.Text.LocalDatePattern.Iso.Parse(firstReading).Value, 1);
        Assert.Equal(first, Iso(SiteYear.Of(ReadOn(day) with { Meter = meter }).FirstDay));
    }

    // 1 kW from 15 May to 14 June; summer begins on 1 June: 17 days of winter, 14 of summer.
    [Theory]
    [InlineData(SeasonChange.ByDays, 17 * 24.0, 14 * 24.0)]
    [InlineData(SeasonChange.SeasonOfFirstDay, 31 * 24.0, null)]
    [InlineData(SeasonChange.SeasonOfLastDay, null, 31 * 24.0)]
    public void in_which_the_season_changes_are_billed_as_the_tariff_says(SeasonChange change, double? winter, double? summer)
    {
        var study = ReadOn(15);
        var seasonal = study with
        {
            Lines = [], Options = [], Site = study.Site with { BaseLoad = Power.FromKilowatts(1) },
            Tariff = study.Tariff with
            {
                SeasonChange = change,
                Energy =
                [
                    SampleTariff.Charge("Winter", new() { Start = new(10, 1), End = new(5, 31) }, new EnergyBlock(null, SampleTariff.Price(0.1))),
                    SampleTariff.Charge("Summer", new() { Start = new(6, 1), End = new(9, 30) }, new EnergyBlock(null, SampleTariff.Price(0.2))),
                ],
            },
        };
        var lines = StudyEvaluation.Run(seasonal, new()).Now.Bills[4].Lines.Where(line => line.Kind == BillLineKind.Energy).ToList();
        Assert.Equal((winter, summer), (lines.Find(line => line.Charge == 0)?.Quantity, lines.Find(line => line.Charge == 1)?.Quantity));
    }

    private static Study ReadOn(int day) => WithReading(new() { DayOfMonth = day });

    private static Study WithReading(MeterReading reading) => SmallRoom.Study with { Tariff = SmallRoom.Study.Tariff with { Reading = reading } };

    private static string Iso(LocalDate day) => NodaTime.Text.LocalDatePattern.Iso.Format(day);
}
