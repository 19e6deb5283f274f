using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Heat;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tracing;

namespace RetrofitCalc.Engine.Cases;

/// <summary>Energy and cost of one case by slot, and their sums by area, by season and for the site.</summary>
internal sealed class CaseSums
{
    private readonly StudyContext _context;
    private readonly CaseLoad _load;
    private readonly double _unattributedPerKilowattHour;
    private readonly double[] _slotCostPerKilowatt;
    private readonly double[] _slotOwnCostPerKilowatt;

    public CaseSums(StudyContext context, CaseLoad load, LightingCost cost)
    {
        (_context, _load) = (context, load);
        var drawn = context.Load.Slots.Index().Sum(slot => load.KilowattHours(slot.Index) * load.PlantWeights[slot.Index]);
        _unattributedPerKilowattHour = drawn > 0 ? cost.Unattributed.Units / drawn : 0;
        Unattributed = drawn > 0 ? cost.Unattributed : Money.Zero;
        _slotOwnCostPerKilowatt = [.. context.Load.Slots.Select((_, number) => OwnCostPerKilowatt(number, cost))];
        _slotCostPerKilowatt = [.. context.Load.Slots.Select((_, number) => _slotOwnCostPerKilowatt[number]
            + load.HoursOf(number) * load.PlantWeights[number] * _unattributedPerKilowattHour)];
    }

    /// <summary>Demand billed in months without lighting energy: the season list shows it between seasons, lines and areas share it.</summary>
    public Money Unattributed { get; }

    /// <summary>Energy and cost of a line in the year, plant and fuel included.</summary>
    public (Energy Energy, Money Cost) EnergyAndCost(LineLoad load, int areaIndex, Trace? trace = null)
    {
        var (hours, costPerKilowatt) = (0.0, 0.0);
        var first = _context.Load.FirstSlots[areaIndex];
        foreach (var (mode, share) in load.ModeShares.Index())
        {
            hours += share * _load.HoursOf(first + mode);
            costPerKilowatt += share * _slotCostPerKilowatt[first + mode];
        }
        if (trace is not null)
            Record(trace, load, first);
        return (Energy.FromKilowattHours(load.Connected.Kilowatts * hours), Money.FromUnits(load.Connected.Kilowatts * costPerKilowatt));
    }

    /// <summary>One step for each season, stage, step and level, whatever the plant does meanwhile.</summary>
    private void Record(Trace trace, LineLoad load, int first)
    {
        foreach (var same in load.ModeShares.Index().GroupBy(mode => _context.Load.Slots[first + mode.Index].Mode with { Plant = default }))
            Record(trace, load, same.Key, [.. same.Select(mode => first + mode.Index)], same.First().Item);
    }

    private void Record(Trace trace, LineLoad load, LitMode mode, IReadOnlyList<int> slots, double share)
    {
        var (hours, price) = (slots.Sum(_load.HoursOf), slots.Sum(slot => _slotCostPerKilowatt[slot]));
        var name = string.Join(", ", new[] { mode.Season, mode.Stage, mode.Step }.Where(part => part is not null));
        trace.Add($"Energy and cost: {name}", "E = P · s · h / 1000 (E-06); cost = P · s / 1000 · price of a kilowatt over these hours (E-09)",
            [
                new("P", load.Connected.Watts, "W"), new("s, share drawn in this step and level", share, ""), new("h", hours, "h"),
                new("price of a kilowatt over these hours, plant and fuel included", price, "currency/kW"),
                new("cost", load.Connected.Kilowatts * share * price, "currency"),
            ],
            new("E", load.Connected.Kilowatts * share * hours, "kWh"));
    }

    /// <summary>Sums of an area.</summary>
    /// <param name="area">The area.</param>
    /// <param name="litIndex">Its index among the lit areas; below zero when no line counts there.</param>
    public ShareFigures Area(Area area, int litIndex)
    {
        var numbers = _context.Load.Slots.Index().Where(slot => slot.Item.Area == litIndex).Select(slot => slot.Index).ToList();
        var hours = litIndex < 0 ? _context.Operations[area.Id].Hours : _context.Operations[area.Id].Hours * _load.HoursFactors[litIndex];
        return Figures(area.Name, numbers, hours, _slotCostPerKilowatt) with { Id = area.Id };
    }

    /// <summary>Sums of a season; its hours are those of the schedule.</summary>
    public ShareFigures Season(int season)
    {
        var numbers = _context.Load.Slots.Index().Where(slot => slot.Item.Season == season).Select(slot => slot.Index).ToList();
        var hours = OperatingTime.FromHours(_context.Load.SeasonHours[season]);
        var figures = WithPeak(Figures(_context.Load.SeasonNames[season], numbers, hours, _slotOwnCostPerKilowatt), season);
        return season == _context.Load.SeasonNames.Count - 1 ? figures with { Cost = figures.Cost + Unattributed } : figures;
    }

    /// <summary>The whole site: sum of the areas, and the schedule's hours with any light counted once.</summary>
    public ShareFigures Site(string name, IReadOnlyList<ShareFigures> areas) => areas.Aggregate(
        new ShareFigures(name, default, default, default, default, default, 0, default),
        (sum, area) => sum with
        {
            Connected = sum.Connected + area.Connected,
            BallastLoss = sum.BallastLoss + area.BallastLoss,
            Lighting = sum.Lighting + area.Lighting,
            Plant = sum.Plant + area.Plant,
            FuelTherms = sum.FuelTherms + area.FuelTherms,
            Cost = sum.Cost + area.Cost,
            Heat = sum.Heat + area.Heat,
            MoisturePerHour = sum.MoisturePerHour + area.MoisturePerHour,
        }) with { Hours = OperatingTime.FromHours(_context.Load.LitHours) };

    private AreaOperation Area(int slot) => _context.LitAreas[_context.Load.Slots[slot].Area];

    /// <summary>Heat within the conditioned space while a slot lasts. [kW]</summary>
    private double Heat(int slot) => _load.SlotKilowatts[slot] * Area(slot).Area.HeatInSpace;

    private double OwnCostPerKilowatt(int number, LightingCost cost)
    {
        var slot = _context.Load.Slots[number];
        var electricity = 0.0;
        for (var cell = 0; cell < slot.CellHours.Length; cell++)
            electricity += slot.CellHours[cell] * cost.PerKilowattHour[cell];
        var fuel = slot.Hours * slot.Plant.FuelTherms * _context.LitAreas[slot.Area].Plant.FuelPricePerTherm.Units;
        return _load.HoursFactors[slot.Area] * (electricity * _load.PlantWeights[number] - fuel);
    }

    private ShareFigures Figures(string name, List<int> slots, OperatingTime hours, double[] costPerKilowatt)
    {
        var lighting = Energy.FromKilowattHours(slots.Sum(_load.KilowattHours));
        var therms = slots.Sum(slot => _load.KilowattHours(slot) * _context.Load.Slots[slot].Plant.FuelTherms);
        var plant = Energy.FromKilowattHours(slots.Sum(slot => _load.KilowattHours(slot) * (_load.PlantWeights[slot] - 1)));
        return new(name, default, default, hours, lighting, plant, therms,
            Money.FromUnits(slots.Sum(slot => _load.SlotKilowatts[slot] * costPerKilowatt[slot])));
    }

    /// <summary>Adds the highest power drawn in a season at any one time, all areas together, with its loss and heat.</summary>
    private ShareFigures WithPeak(ShareFigures figures, int season)
    {
        var (peak, loss, heat, latent) = (0.0, 0.0, 0.0, 0.0);
        foreach (var state in _context.Load.Timeline.States)
        {
            var slots = state.Where(slot => slot != SiteTimeline.Dark && _context.Load.Slots[slot].Season == season).ToList();
            var kilowatts = slots.Sum(slot => _load.SlotKilowatts[slot]);
            if (kilowatts > peak)
                (peak, loss, heat, latent) = (kilowatts, slots.Sum(slot => _load.SlotLossKilowatts[slot]), slots.Sum(Heat), slots.Sum(slot => Heat(slot) * Area(slot).Plant.LatentShare));
        }
        return figures with
        {
            Connected = Power.FromKilowatts(peak),
            BallastLoss = Power.FromKilowatts(loss),
            Heat = Power.FromKilowatts(heat),
            MoisturePerHour = Moisture.KilogramsPerHour(Power.FromKilowatts(latent)),
        };
    }
}
