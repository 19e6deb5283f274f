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
    /// level beyond the shortest and longest cycle: common practice, no source (E-10). Where the start method is not known, or the
    /// sheet does not give it, rows that name no method are taken, else the shortest life of any method.
    /// </remarks>
    public static OperatingTime? At(IReadOnlyList<LampLife> lives, StartMethod? start, double hoursPerStart)
    {
        var wanted = Names(lives, start) ? start : null;
        var anyMethod = wanted is null && !HasUnnamed(lives);
        LampLife? below = null, above = null;
        foreach (var row in lives)
        {
            if (!anyMethod && row.StartMethod != wanted) continue;
            if (row.HoursPerStart <= hoursPerStart && IsNearer(row, below, Math.Sign(row.HoursPerStart - (below?.HoursPerStart ?? 0)))) below = row;
            if (row.HoursPerStart >= hoursPerStart && IsNearer(row, above, Math.Sign((above?.HoursPerStart ?? 0) - row.HoursPerStart))) above = row;
        }
        return (below, above) switch
        {
            (null, null) => null,
            ({ } shorter, null) => shorter.Life,
            (null, { } longer) => longer.Life,
            ({ } shorter, { } longer) => Between(shorter, longer, hoursPerStart),
        };
    }

    /// <summary>Whether the sheet has rows for this start method, so that nothing had to be assumed about it.</summary>
    /// <param name="lives">Rated lives of the sheet.</param>
    /// <param name="start">Start method of the ballast; null when not known.</param>
    public static bool Names(IReadOnlyList<LampLife> lives, StartMethod? start)
    {
        if (start is null) return false;
        foreach (var life in lives)
            if (life.StartMethod == start) return true;
        return false;
    }

    private static bool HasUnnamed(IReadOnlyList<LampLife> lives)
    {
        foreach (var life in lives)
            if (life.StartMethod is null) return true;
        return false;
    }

    /// <summary>Nearer to the hours asked for than the best so far; of two equally near, the shorter life.</summary>
    private static bool IsNearer(LampLife row, LampLife? best, int nearness) =>
        best is null || nearness > 0 || (nearness == 0 && row.Life < best.Life);

    private static OperatingTime Between(LampLife shorter, LampLife longer, double hoursPerStart)
    {
        if (shorter.HoursPerStart == longer.HoursPerStart) return shorter.Life;
        var share = Math.Log(hoursPerStart / shorter.HoursPerStart) / Math.Log(longer.HoursPerStart / shorter.HoursPerStart);
        return shorter.Life * (1 - share) + longer.Life * share;
    }
}
