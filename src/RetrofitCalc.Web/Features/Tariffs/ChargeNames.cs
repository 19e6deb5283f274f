using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Tariffs;

/// <summary>Names by which clauses of a tariff point at its charges.</summary>
public static class ChargeNames
{
    /// <summary>Every line a tax can fall on, in the order of the bill.</summary>
    public static IReadOnlyList<string> All(Tariff tariff) =>
    [
        .. tariff.Fixed.Select(c => c.Name)
            .Concat(tariff.Energy.Select(c => c.Name))
            .Concat(tariff.Adjustments.Select(c => c.Name))
            .Concat(tariff.Demand.Select(c => c.Name))
            .Concat(tariff.LoadFactorCredit is { } credit ? [credit.Name] : [])
            .Distinct(),
    ];

    public static IReadOnlyList<string> Demand(Tariff tariff) => [.. tariff.Demand.Select(c => c.Name).Distinct()];

    /// <summary>What pointed at a charge follows it to its new name; a name another charge still has is kept beside it.</summary>
    /// <param name="tariff">The tariff, the charge already renamed.</param>
    public static Tariff Renamed(Tariff tariff, string old, string name)
    {
        if (old == name) return tariff;
        var kept = All(tariff).Contains(old);
        IReadOnlyList<string> List(IReadOnlyList<string> names) => [.. names.SelectMany(n => n != old ? [n] : kept ? new[] { old, name } : [name]).Distinct()];
        string? One(string? named) => named == old && !kept ? name : named;
        return tariff with
        {
            Taxes = [.. tariff.Taxes.Select(t => t with { On = List(t.On) })],
            PowerFactor = tariff.PowerFactor is { } clause ? clause with { On = List(clause.On) } : null,
            LoadFactorCredit = tariff.LoadFactorCredit is { } credit ? credit with { Demand = One(credit.Demand) } : null,
            Energy = [.. tariff.Energy.Select(c => c with { BlocksByDemand = One(c.BlocksByDemand) })],
        };
    }
}
