using NodaTime;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Results;

/// <summary>What an option saves on the electricity bill, line by line: the difference of two years of bills of the whole meter.</summary>
public sealed record BillSaving
{
    /// <summary>Each charge over the year, in the order of the bill; blocks of one charge together.</summary>
    public required IReadOnlyList<ChargeSaving> Charges { get; init; }

    /// <summary>Bills of the first year after the change: a ratchet still remembers the peaks before it.</summary>
    public required IReadOnlyList<MonthlyBill> FirstYear { get; init; }

    /// <summary>Saved in a steady year.</summary>
    public required Money Total { get; init; }

    /// <summary>Saved in the first year.</summary>
    public required Money FirstYearTotal { get; init; }

    /// <summary>Of <see cref="Total"/>: on demand and reactive lines.</summary>
    public required Money Demand { get; init; }

    /// <summary>Of <see cref="FirstYearTotal"/>: on demand and reactive lines.</summary>
    public required Money FirstYearDemand { get; init; }

    /// <summary>Energy saved on the meter, plant included.</summary>
    public required Energy Energy { get; init; }

    /// <summary>Present yearly bill over present yearly kilowatt-hours; null when the meter shows no energy.</summary>
    public required EnergyPrice? BlendedPrice { get; init; }

    /// <summary>What <see cref="BlendedPrice"/> times <see cref="Energy"/> would have promised; null without a blended price.</summary>
    public required Money? BlendedTotal { get; init; }
}

/// <summary>One charge of the tariff before and after.</summary>
/// <param name="Kind">Kind of charge.</param>
/// <param name="Charge">Place of the charge among the tariff's charges of its kind. [0-based]</param>
/// <param name="Name">Name of the charge, without its blocks.</param>
/// <param name="Now">Sum of its lines over the present year.</param>
/// <param name="FirstYear">Over the first year after the change.</param>
/// <param name="After">Over a steady year after the change.</param>
public sealed record ChargeSaving(BillLineKind Kind, int Charge, string Name, Money Now, Money FirstYear, Money After)
{
    /// <summary>Saved in a steady year.</summary>
    public Money Saving => Now - After;
}

/// <summary>The highest window of one demand charge in one billing month, before rounding, ratchet or power factor.</summary>
/// <param name="Month">Billing month.</param>
/// <param name="Charge">Place among the tariff's demand charges. [0-based]</param>
/// <param name="Total">Whole meter.</param>
/// <param name="Lighting">Of it, lighting with the plant that follows.</param>
public sealed record DemandPeak(YearMonth Month, int Charge, Power Total, Power Lighting);

/// <summary>How the survey stands to the meter.</summary>
public sealed record MeterComparison
{
    /// <summary>Energy on the meter in the year.</summary>
    public required Energy Metered { get; init; }

    /// <summary>Of it, what the surveyed lighting explains, without plant. [unitless, 0 or more; above 1 the survey exceeds the meter; 0 when the meter shows no energy]</summary>
    public required double LightingShare { get; init; }

    /// <summary>Intervals in which the surveyed lighting and its plant draw more than the meter shows. [count]</summary>
    public required int IntervalsExceeded { get; init; }

    /// <summary>Largest excess.</summary>
    public required Power LargestExcess { get; init; }

    /// <summary>Intervals of the year. [count]</summary>
    public required int Intervals { get; init; }

    /// <summary>Intervals that were filled. [count]</summary>
    public required int Filled { get; init; }
}
