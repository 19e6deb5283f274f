using NodaTime;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

internal static class TariffCheck
{
    public static void Run(Study study, Problems problems)
    {
        var tariff = study.Tariff;
        if (tariff.Energy.Count == 0)
            problems.Add("Tariff.Energy", "The tariff has no energy price; give at least one, such as a flat price per kWh.");
        foreach (var (index, charge) in tariff.Energy.Index())
        {
            CheckHours(charge.When, charge.Name, $"Tariff.Energy[{index}].When", 1, problems);
            CheckBlocks(charge, $"Tariff.Energy[{index}].Blocks", problems);
        }
        foreach (var (index, charge) in tariff.Fixed.Index())
            problems.InRange($"Tariff.Fixed[{index}].Amount", $"Monthly amount of \"{charge.Name}\"", charge.Amount.Units, -1e9, 1e9);
        foreach (var (index, charge) in tariff.Demand.Index())
            CheckDemand(charge, $"Tariff.Demand[{index}]", problems);
        if (tariff.Energy.Count > 0)
            TariffCoverage.Run(tariff, study.Assumptions.Start.Year, problems);
    }

    private static void CheckDemand(DemandCharge charge, string path, Problems problems)
    {
        if (charge.WindowMinutes is not (15 or 30 or 60))
            problems.Add($"{path}.WindowMinutes", $"The averaging window of \"{charge.Name}\" is {charge.WindowMinutes} minutes; it must be 15, 30 or 60.");
        else
            CheckHours(charge.When, charge.Name, $"{path}.When", charge.WindowMinutes, problems);
        problems.NotNegative($"{path}.Price", $"Price of \"{charge.Name}\"", charge.Price.PerKilowatt);
        problems.InRange($"{path}.Ratchet.Share", $"Ratchet share of \"{charge.Name}\"", charge.Ratchet?.Share, 0, 1);
        problems.InRange($"{path}.Ratchet.Months", $"Months the ratchet of \"{charge.Name}\" looks back", charge.Ratchet?.Months, 1, 11);
    }

    private static void CheckHours(TariffHours when, string name, string path, int stepMinutes, Problems problems)
    {
        if (when.Start is null != when.End is null)
            problems.Add(path, $"\"{name}\" has only one of first and last day; give both, or neither for all year.");
        foreach (var (number, window) in when.Windows.Index())
        {
            if (window.To != LocalTime.Midnight && window.To <= window.From)
                problems.Add($"{path}.Windows[{number}]", $"A window of \"{name}\" runs from {CheckText.Time(window.From)} to {CheckText.Time(window.To)}; it must end later than it begins. Split one that runs past midnight in two.");
            if (!IsWhole(window.From, stepMinutes) || !IsWhole(window.To, stepMinutes))
                problems.Add($"{path}.Windows[{number}]", $"A window of \"{name}\" runs from {CheckText.Time(window.From)} to {CheckText.Time(window.To)}; it must begin and end on whole {(stepMinutes == 1 ? "minutes" : $"averaging windows of {stepMinutes} minutes")}.");
        }
    }

    private static bool IsWhole(LocalTime time, int minutes) => time.TickOfDay % (minutes * NodaConstants.TicksPerMinute) == 0;

    private static void CheckBlocks(EnergyCharge charge, string path, Problems problems)
    {
        if (charge.Blocks.Count == 0)
            problems.Add(path, $"\"{charge.Name}\" has no price.");
        var below = 0.0;
        foreach (var (number, block) in charge.Blocks.Index())
        {
            var last = number == charge.Blocks.Count - 1;
            problems.NotNegative($"{path}[{number}].Price", $"Price of \"{charge.Name}\"", block.Price.PerKilowattHour);
            if (last != block.UpTo is null)
                problems.Add($"{path}[{number}].UpTo", last
                    ? $"The last block of \"{charge.Name}\" ends at {Problems.Text(block.UpTo!.Value.KilowattHours)} kWh; it must have no upper end."
                    : $"Block {number + 1} of \"{charge.Name}\" has no upper end, but another block follows.");
            if (block.UpTo is { } end && end.KilowattHours <= below)
                problems.Add($"{path}[{number}].UpTo", $"Block {number + 1} of \"{charge.Name}\" ends at {Problems.Text(end.KilowattHours)} kWh; it must end above {Problems.Text(below)} kWh.");
            below = block.UpTo?.KilowattHours ?? below;
        }
    }
}
