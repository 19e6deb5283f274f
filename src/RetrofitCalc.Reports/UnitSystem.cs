using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>Units a reader thinks in. Electrical units are the same in both.</summary>
public enum UnitSystem
{
    UsCustomary,
    Metric,
}

public static class UnitSystems
{
    /// <summary>Feet and inches in the United States, metres elsewhere; a site that has not said is taken by its culture.</summary>
    public static UnitSystem Usual(Site site) =>
        site.Jurisdiction == "us" || (site.Jurisdiction is null && site.Culture.EndsWith("-US", StringComparison.Ordinal))
            ? UnitSystem.UsCustomary
            : UnitSystem.Metric;
}
