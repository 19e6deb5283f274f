using NodaTime;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Tariffs.Periods;

/// <summary>Energy charges that hold on the same dates, as a bill groups them.</summary>
/// <param name="Charges">Indexes into the tariff's energy charges.</param>
public sealed record TariffSeason(AnnualDate? Start, AnnualDate? End, IReadOnlyList<int> Charges)
{
    public static IReadOnlyList<TariffSeason> Of(Tariff tariff) =>
        [.. tariff.Energy.Index().GroupBy(c => (c.Item.When.Start, c.Item.When.End)).Select(g => new TariffSeason(g.Key.Start, g.Key.End, [.. g.Select(c => c.Index)]))];
}
