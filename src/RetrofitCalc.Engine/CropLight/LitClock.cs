using NodaTime;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>A spell of light by the clock on the wall; the same time twice means day and night.</summary>
/// <param name="On">Local time lights come on.</param>
/// <param name="Off">Local time they go off; earlier means past midnight.</param>
internal readonly record struct LitClock(LocalTime On, LocalTime Off)
{
    private const int MinutesOfDay = 24 * 60;

    /// <summary>Length. [h, above 0 to 24]</summary>
    public double Hours => Minutes / 60.0;

    /// <summary>Minutes of this spell in which another is dark. [min]</summary>
    public int MinutesOutside(LitClock other) => MinutesOfSpell().Count(minute => !other.Covers(minute));

    /// <summary>Whether any minute of another spell is lit.</summary>
    public bool Meets(LitClock other) => MinutesOfSpell().Any(other.Covers);

    private int Minutes => (Minute(Off) - Minute(On) + MinutesOfDay) % MinutesOfDay is var length and > 0 ? length : MinutesOfDay;

    private IEnumerable<int> MinutesOfSpell()
    {
        var first = Minute(On);
        return Enumerable.Range(first, Minutes).Select(minute => minute % MinutesOfDay);
    }

    private bool Covers(int minute) => (minute - Minute(On) + MinutesOfDay) % MinutesOfDay < Minutes;

    private static int Minute(LocalTime time) => time.Hour * 60 + time.Minute;
}
