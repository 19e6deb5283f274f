using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Lifetimes.Survival;

/// <summary>Like parts that burn the same hours.</summary>
/// <param name="Count">Places with one part each. [count]</param>
/// <param name="Life">Life of a part, hours per start and case temperature counted.</param>
/// <param name="Ages">Ages at the start.</param>
/// <param name="HoursPerYear">Hours burned in a year.</param>
public sealed record PartGroup(double Count, WeibullLife Life, AgeMix Ages, OperatingTime HoursPerYear);

/// <summary>Time a worker needs for one part.</summary>
/// <param name="Spot">When it alone is changed.</param>
/// <param name="Group">When it is changed with the rest.</param>
public sealed record PartWork(OperatingTime Spot, OperatingTime Group);

/// <summary>What to expect in one year.</summary>
/// <param name="Year">Year of the study, 1 for the first.</param>
/// <param name="Spot">Parts that fail and are replaced one by one. [count]</param>
/// <param name="Group">Parts changed together. [count]</param>
public sealed record ExpectedYear(int Year, ExpectedCount Spot, double Group)
{
    /// <summary>Parts to buy, and as many old ones to recycle. [count]</summary>
    public double Parts => Spot.Value + Group;

    /// <summary>Hours of work.</summary>
    /// <param name="work">Time for one part.</param>
    public OperatingTime Labour(PartWork work) => work.Spot * Spot.Value + work.Group * Group;
}
