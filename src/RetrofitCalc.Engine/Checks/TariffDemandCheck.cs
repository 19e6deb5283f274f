using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>One demand charge.</summary>
internal static class TariffDemandCheck
{
    public static void Run(DemandCharge charge, string path, Problems problems)
    {
        if (charge.WindowMinutes is not (15 or 30 or 60))
            problems.Add($"{path}.WindowMinutes", $"The averaging window of \"{charge.Name}\" is {charge.WindowMinutes} minutes; it must be 15, 30 or 60.");
        else
            TariffHoursCheck.Run(charge.When, (charge.Name, path), charge.WindowMinutes, problems);
        problems.NotNegative($"{path}.Price", $"Price of \"{charge.Name}\"", charge.Price.PerKilowatt);
        problems.NotNegative($"{path}.Minimum", $"Least demand of \"{charge.Name}\" (kW)", charge.Minimum?.Kilowatts);
        problems.InRange($"{path}.Rounding.Step", $"Step to which the demand of \"{charge.Name}\" is rounded (kW)", charge.Rounding?.Step.Kilowatts, 0.001, 1000);
        CheckBlocks(charge, $"{path}.Blocks", problems);
        if (charge.Ratchet is { } ratchet)
            CheckRatchet(ratchet, (charge.Name, $"{path}.Ratchet"), problems);
    }

    private static void CheckBlocks(DemandCharge charge, string path, Problems problems)
    {
        var below = 0.0;
        foreach (var (number, block) in charge.Blocks.Index())
        {
            var end = block.UpTo.Kilowatts;
            problems.NotNegative($"{path}[{number}].Price", $"Price of block {number + 1} of \"{charge.Name}\"", block.Price.PerKilowatt);
            if (!(end > below && end <= Problems.Largest))
                problems.Add($"{path}[{number}].UpTo", $"Block {number + 1} of \"{charge.Name}\" ends at {Problems.Text(end)} kW; it must end above {Problems.Text(below)} kW{Problems.Limit(end)}.");
            below = end;
        }
    }

    private static void CheckRatchet(Ratchet ratchet, (string Name, string Path) charge, Problems problems)
    {
        problems.InRange($"{charge.Path}.Share", $"Ratchet share of \"{charge.Name}\"", ratchet.Share, 0, 1);
        problems.InRange($"{charge.Path}.Months", $"Months the ratchet of \"{charge.Name}\" looks back", ratchet.Months, 1, 11);
        foreach (var (number, month) in ratchet.PeakMonths.Index())
            problems.InRange($"{charge.Path}.PeakMonths[{number}]", $"A month whose peaks lift later ones of \"{charge.Name}\"", month, 1, 12);
    }
}
