using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>Rates of taxes and the charges they name.</summary>
internal static class TariffTaxCheck
{
    public static void Run(Tariff tariff, Problems problems)
    {
        foreach (var (index, tax) in tariff.Taxes.Index())
        {
            problems.InRange($"Tariff.Taxes[{index}].Rate", $"Rate of \"{tax.Name}\"", tax.Rate, -1, 1);
            foreach (var (number, name) in tax.On.Index())
                if (!Taxable(tariff).Contains(name))
                    problems.Add($"Tariff.Taxes[{index}].On[{number}]", $"\"{tax.Name}\" falls on \"{name}\", but the tariff has no charge of that name.");
        }
    }

    private static IEnumerable<string> Taxable(Tariff tariff) =>
    [
        .. tariff.Fixed.Select(charge => charge.Name), .. tariff.Energy.Select(charge => charge.Name),
        .. tariff.Adjustments.Select(adjustment => adjustment.Name), .. tariff.Demand.Select(charge => charge.Name),
        .. tariff.LoadFactorCredit is { } credit ? [credit.Name] : Array.Empty<string>(), ReactiveLine.Name, MinimumLine.Name,
    ];
}
