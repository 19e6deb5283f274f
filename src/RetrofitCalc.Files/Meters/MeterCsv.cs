using System.Globalization;
using System.Text;
using NodaTime;
using NodaTime.Text;
using RetrofitCalc.Engine.Metering;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Meters;

/// <summary>Writes a meter year as CSV: start of each interval with its offset from UTC, kW, and a mark where it was filled. It can be imported again.</summary>
public static class MeterCsv
{
    public static byte[] Write(MeterYear year, DateTimeZone zone)
    {
        var text = new StringBuilder("Start,kW,Filled\r\n", year.Watts.Count * 40);
        var filled = FilledIntervals(year);
        foreach (var (i, start) in MeterTimes.Of(year, zone).Index())
        {
            text.Append(OffsetDateTimePattern.Rfc3339.Format(start)).Append(',');
            if (year.Watts[i] is { } watts) text.Append((watts / 1000).ToString("0.######", CultureInfo.InvariantCulture));
            text.Append(filled.Contains(i) ? ",filled\r\n" : ",\r\n");
        }
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static HashSet<int> FilledIntervals(MeterYear year) => [.. year.Filled.SelectMany(gap => Enumerable.Range(gap.First, gap.Count))];
}
