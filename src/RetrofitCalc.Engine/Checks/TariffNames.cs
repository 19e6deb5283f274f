using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>Demand charges that other parts of a tariff refer to by name.</summary>
internal static class TariffNames
{
    /// <summary>The name must be that of exactly one demand charge; no name needs at least one to be the first.</summary>
    public static void CheckDemand(Tariff tariff, string? name, (string Path, string What) place, Problems problems)
    {
        var named = tariff.Demand.Count(charge => name is null || charge.Name == name);
        if (named == 0)
            problems.Add(place.Path, name is null
                ? $"{place.What} need a demand charge, but the tariff has none."
                : $"{place.What} refers to the demand charge \"{name}\", but the tariff has none of that name.");
        else if (name is not null && named > 1)
            problems.Add(place.Path, $"{place.What} refers to \"{name}\", but {named} demand charges are called so; give them different names.");
    }
}
