using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Lifetimes;

/// <summary>Rated life of a lamp as it is really switched: long spells wear the cathodes less than short ones.</summary>
public static class LampLives
{
    /// <summary>Rated life at some hours per start; null when the lamp's sheet gives none.</summary>
    /// <param name="lives">Rated lives of the sheet.</param>
    /// <param name="start">Start method of the ballast; null when not known.</param>
    /// <param name="hoursPerStart">Hours lit at each start. [h]; zero is read as the shortest cycle of the sheet.</param>
    /// <remarks>
    /// Between two test cycles the life is interpolated evenly over the logarithm of the hours per start, and it is held
    /// level beyond the shortest and longest cycle: common practice, no source. Where the start method is not known, or the
    /// sheet does not give it, rows that name no method are taken, else the shortest life of any method.
    /// </remarks>
    public static OperatingTime? At(IReadOnlyList<LampLife> lives, StartMethod? start, double hoursPerStart)
    {
        var rows = RowsFor(lives, start);
        if (rows.Count == 0) return null;
        var above = rows.FindIndex(row => row.HoursPerStart >= hoursPerStart);
        if (above == 0) return rows[0].Life;
        return above < 0 ? rows[^1].Life : Between(rows[above - 1], rows[above], hoursPerStart);
    }

    /// <summary>Whether the sheet has rows for this start method, so that nothing had to be assumed about it.</summary>
    /// <param name="lives">Rated lives of the sheet.</param>
    /// <param name="start">Start method of the ballast; null when not known.</param>
    public static bool Names(IReadOnlyList<LampLife> lives, StartMethod? start) =>
        start is not null && lives.Any(life => life.StartMethod == start);

    private static List<LampLife> RowsFor(IReadOnlyList<LampLife> lives, StartMethod? start)
    {
        var wanted = Names(lives, start) ? start : null;
        var rows = lives.Where(life => life.StartMethod == wanted);
        if (wanted is null && !lives.Any(life => life.StartMethod is null)) rows = lives;
        return [.. rows.GroupBy(life => life.HoursPerStart).Select(same => same.MinBy(life => life.Life)!).OrderBy(life => life.HoursPerStart)];
    }

    private static OperatingTime Between(LampLife shorter, LampLife longer, double hoursPerStart)
    {
        var share = Math.Log(hoursPerStart / shorter.HoursPerStart) / Math.Log(longer.HoursPerStart / shorter.HoursPerStart);
        return shorter.Life * (1 - share) + longer.Life * share;
    }
}
