using NodaTime;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Heat;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Cases;

/// <summary>Load of one case: watts in every slot and state, and what the meter shows month by month.</summary>
internal sealed class CaseLoad
{
    private readonly StudyContext _context;

    public CaseLoad(StudyContext context, SlotLoads slots, Perturbation perturbation)
    {
        _context = context;
        HoursFactors = [.. context.LitAreas.Select(area => area.PossibleFactor(perturbation.Hours))];
        var electricShare = PlantResponse.ElectricShare(context.Study.Site.Plant);
        PlantWeights = [.. context.Load.Slots.Select(slot => 1 + context.LitAreas[slot.Area].Area.HeatInSpace * electricShare)];
        SlotKilowatts = slots.Kilowatts(perturbation);
        SlotLossKilowatts = slots.LossKilowatts(perturbation);
        StateKilowatts = [.. context.Load.Timeline.States.Select(Kilowatts)];
    }

    /// <summary>Factor on hours, by lit area; kilowatts stay.</summary>
    public double[] HoursFactors { get; }

    /// <summary>Lighting with the plant's electricity over lighting alone, by slot.</summary>
    public double[] PlantWeights { get; }

    /// <summary>Lighting in each slot. [kW]</summary>
    public double[] SlotKilowatts { get; }

    /// <summary>Known ballast loss in each slot. [kW]</summary>
    public double[] SlotLossKilowatts { get; }

    /// <summary>Whole meter in each state: base load, lighting, plant. [kW]</summary>
    public double[] StateKilowatts { get; }

    /// <summary>Lighting energy in the year.</summary>
    public Energy Lighting => Energy.FromKilowattHours(Enumerable.Range(0, SlotKilowatts.Length).Sum(KilowattHours));

    /// <summary>Heat of the lights within the conditioned space in the year.</summary>
    public Energy HeatInSpace => Energy.FromKilowattHours(_context.Load.Slots.Index()
        .Sum(slot => KilowattHours(slot.Index) * _context.LitAreas[slot.Item.Area].Area.HeatInSpace));

    /// <summary>Hours of a slot in the year. [h]</summary>
    public double HoursOf(int slot) => _context.Load.Slots[slot].Hours * HoursFactors[_context.Load.Slots[slot].Area];

    /// <summary>Lighting energy of a slot in the year. [kWh]</summary>
    public double KilowattHours(int slot) => SlotKilowatts[slot] * HoursOf(slot);

    /// <summary>Lighting and plant in each cell of the tariff calendar. [kWh]</summary>
    public double[] CellKilowattHours()
    {
        var cells = new double[_context.Load.Tariff.Cells];
        foreach (var (number, slot) in _context.Load.Slots.Index())
        {
            var kilowatts = SlotKilowatts[number] * PlantWeights[number] * HoursFactors[slot.Area];
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

    private double Kilowatts(IReadOnlyList<int> state)
    {
        var kilowatts = BaseKilowatts;
        foreach (var slot in state)
            if (slot != SiteTimeline.Dark)
                kilowatts += SlotKilowatts[slot] * PlantWeights[slot];
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
