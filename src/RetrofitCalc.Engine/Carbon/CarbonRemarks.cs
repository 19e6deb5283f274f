using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Carbon;

/// <summary>How carbon was counted, in plain sentences.</summary>
internal static class CarbonRemarks
{
    /// <summary>The remarks of a study; none without a grid region.</summary>
    /// <param name="site">The site.</param>
    public static IEnumerable<string> Of(Site site)
    {
        if (GridFactors.Find(site.GridRegion) is { } region)
            yield return $"Carbon of a year takes the average rate of the grid region {region.Code}, as an inventory does; carbon saved takes the rate of power stations that answer to a change, so the two do not add up. Losses of the lines are left out. {GridFactors.Source.Source}.";
    }
}
