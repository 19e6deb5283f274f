using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Cases;

/// <summary>Lighting of one case and the plant that follows it: in every slot, every state and every cell of the tariff calendar.</summary>
internal sealed class CaseLoad
{
    private readonly StudyContext _context;

    public CaseLoad(StudyContext context, SlotLoads slots, Perturbation perturbation)
    {
        _context = context;
        HoursFactors = [.. context.LitAreas.Select(area => area.PossibleFactor(perturbation.Hours))];
        PlantWeights = [.. context.Load.Slots.Select(slot => 1 + slot.Plant.Electricity)];
        SlotKilowatts = slots.Kilowatts(perturbation);
        SlotLossKilowatts = slots.LossKilowatts(perturbation);
        StateKilowatts = [.. context.Load.Timeline.States.Select(Kilowatts)];
        CellKilowattHours = ByCell();
    }

    /// <summary>Factor on hours, by lit area; kilowatts stay.</summary>
    public double[] HoursFactors { get; }

    /// <summary>Lighting with the plant's electricity over lighting alone, by slot.</summary>
    public double[] PlantWeights { get; }

    /// <summary>Lighting in each slot. [kW]</summary>
    public double[] SlotKilowatts { get; }

    /// <summary>Known ballast loss in each slot. [kW]</summary>
    public double[] SlotLossKilowatts { get; }

    /// <summary>Lighting and plant in each state. [kW]</summary>
    public double[] StateKilowatts { get; }

    /// <summary>Lighting and plant in each cell of the tariff calendar. [kWh]</summary>
    public double[] CellKilowattHours { get; }

    /// <summary>Lighting energy in the year.</summary>
    public Energy Lighting => Energy.FromKilowattHours(Enumerable.Range(0, SlotKilowatts.Length).Sum(KilowattHours));

    /// <summary>What the fuel that the lights' heat makes unnecessary would have cost in the year.</summary>
    public Money FuelSaved => Money.FromUnits(_context.Load.Slots.Index()
        .Sum(slot => KilowattHours(slot.Index) * slot.Item.Plant.FuelTherms * _context.LitAreas[slot.Item.Area].Plant.FuelPricePerTherm.Units));

    /// <summary>Hours of a slot in the year. [h]</summary>
    public double HoursOf(int slot) => _context.Load.Slots[slot].Hours * HoursFactors[_context.Load.Slots[slot].Area];

    /// <summary>Lighting energy of a slot in the year. [kWh]</summary>
    public double KilowattHours(int slot) => SlotKilowatts[slot] * HoursOf(slot);

    private double Kilowatts(IReadOnlyList<int> state)
    {
        var kilowatts = 0.0;
        foreach (var slot in state)
            if (slot != SiteTimeline.Dark)
                kilowatts += SlotKilowatts[slot] * PlantWeights[slot];
        return kilowatts;
    }

    private double[] ByCell()
    {
        var cells = new double[_context.Load.Tariff.Cells.Count];
        foreach (var (number, slot) in _context.Load.Slots.Index())
        {
            var kilowatts = SlotKilowatts[number] * PlantWeights[number] * HoursFactors[slot.Area];
            for (var cell = 0; cell < cells.Length; cell++)
                cells[cell] += kilowatts * slot.CellHours[cell];
        }
        return cells;
    }
}
