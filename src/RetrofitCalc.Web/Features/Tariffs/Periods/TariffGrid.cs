using NodaTime;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Tariffs.Periods;

/// <summary>Which energy charge applies on each day of the year and hour of the day, gaps and overlaps included.</summary>
public static class TariffGrid
{
    /// <summary>Bands of days with the same charges in force, each cut into pieces of the day.</summary>
    public static IReadOnlyList<TariffBand> Of(Tariff tariff, int year, bool weekend)
    {
        var bands = new List<TariffBand>();
        var first = new LocalDate(year, 1, 1);
        var length = CalendarSystem.Iso.GetDaysInYear(year);
        bool[] InForce(int day) => [.. tariff.Energy.Select(c => TariffDay.InForce(c.When, first.PlusDays(day)))];
        for (var from = 0; from < length;)
        {
            var inForce = InForce(from);
            var to = from + 1;
            while (to < length && InForce(to).SequenceEqual(inForce)) to++;
            bands.Add(new(first.PlusDays(from), first.PlusDays(to - 1), from, to - from, Merged(TariffDay.Pieces(tariff.Energy, inForce, weekend))));
            from = to;
        }
        return bands;
    }

    private static IReadOnlyList<TariffPiece> Merged(IReadOnlyList<TariffPiece> pieces)
    {
        var merged = new List<TariffPiece>();
        foreach (var piece in pieces)
        {
            if (merged.Count > 0 && merged[^1].Claims.SequenceEqual(piece.Claims)) merged[^1] = merged[^1] with { To = piece.To };
            else merged.Add(piece);
        }
        return merged;
    }
}

/// <summary>Days in a row on which the same charges are in force.</summary>
/// <param name="Start">Day of the year, from 0.</param>
public sealed record TariffBand(LocalDate First, LocalDate Last, int Start, int Count, IReadOnlyList<TariffPiece> Pieces);
