using RetrofitCalc.Engine.Carbon;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>Carbon and mercury of a result: on pages, on paper and in exports the same.</summary>
public sealed class CarbonFigures(StudyResult result)
{
    /// <summary>The study's grid region; null when it names none, and then no carbon is known.</summary>
    public GridRegion? Region { get; } = GridFactors.Find(result.Study.Site.GridRegion);

    /// <summary>Average emissions of a year. [kg CO2e]; null when not known.</summary>
    public double? Inventory(LightingCase lighting) => Region is null ? null : CarbonAccount.Inventory(Region, lighting);

    /// <summary>What an option saves in a year, by plants that answer to a change. [kg CO2e]; null when not known.</summary>
    public double? Saved(OptionResult option) => Region is null ? null : CarbonAccount.Saved(Region, result.Now, option.After);

    public RetiredLamps Retired(OptionResult option) => RetiredLamps.Of(result.Study, option);

    /// <summary>"12,345", "not known".</summary>
    public static string Text(double? kilograms, QuantityText text) => kilograms is { } kg ? text.Number(kg) : QuantityText.NotKnown;

    /// <summary>"0.62 in 208 lamps", "at least 0.62 in 208 lamps" where some lamps' content is not known.</summary>
    public static string Mercury(RetiredLamps retired, QuantityText text) => retired switch
    {
        { Lamps: 0 } => "none taken out",
        _ when retired.Unknown == retired.Lamps => $"{QuantityText.NotKnown}, {text.Count(retired.Lamps)} lamps",
        { Unknown: > 0 } => $"at least {text.Number(retired.MercuryGrams, 2)} in {text.Count(retired.Lamps)} lamps",
        _ => $"{text.Number(retired.MercuryGrams, 2)} in {text.Count(retired.Lamps)} lamps",
    };
}
