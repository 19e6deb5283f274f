using CsCheck;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Metering;
using static RetrofitCalc.Engine.Tests.Metering.Readings;

namespace RetrofitCalc.Engine.Tests.Metering;

/// <summary>Laws that hold for readings of any length, with gaps, in any order.</summary>
public class Any_readings
{
    private static readonly Gen<RawReading[]> Rows = Gen.Select(Gen.Int[0, 4].Select(i => new[] { 300, 600, 900, 1800, 3600 }[i]), Gen.Int[0, 3], Gen.Double[-1e4, 1e5])
        .Array[1, 60].Select(parts =>
        {
            var at = Midnight;
            return parts.Select(part =>
            {
                var (seconds, gap, watts) = part;
                var reading = new RawReading(at + (gap == 3 ? 900 : 0), seconds, Math.Round(watts, 1));
                at = reading.End;
                return reading;
            }).ToArray();
        });

    private static IReadOnlyList<double?> Laid(IEnumerable<RawReading> readings)
    {
        var meter = MeterCleaning.Of([.. readings], NewYork);
        return meter.Year(NewYear, "Invented", Provenance.None).Watts;
    }

    [Fact]
    public void give_the_same_year_in_any_order() => Gen.Select(Rows, Gen.Int[0, 1_000_000]).Sample(
        (readings, seed) => Laid(readings).SequenceEqual(Laid(readings.OrderBy(reading => HashCode.Combine(reading.Start, seed)))), iter: 300);

    /// <summary>The sum by hand: every second of a known interval belongs to exactly one reading.</summary>
    [Fact]
    public void keep_their_energy_in_every_known_interval() => Rows.Sample(readings =>
    {
        var step = MeterCleaning.Of(readings, NewYork).IntervalMinutes * 60;
        return Laid(readings).Take(400).Index().All(interval =>
        {
            var (from, to) = (Midnight + interval.Index * (long)step, Midnight + (interval.Index + 1L) * step);
            var shared = readings.Select(r => (r.Watts, Seconds: Math.Max(0, Math.Min(r.End, to) - Math.Max(r.Start, from)))).ToList();
            return shared.Sum(part => part.Seconds) < step
                ? interval.Item is null
                : Math.Abs(interval.Item!.Value - shared.Sum(part => part.Watts * part.Seconds) / step) < 0.001;
        });
    }, iter: 100);
}
