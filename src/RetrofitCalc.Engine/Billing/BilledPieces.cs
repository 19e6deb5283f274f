using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>A day cut where an energy charge or an adjustment begins or ends, by the wall clock.</summary>
internal static class BilledPieces
{
    /// <summary>The pieces, in order; each lasts to the next, the last to midnight.</summary>
    /// <param name="tariff">A tariff without gaps or overlaps.</param>
    /// <param name="energyInForce">Which energy charges are in force on the day.</param>
    /// <param name="adjustmentsInForce">Which adjustments are.</param>
    /// <param name="weekend">Whether the day is billed as a weekend day.</param>
    public static IReadOnlyList<BilledPiece> Of(Tariff tariff, bool[] energyInForce, bool[] adjustmentsInForce, bool weekend)
    {
        var pieces = TariffDay.Pieces(tariff.Energy, energyInForce, weekend);
        var spans = (
            from index in Enumerable.Range(0, adjustmentsInForce.Length)
            where adjustmentsInForce[index]
            from span in TariffDay.DemandSpans(tariff.Adjustments[index].When, weekend)
            select (Index: index, span.From, span.To)).ToList();
        return
        [
            .. from cut in pieces.Select(piece => piece.From).Concat(spans.Select(span => span.From)).Concat(spans.Select(span => span.To)).Distinct().Order()
               let piece = pieces.FirstOrDefault(piece => piece.From <= cut && cut < piece.To)
               where piece.Claims is not null
               select new BilledPiece(cut, piece.Claims[0], [.. spans.Where(span => span.From <= cut && cut < span.To).Select(span => span.Index).Distinct()]),
        ];
    }
}

/// <summary>A piece of a day with the same prices by kilowatt-hour.</summary>
/// <param name="From">Start. [ticks after midnight]</param>
/// <param name="Charge">Index of the energy charge.</param>
/// <param name="Adjustments">Indexes of the adjustments that apply, in order.</param>
internal readonly record struct BilledPiece(long From, int Charge, IReadOnlyList<int> Adjustments);
