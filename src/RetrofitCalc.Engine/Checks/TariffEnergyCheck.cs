using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>Prices by kilowatt-hour: energy charges with their blocks, and adjustments.</summary>
internal static class TariffEnergyCheck
{
    public static void Run(Tariff tariff, Problems problems)
    {
        if (tariff.Energy.Count == 0)
            problems.Add("Tariff.Energy", "The tariff has no energy price; give at least one, such as a flat price per kWh.");
        foreach (var (index, charge) in tariff.Energy.Index())
        {
            TariffHoursCheck.Run(charge.When, (charge.Name, $"Tariff.Energy[{index}]"), 1, problems);
            CheckBlocks(charge, $"Tariff.Energy[{index}].Blocks", problems);
            if (charge.BlockUnit == BlockUnit.PerKilowatt && charge.Blocks.Count > 1)
                TariffNames.CheckDemand(tariff, charge.BlocksByDemand, ($"Tariff.Energy[{index}].BlocksByDemand", $"Blocks of \"{charge.Name}\" by hours of use"), problems);
        }
        foreach (var (index, adjustment) in tariff.Adjustments.Index())
            CheckAdjustment(adjustment, $"Tariff.Adjustments[{index}]", problems);
    }

    private static void CheckBlocks(EnergyCharge charge, string path, Problems problems)
    {
        if (charge.Blocks.Count == 0)
            problems.Add(path, $"\"{charge.Name}\" has no price.");
        var unit = charge.BlockUnit switch { BlockUnit.PerKilowatt => "kWh for each kW", BlockUnit.PerDay => "kWh a day", _ => "kWh" };
        var below = 0.0;
        foreach (var (number, block) in charge.Blocks.Index())
        {
            var last = number == charge.Blocks.Count - 1;
            problems.NotNegative($"{path}[{number}].Price", $"Price of \"{charge.Name}\"", block.Price.PerKilowattHour);
            if (last != block.UpTo is null)
                problems.Add($"{path}[{number}].UpTo", last
                    ? $"The last block of \"{charge.Name}\" ends at {Problems.Text(block.UpTo!.Value.KilowattHours)} {unit}; it must have no upper end."
                    : $"Block {number + 1} of \"{charge.Name}\" has no upper end, but another block follows.");
            if (block.UpTo is { } end && !(end.KilowattHours > below && end.KilowattHours <= Problems.Largest))
                problems.Add($"{path}[{number}].UpTo", $"Block {number + 1} of \"{charge.Name}\" ends at {Problems.Text(end.KilowattHours)} {unit}; it must end above {Problems.Text(below)} {unit}{Problems.Limit(end.KilowattHours)}.");
            below = block.UpTo?.KilowattHours ?? below;
        }
    }

    private static void CheckAdjustment(EnergyAdjustment adjustment, string path, Problems problems)
    {
        TariffHoursCheck.Run(adjustment.When, (adjustment.Name, path), 1, problems);
        if (adjustment.Prices.Count is not (1 or 12))
            problems.Add($"{path}.Prices", $"\"{adjustment.Name}\" has {adjustment.Prices.Count} prices; give one for all months or twelve, January first.");
        foreach (var (number, price) in adjustment.Prices.Index())
            problems.InRange($"{path}.Prices[{number}]", $"Price of \"{adjustment.Name}\"", price.PerKilowattHour, -Problems.Largest, Problems.Largest);
    }
}
