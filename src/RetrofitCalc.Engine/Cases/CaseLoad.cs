using NodaTime;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Heat;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Cases;

/// <summary>Load of one case: watts in every slot and state, and what the meter shows month by month.</summary>
internal sealed class CaseLoad
{
    private readonly StudyContext _context;

    public CaseLoad(StudyContext context, IReadOnlyList<LineLoad> lines, double hoursFactor)
    {
        _context = context;
        HoursFactor = hoursFactor;
        var electricShare = PlantResponse.ElectricShare(context.Study.Site.Plant);
        PlantWeights = [.. context.LitAreas.Select(area => 1 + area.Area.HeatInSpace * electricShare)];
        SlotKilowatts = new double[context.Load.Slots.Count];
        SlotLossKilowatts = new double[context.Load.Slots.Count];
        for (var i = 0; i < lines.Count; i++)
            Add(lines[i], context.Load.FirstSlots[context.Lines[i].Area]);
        StateKilowatts = [.. context.Load.Timeline.States.Select(Kilowatts)];
    }

    /// <summary>Factor on hours; kilowatts stay.</summary>
    public double HoursFactor { get; }

    /// <summary>Lighting with the plant's electricity over lighting alone, by lit area.</summary>
    public double[] PlantWeights { get; }

    /// <summary>Lighting in each slot. [kW]</summary>
    public double[] SlotKilowatts { get; }

    /// <summary>Known ballast loss in each slot. [kW]</summary>
    public double[] SlotLossKilowatts { get; }

    /// <summary>Whole meter in each state: base load, lighting, plant. [kW]</summary>
    public double[] StateKilowatts { get; }

    /// <summary>Lighting and plant in each cell of the tariff calendar. [kWh]</summary>
    public double[] CellKilowattHours()
    {
        var cells = new double[_context.Load.Tariff.Cells];
        foreach (var (number, slot) in _context.Load.Slots.Index())
        {
            var kilowatts = SlotKilowatts[number] * PlantWeights[slot.Area] * HoursFactor;
            for (var cell = 0; cell < cells.Length; cell++)
                cells[cell] += kilowatts * slot.CellHours[cell];
        }
        return cells;
    }

    /// <summary>What the meter shows with everything on it.</summary>
    /// <param name="cellKilowattHours">Lighting and plant by cell. [kWh]</param>
    public IReadOnlyList<MeteredMonth> Metered(double[] cellKilowattHours) =>
        Months(cellKilowattHours, windows => windows.Peak(StateKilowatts));

    /// <summary>What the meter would show with the base load alone.</summary>
    public IReadOnlyList<MeteredMonth> MeteredBase() =>
        Months(new double[_context.Load.Tariff.Cells], _ => BaseKilowatts);

    private double BaseKilowatts => _context.Study.Site.BaseLoad.Kilowatts;

    private void Add(LineLoad line, int firstSlot)
    {
        var lossShare = line.BallastLoss is { } loss && line.Connected > Power.Zero ? loss / line.Connected : 0;
        for (var mode = 0; mode < line.ModeShares.Count; mode++)
        {
            var kilowatts = line.Connected.Kilowatts * line.ModeShares[mode];
            SlotKilowatts[firstSlot + mode] += kilowatts;
            SlotLossKilowatts[firstSlot + mode] += kilowatts * lossShare;
        }
    }

    private double Kilowatts(IReadOnlyList<int> state)
    {
        var kilowatts = BaseKilowatts;
        for (var area = 0; area < state.Count; area++)
            if (state[area] != SiteTimeline.Dark)
                kilowatts += SlotKilowatts[state[area]] * PlantWeights[area];
        return kilowatts;
    }

    private MeteredMonth[] Months(double[] cells, Func<DemandWindows, double> peakKilowatts)
    {
        var tariff = _context.Load.Tariff;
        return [.. Enumerable.Range(0, 12).Select(month => new MeteredMonth(
            new YearMonth(_context.Year.Year, month + 1),
            [.. Enumerable.Range(month * tariff.Charges, tariff.Charges).Select(cell => tariff.CellHours[cell] > 0
                ? Energy.FromKilowattHours(cells[cell] + BaseKilowatts * tariff.CellHours[cell])
                : (Energy?)null)],
            [.. _context.Load.Demand.Select(months => months[month].InForce ? Power.FromKilowatts(peakKilowatts(months[month])) : (Power?)null)]))];
    }
}
