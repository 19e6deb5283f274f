using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>What in a set of readings should be looked at again.</summary>
/// <remarks>The limits are common practice, no source; the full sun at noon gives about 2000 µmol m⁻² s⁻¹.</remarks>
internal static class ReadingDoubts
{
    private const double Brightest = 2500;   // µmol m⁻² s⁻¹
    private const double UnevenQuarters = 0.20;

    public static IReadOnlyList<ReadingDoubt> Of(MeasuredLight measured, IEnumerable<ReadingDoubt> strangers) =>
        [.. OfWhole(measured).Select(text => new ReadingDoubt(-1, text)), .. Impossible(measured.Set), .. TooBright(measured), .. strangers];

    private static IEnumerable<string> OfWhole(MeasuredLight measured)
    {
        var set = measured.Set;
        if (set.RoomDark != true)
            yield return set.RoomDark == false ? "Other light was not kept out: it is in the readings." : "Nobody noted whether other light was kept out.";
        if (set.SensorLevel != true)
            yield return set.SensorLevel == false ? "The sensor was not level: it read too much or too little." : "Nobody noted whether the sensor lay level.";
        if (set.Date is null)
            yield return "The day of the readings was not noted: nobody can tell how old the lamps were.";
        if (Uneven(measured) is { } ratio)
            yield return FormattableString.Invariant($"One quarter of the bench has {ratio:P0} more light than another: is a lamp out, or the middle not under the luminaires?");
    }

    private static IEnumerable<ReadingDoubt> Impossible(ReadingSet set) =>
        ReadingPlaces.Of(set).Where(place => place.Value < 0).Select(place => new ReadingDoubt(place.Index, "Light below zero cannot be; left out."));

    private static IEnumerable<ReadingDoubt> TooBright(MeasuredLight measured) =>
        from reading in measured.Readings
        where reading.Light.MicromolesPerSquareMetre > Brightest && !measured.Set.Confirmed.Contains(reading.Index)
        select new ReadingDoubt(reading.Index, FormattableString.Invariant($"{reading.Light.MicromolesPerSquareMetre:0} µmol/(m² s) is more than full sun: is the unit right?"));

    /// <summary>How much more the brightest quarter has than the dimmest; null where they are alike, or not all four were read.</summary>
    private static double? Uneven(MeasuredLight measured)
    {
        if (measured.Set.Pattern is ReadingPattern.Quadrant) return null;
        var quarters = measured.Readings.Where(reading => Math.Abs(reading.Point.X) > 1e-9 && Math.Abs(reading.Point.Y) > 1e-9)
            .GroupBy(reading => (reading.Point.X > 0, reading.Point.Y > 0), reading => reading.Light.MicromolesPerSquareMetre)
            .Select(quarter => quarter.Average()).ToList();
        if (quarters.Count < 4) return null;
        var (least, most) = (quarters.Min(), quarters.Max());
        return least > 0 && most / least - 1 is var more && more > UnevenQuarters ? more : null;
    }
}
