using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>Everything that makes a tariff impossible to bill.</summary>
internal static class TariffCheck
{
    public static void Run(Study study, Problems problems)
    {
        var tariff = study.Tariff;
        if (tariff is { ValidFrom: { } from, ValidTo: { } to } && to < from)
            problems.Add("Tariff.ValidTo", "The tariff's last day in force lies before its first.");
        foreach (var (index, charge) in tariff.Fixed.Index())
            problems.InRange($"Tariff.Fixed[{index}].Amount", $"{(charge.Per == ChargedPer.Day ? "Daily" : "Monthly")} amount of \"{charge.Name}\"", charge.Amount.Units, -1e9, 1e9);
        TariffEnergyCheck.Run(tariff, problems);
        foreach (var (index, charge) in tariff.Demand.Index())
            TariffDemandCheck.Run(charge, $"Tariff.Demand[{index}]", problems);
        TariffClauseCheck.Run(tariff, study.Site, problems);
        TariffTaxCheck.Run(tariff, problems);
        HolidayCheck.Run(tariff.Holidays, "Tariff.Holidays", problems);
        TariffReadingCheck.Run(tariff.Reading, problems);
        TariffCoverage.Run(study, problems);
    }
}
