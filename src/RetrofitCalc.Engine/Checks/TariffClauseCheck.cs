using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>Power factor, load-factor credit, minimum bill and rounding of amounts.</summary>
internal static class TariffClauseCheck
{
    public static void Run(Tariff tariff, Site site, Problems problems)
    {
        if (tariff.PowerFactor is { } clause)
            CheckPowerFactor(tariff, clause, site, problems);
        if (tariff.LoadFactorCredit is { } credit)
        {
            problems.InRange("Tariff.LoadFactorCredit.AboveHours", $"Hours of use from which \"{credit.Name}\" counts", credit.AboveHours, 0, 744);
            problems.NotNegative("Tariff.LoadFactorCredit.PricePerKilowatt", $"Credit of \"{credit.Name}\"", credit.PricePerKilowatt.PerKilowatt);
            TariffNames.CheckDemand(tariff, credit.Demand, ("Tariff.LoadFactorCredit.Demand", $"\"{credit.Name}\""), problems);
        }
        problems.NotNegative("Tariff.MinimumBill", "Minimum bill", tariff.MinimumBill?.Units);
        problems.InRange("Tariff.AmountDecimals", "Decimals of amounts on the bill", tariff.AmountDecimals, 0, 4);
    }

    private static void CheckPowerFactor(Tariff tariff, PowerFactorClause clause, Site site, Problems problems)
    {
        if (site.PowerFactor is null)
            problems.Add("Site.PowerFactor", "The tariff bills a poor power factor, but the power factor of the site is not given; take it from a bill.");
        if (tariff.Demand.Count == 0)
            problems.Add("Tariff.PowerFactor", "The power-factor clause changes demand, but the tariff has no demand charge.");
        foreach (var (number, name) in clause.On.Index())
            TariffNames.CheckDemand(tariff, name, ($"Tariff.PowerFactor.On[{number}]", "The power-factor clause"), problems);
        switch (clause)
        {
            case TargetPowerFactor(var target):
                problems.InRange("Tariff.PowerFactor.Target", "Target power factor", target, 0.5, 1);
                break;
            case AddedPerPoint(var threshold, var share):
                problems.InRange("Tariff.PowerFactor.Threshold", "Power factor from which nothing is added", threshold, 0.5, 1);
                problems.InRange("Tariff.PowerFactor.SharePerPoint", "Share of demand added for each point of power factor", share, 0, 0.1);
                break;
            case ReactiveAboveShare(var free, var price):
                problems.InRange("Tariff.PowerFactor.FreeShare", "Free reactive demand over real demand", free, 0, 1);
                problems.NotNegative("Tariff.PowerFactor.PricePerKilovar", "Price of a kilovar", price.PerKilowatt);
                break;
        }
    }
}
