using NodaTime;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>A tariff laid over one year: which prices by kilowatt-hour apply at each instant, and when each demand charge counts load.</summary>
public sealed class TariffCalendar
{
    private readonly List<(long Start, int Cell)> _pieces = [];
    private readonly List<TariffCell> _cells = [];
    private readonly Dictionary<(int Month, int Charge, string Adjustments), int> _known = [];

    /// <summary>Lays a tariff over a year.</summary>
    /// <param name="tariff">A tariff without gaps or overlaps.</param>
    /// <param name="year">The year at the site's clock.</param>
    public TariffCalendar(Tariff tariff, SiteYear year)
    {
        Tariff = tariff;
        Year = year;
        foreach (var (month, span) in year.Months.Index())
            Lay(month, span);
        CellsOf = [.. year.Months.Select((_, month) => _cells.Index().Where(cell => cell.Item.Month == month).Select(cell => cell.Index).ToArray())];
        CellHours = HoursByCell([new(year.Start, year.End, new(LitMode.AllYear, null, null, 1))]);
        DemandSpans = [.. tariff.Demand.Select(charge => year.Months.Select(month => Spans(charge, month)).ToArray())];
    }

    /// <summary>The tariff.</summary>
    public Tariff Tariff { get; }

    /// <summary>The year.</summary>
    public SiteYear Year { get; }

    /// <summary>Distinct mixes of billing month, energy charge and adjustments.</summary>
    public IReadOnlyList<TariffCell> Cells => _cells;

    /// <summary>Indexes of the cells of each billing month.</summary>
    public IReadOnlyList<int[]> CellsOf { get; }

    /// <summary>Hours of the year in each cell. [h]</summary>
    public IReadOnlyList<double> CellHours { get; }

    /// <summary>By demand charge and billing month: spans in which load counts. [s since 1970]</summary>
    public IReadOnlyList<IReadOnlyList<IReadOnlyList<(long From, long To)>>> DemandSpans { get; }

    /// <summary>Share of a billing month's days on which a charge is in force. [unitless, 0–1]</summary>
    /// <param name="when">When the charge applies.</param>
    /// <param name="month">The billing month.</param>
    public double ShareInForce(TariffHours when, BillingMonth month) =>
        when.Start is null ? 1 : month.Days.Count(day => InForce(when, day, month)) / (double)month.DayCount;

    /// <summary>Hours lit in each cell, integrated exactly. [h]</summary>
    /// <param name="spells">Spells in order, within the year.</param>
    public double[] HoursByCell(IReadOnlyList<LitSpell> spells)
    {
        var hours = new double[_cells.Count];
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

    /// <summary>Metered energy in each cell. [kWh]</summary>
    /// <param name="meter">The meter.</param>
    public double[] MeteredByCell(MeterLoad meter)
    {
        var kilowattHours = new double[_cells.Count];
        for (var piece = 0; piece < _pieces.Count; piece++)
            kilowattHours[_pieces[piece].Cell] += meter.KilowattHours(_pieces[piece].Start, EndOf(piece));
        return kilowattHours;
    }

    /// <summary>Cell that holds an instant.</summary>
    /// <param name="instant">An instant within the year. [s since 1970]</param>
    public int CellAt(long instant)
    {
        var found = _pieces.BinarySearch((instant, int.MaxValue));
        return _pieces[(found >= 0 ? found : ~found) - 1].Cell;
    }

    private void Lay(int month, BillingMonth span)
    {
        var days = new Dictionary<(string InForce, bool Weekend), (long From, int Cell)[]>();
        foreach (var day in span.Days)
        {
            bool[] energy = [.. Tariff.Energy.Select(charge => InForce(charge.When, day, span))];
            bool[] adjustments = [.. Tariff.Adjustments.Select(adjustment => InForce(adjustment.When, day, span))];
            var key = (string.Concat(energy.Concat(adjustments).Select(yes => yes ? '1' : '0')), TariffDay.IsWeekend(Tariff, day));
            if (!days.TryGetValue(key, out var pieces))
                days[key] = pieces = [.. BilledPieces.Of(Tariff, energy, adjustments, key.Item2).Select(piece => (piece.From, CellOf(month, piece)))];
            foreach (var (from, cell) in pieces)
                Append(Year.At(TariffDay.WallTime(day, from)), cell);
        }
    }

    private int CellOf(int month, BilledPiece piece)
    {
        var key = (month, piece.Charge, string.Join(' ', piece.Adjustments));
        if (!_known.TryGetValue(key, out var cell))
        {
            _known[key] = cell = _cells.Count;
            _cells.Add(new(month, piece.Charge, piece.Adjustments));
        }
        return cell;
    }

    private bool InForce(TariffHours when, LocalDate day, BillingMonth month) =>
        TariffDay.InForce(when, TariffDay.SeasonDay(Tariff.SeasonChange, day, month.First, month.Last));

    private long EndOf(int piece) => piece + 1 < _pieces.Count ? _pieces[piece + 1].Start : Year.End;

    private void Append(long start, int cell)
    {
        // A window that falls into the hour the clocks skip has no length and is replaced by what follows.
        while (_pieces.Count > 0 && _pieces[^1].Start >= start)
            _pieces.RemoveAt(_pieces.Count - 1);
        if (_pieces.Count == 0 || _pieces[^1].Cell != cell)
            _pieces.Add((start, cell));
    }

    private List<(long From, long To)> Spans(DemandCharge charge, BillingMonth month)
    {
        var spans = new List<(long From, long To)>();
        foreach (var day in month.Days.Where(day => InForce(charge.When, day, month)))
            foreach (var (fromTick, toTick) in TariffDay.DemandSpans(charge.When, TariffDay.IsWeekend(Tariff, day)).Order())
            {
                var from = Year.At(TariffDay.WallTime(day, fromTick));
                var to = Year.At(TariffDay.WallTime(day, toTick));
                if (spans.Count > 0 && spans[^1].To >= from)
                    spans[^1] = (spans[^1].From, Math.Max(spans[^1].To, to));
                else if (to > from)
                    spans.Add((from, to));
            }
        return spans;
    }
}
