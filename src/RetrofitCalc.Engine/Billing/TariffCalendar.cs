using NodaTime;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>A tariff laid over one year: which energy charge applies at each instant, and when each demand charge counts load.</summary>
/// <remarks>A "cell" is one energy charge in one month: index = month · charges + charge, month 0 for January.</remarks>
public sealed class TariffCalendar
{
    private readonly List<(long Start, int Cell)> _pieces = [];

    /// <summary>Lays a tariff over a year.</summary>
    /// <param name="tariff">A tariff without gaps or overlaps.</param>
    /// <param name="year">The year at the site's clock.</param>
    public TariffCalendar(Tariff tariff, SiteYear year)
    {
        Tariff = tariff;
        Year = year;
        var days = new Dictionary<(string InForce, bool Weekend), IReadOnlyList<TariffPiece>>();
        foreach (var day in year.Days)
        {
            bool[] inForce = [.. tariff.Energy.Select(charge => TariffDay.InForce(charge.When, day))];
            var key = (string.Concat(inForce.Select(yes => yes ? '1' : '0')), TariffDay.IsWeekend(tariff, day));
            if (!days.TryGetValue(key, out var pieces))
                days[key] = pieces = TariffDay.Pieces(tariff.Energy, inForce, key.Item2);
            foreach (var piece in pieces)
                Append(year.At(TariffDay.WallTime(day, piece.From)), (day.Month - 1) * Charges + piece.Claims[0]);
        }
        CellHours = HoursByCell([new(year.Start, year.End, new(LitMode.AllYear, null, null, 1))]);
        DemandSpans = [.. tariff.Demand.Select(charge => SpansByMonth(charge))];
    }

    /// <summary>The tariff.</summary>
    public Tariff Tariff { get; }

    /// <summary>The year.</summary>
    public SiteYear Year { get; }

    /// <summary>Energy charges. [count]</summary>
    public int Charges => Tariff.Energy.Count;

    /// <summary>Cells of the year: months times charges. [count]</summary>
    public int Cells => 12 * Charges;

    /// <summary>Hours of the year in each cell. [h]</summary>
    public IReadOnlyList<double> CellHours { get; }

    /// <summary>By demand charge and month: spans in which load counts. [s since 1970]</summary>
    public IReadOnlyList<IReadOnlyList<IReadOnlyList<(long From, long To)>>> DemandSpans { get; }

    /// <summary>Hours lit in each cell, integrated exactly. [h]</summary>
    /// <param name="spells">Spells in order, within the year.</param>
    public double[] HoursByCell(IReadOnlyList<LitSpell> spells)
    {
        var hours = new double[Cells];
        var piece = 0;
        foreach (var spell in spells)
        {
            while (EndOf(piece) <= spell.Start)
                piece++;
            for (var at = piece; at < _pieces.Count && _pieces[at].Start < spell.End; at++)
                hours[_pieces[at].Cell] += (Math.Min(spell.End, EndOf(at)) - Math.Max(spell.Start, _pieces[at].Start)) / 3600.0;
        }
        return hours;
    }

    private long EndOf(int piece) => piece + 1 < _pieces.Count ? _pieces[piece + 1].Start : Year.End;

    private void Append(long start, int cell)
    {
        // A window that falls into the hour the clocks skip has no length and is replaced by what follows.
        while (_pieces.Count > 0 && _pieces[^1].Start >= start)
            _pieces.RemoveAt(_pieces.Count - 1);
        if (_pieces.Count == 0 || _pieces[^1].Cell != cell)
            _pieces.Add((start, cell));
    }

    private List<(long From, long To)>[] SpansByMonth(DemandCharge charge)
    {
        List<(long From, long To)>[] months = [.. Enumerable.Range(0, 12).Select(_ => new List<(long, long)>())];
        foreach (var day in Year.Days.Where(day => TariffDay.InForce(charge.When, day)))
        {
            var spans = months[day.Month - 1];
            foreach (var (fromTick, toTick) in TariffDay.DemandSpans(charge.When, TariffDay.IsWeekend(Tariff, day)).Order())
            {
                var from = Year.At(TariffDay.WallTime(day, fromTick));
                var to = Year.At(TariffDay.WallTime(day, toTick));
                if (spans.Count > 0 && spans[^1].To >= from)
                    spans[^1] = (spans[^1].From, Math.Max(spans[^1].To, to));
                else if (to > from)
                    spans.Add((from, to));
            }
        }
        return months;
    }
}
