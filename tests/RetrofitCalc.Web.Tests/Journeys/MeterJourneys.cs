using System.Globalization;
using System.Text;
using Microsoft.Playwright;
using NodaTime;
using NodaTime.Text;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Journeys;

/// <summary>From the utility's file to the saving on each line of the bill. All readings are invented.</summary>
[Collection(JourneyCollection.Name)]
public sealed class MeterJourneys(RunningApp app)
{
    private const string Field = "A file of interval readings";

    [Fact]
    public async Task a_year_of_readings_is_taken_in_and_the_saving_read_line_by_line()
    {
        var (page, id) = await OpenAsync();
        await page.ChooseFileAsync(Field, Espi("meter.xml", Year()));
        await Assertions.Expect(page.GetByLabel("They hold twelve whole billing months of the tariff")).ToContainTextAsync("January 1, 2027 to December 31, 2027: complete");
        await page.AccessibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Take this year in" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("The meter’s own year:");
        await Assertions.Expect(page.Locator(".meter-state")).ToContainTextAsync("none; every interval was read");
        await Assertions.Expect(page.Locator("#meter-share")).ToContainTextAsync("The surveyed lights explain");
        await page.SavedAsync();
        await page.AccessibleAsync();

        await page.GotoAsync($"/studies/{id}/results");
        await page.ReadyAsync();
        var bill = page.GetByRole(AriaRole.Region, new() { Name = "The electricity bill" });
        await Assertions.Expect(bill).ToContainTextAsync("The present bill is that of the meter’s own year");
        await Assertions.Expect(bill.GetByRole(AriaRole.Row, new() { NameRegex = new("^Summer on-peak") }).First).ToContainTextAsync("$");
        await Assertions.Expect(bill).Not.ToContainTextAsync("are estimates");
        app.NoErrors();
    }

    [Fact]
    public async Task gaps_are_filled_only_after_an_agreement_and_undone_in_one_step()
    {
        var (page, _) = await OpenAsync();
        // Three days in August are missing: 72 hours.
        await page.ChooseFileAsync(Field, Espi("gaps.xml", Year().Where(at => at is not { Month: 8, Day: >= 3 and <= 5 })));
        var take = page.GetByRole(AriaRole.Button, new() { Name = "Take this year in" });
        await Assertions.Expect(take).ToBeDisabledAsync();
        await Assertions.Expect(page.Locator("#why-not")).ToContainTextAsync("Agree to fill the gaps first");
        await Assertions.Expect(page.Locator(".findings")).ToContainTextAsync("72 intervals are missing");
        await page.AccessibleAsync();
        await page.GetByLabel("Fill these intervals").CheckAsync();
        await take.ClickAsync();
        await Assertions.Expect(page.Locator(".meter-state")).ToContainTextAsync("72 intervals");
        await page.GetByText("The filled intervals, and how each was filled").ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Region, new() { Name = "Filled intervals" })).ToContainTextAsync("August 3, 2027, 00:00");
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(page.Locator(".meter-state")).ToHaveCountAsync(0);
        app.NoErrors();
    }

    [Fact]
    public async Task a_table_is_understood_by_its_columns_and_comes_back_as_it_was_exported()
    {
        var (page, id) = await OpenAsync();
        // The times end their intervals and the values are kilowatts, which the heading does not say.
        var rows = string.Concat(Year().Select(hour => $"{Stamp(hour.Plus(Duration.FromHours(1)))},{KilowattHours(hour)}\n"));
        await page.ChooseFileAsync(Field, File("load.csv", "Date and time,Load\n" + rows));
        var columns = page.GetByRole(AriaRole.Region, new() { Name = "First rows of the file" });
        await Assertions.Expect(columns).ToContainTextAsync("Load");
        await page.GetByLabel("Unit").SelectOptionAsync(new SelectOptionValue { Label = "kW, average of each interval" });
        await page.GetByLabel("A time tells when its interval").SelectOptionAsync(new SelectOptionValue { Label = "ends" });
        await Assertions.Expect(page.GetByLabel("They hold twelve whole billing months of the tariff")).ToContainTextAsync("complete");
        await page.AccessibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Take this year in" }).ClickAsync();
        var title = page.GetByRole(AriaRole.Heading, new() { Level = 1 });
        // 16 h of 90 kW and 8 h of 60 kW are 1,920 kWh a day: 700,800 kWh a year.
        await Assertions.Expect(title).ToHaveTextAsync("The meter’s own year: 700,800\u00A0kWh, peak 90.0\u00A0kW");
        await page.SavedAsync();

        var csv = await (await page.APIRequest.GetAsync($"/studies/{id}/meter.csv")).BodyAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove the meter data" }).ClickAsync();
        await Assertions.Expect(title).ToContainTextAsync("No meter year is taken in yet");
        await page.ChooseFileAsync(Field, new FilePayload { Name = "meter.csv", MimeType = "text/csv", Buffer = csv });
        await page.GetByRole(AriaRole.Button, new() { Name = "Take this year in" }).ClickAsync();
        await Assertions.Expect(title).ToHaveTextAsync("The meter’s own year: 700,800\u00A0kWh, peak 90.0\u00A0kW");
        app.NoErrors();
    }

    [Fact]
    public async Task the_invented_meter_year_of_the_example_goes_out_as_csv_and_comes_back_with_the_same_bill()
    {
        var page = await app.OpenAsync("/");
        var id = await app.CopyExampleAsync(page);
        var before = await BillAsync(page, id);
        var csv = await (await page.APIRequest.GetAsync($"/studies/{id}/meter.csv")).BodyAsync();
        await page.WithoutMeterAsync(id);
        await page.ChooseFileAsync(Field, new FilePayload { Name = "quillmere.csv", MimeType = "text/csv", Buffer = csv });
        await page.GetByRole(AriaRole.Button, new() { Name = "Take this year in" }).ClickAsync();
        await Assertions.Expect(page.Locator(".meter-state")).ToContainTextAsync("quillmere.csv");
        await page.SavedAsync();
        Assert.Equal(before, await BillAsync(page, id));
        app.NoErrors();
    }

    /// <summary>The yearly bill charge by charge, as the results show it.</summary>
    private static async Task<string> BillAsync(IPage page, string id)
    {
        await page.GotoAsync($"/studies/{id}/results");
        await page.ReadyAsync();
        var table = page.GetByRole(AriaRole.Region, new() { Name = "Each charge over the year" });
        await Assertions.Expect(table).ToContainTextAsync("Bill of the year");
        return await table.InnerTextAsync();
    }

    public static TheoryData<string, string, string> Malformed => new()
    {
        { "entity.xml", "<?xml version=\"1.0\"?><!DOCTYPE feed [<!ENTITY x SYSTEM \"file:///etc/hostname\">]><feed>&x;</feed>", "document type" },
        { "broken.xml", "<?xml version=\"1.0\"?>\n<feed xmlns=\"http://www.w3.org/2005/Atom\">\n<entry></feed>", "line 3" },
        { "times.csv", "reading,kWh\nfirst,1.5\nsecond,2.5\n", "a date and a number side by side" },
        { "text.xlsx", "this is no workbook", "a date and a number side by side" },
        { "torn.xlsx", "PK\u0003\u0004 and then nothing of a workbook", "" },
    };

    [Theory, MemberData(nameof(Malformed))]
    public async Task a_malformed_file_is_told_and_changes_nothing(string name, string content, string told)
    {
        var (page, _) = await OpenAsync(RunningApp.Phone);
        await page.ChooseFileAsync(Field, File(name, content));
        var alert = page.Locator(".import [role=alert]");
        await Assertions.Expect(alert).ToContainTextAsync("Nothing in the study was changed");
        await Assertions.Expect(alert).ToContainTextAsync(told);
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Take this year in" })).ToHaveCountAsync(0);
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("No meter year is taken in yet");
        await page.AccessibleAsync();
        app.NoErrors();
    }

    private async Task<(IPage Page, string Id)> OpenAsync(ViewportSize? size = null)
    {
        var page = await app.OpenAsync("/", size);
        var id = await app.CopyExampleAsync(page);
        await page.WithoutMeterAsync(id);
        return (page, id);
    }

    /// <summary>Each hour of 2027 by the clock of New York.</summary>
    private static IEnumerable<ZonedDateTime> Year()
    {
        var zone = DateTimeZoneProviders.Tzdb["America/New_York"];
        var end = zone.AtStartOfDay(new LocalDate(2028, 1, 1)).ToInstant();
        for (var at = zone.AtStartOfDay(new LocalDate(2027, 1, 1)).ToInstant(); at < end; at += Duration.FromHours(1))
            yield return at.InZone(zone);
    }

    /// <summary>90 kWh in each hour of the day, 60 at night.</summary>
    private static int KilowattHours(ZonedDateTime hour) => hour.Hour is >= 6 and < 22 ? 90 : 60;

    private static string Stamp(ZonedDateTime time) => LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd HH:mm").Format(time.LocalDateTime);

    /// <summary>A small feed in ESPI XML (NAESB REQ.21), watt-hours in each hour.</summary>
    private static FilePayload Espi(string name, IEnumerable<ZonedDateTime> hours)
    {
        var readings = string.Concat(hours.Select(hour => string.Create(CultureInfo.InvariantCulture,
            $"<e:IntervalReading><e:timePeriod><e:duration>3600</e:duration><e:start>{hour.ToInstant().ToUnixTimeSeconds()}</e:start></e:timePeriod><e:value>{KilowattHours(hour) * 1000}</e:value></e:IntervalReading>")));
        var text = $"""
            <feed xmlns="http://www.w3.org/2005/Atom" xmlns:e="http://naesb.org/espi"><id>urn:uuid:0</id><title>Invented</title>
            <entry><link rel="self" href="UsagePoint/1"/><link rel="related" href="UsagePoint/1/MeterReading/1"/><content><e:UsagePoint><e:ServiceCategory><e:kind>0</e:kind></e:ServiceCategory></e:UsagePoint></content></entry>
            <entry><link rel="self" href="UsagePoint/1/MeterReading/1"/><link rel="related" href="UsagePoint/1/MeterReading/1/IntervalBlock"/><link rel="related" href="ReadingType/1"/><title>Invented main meter</title><content><e:MeterReading/></content></entry>
            <entry><link rel="self" href="ReadingType/1"/><link rel="up" href="ReadingType"/><content><e:ReadingType><e:accumulationBehaviour>4</e:accumulationBehaviour><e:commodity>1</e:commodity><e:flowDirection>1</e:flowDirection><e:intervalLength>3600</e:intervalLength><e:kind>12</e:kind><e:powerOfTenMultiplier>0</e:powerOfTenMultiplier><e:uom>72</e:uom></e:ReadingType></content></entry>
            <entry><link rel="self" href="UsagePoint/1/MeterReading/1/IntervalBlock/1"/><link rel="up" href="UsagePoint/1/MeterReading/1/IntervalBlock"/><content><e:IntervalBlock>{readings}</e:IntervalBlock></content></entry>
            </feed>
            """;
        return File(name, text);
    }

    private static FilePayload File(string name, string text) => new() { Name = name, MimeType = "application/octet-stream", Buffer = Encoding.UTF8.GetBytes(text) };
}
