using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Results;

/// <summary>An option, and what it brings against keeping the lighting.</summary>
public sealed record OptionResult
{
    /// <summary>The option as evaluated.</summary>
    public required RetrofitOption Option { get; init; }

    /// <summary>The lighting after the change.</summary>
    public required LightingCase After { get; init; }

    /// <summary>What it costs to do.</summary>
    public required FirstCost FirstCost { get; init; }

    /// <summary>Net flows against keeping: year 0 is the start, then the end of each year.</summary>
    public required IReadOnlyList<CashFlowYear> CashFlow { get; init; }

    /// <summary>Undiscounted, with escalated savings and replacements as they fall.</summary>
    public required Payback SimplePayback { get; init; }

    /// <summary>First cost over the saving of a steady year, without escalation or replacements.</summary>
    public required Payback PlainPayback { get; init; }

    /// <summary>With flows discounted.</summary>
    public required Payback DiscountedPayback { get; init; }

    /// <summary>Present value of all net flows: net savings.</summary>
    public required Money NetPresentValue { get; init; }

    /// <summary>Rates at which the net present value is zero: none, one or several. [unitless a year]</summary>
    public required IReadOnlyList<double> InternalRates { get; init; }

    /// <summary>Bill and fuel saved in a steady year, at prices of the start.</summary>
    public required Money AnnualBillSaving { get; init; }

    /// <summary>Bill and fuel saved in the first year, when a ratchet still remembers the peaks before the change.</summary>
    public required Money FirstYearBillSaving { get; init; }

    /// <summary>What it saves on the bill, line by line.</summary>
    public required BillSaving Bill { get; init; }

    /// <summary>How sure it is.</summary>
    public required OptionRanges Ranges { get; init; }

    /// <summary>Whether crops and people keep their light.</summary>
    public required CropLightResult Light { get; init; }

    /// <summary>What it saves at equal light.</summary>
    public required EqualLight AtEqualLight { get; init; }

    /// <summary>Reasons why a measure cannot be done as asked; the line is then kept as it is.</summary>
    public required IReadOnlyList<RefusedMeasure> Refused { get; init; }
}

/// <summary>First cost, part by part. Total = all parts less incentive.</summary>
/// <param name="Parts">Tubes, luminaires, lamps, ballasts.</param>
/// <param name="Labour">Electrician.</param>
/// <param name="Disposal">Recycling of lamps and ballasts.</param>
/// <param name="FixedSum">Permits, engineering.</param>
/// <param name="Contingency">Share of parts, labour and disposal.</param>
/// <param name="Incentive">Incentive, after its cap; zero or more.</param>
public sealed record FirstCost(Money Parts, Money Labour, Money Disposal, Money FixedSum, Money Contingency, Money Incentive)
{
    /// <summary>First cost after the incentive.</summary>
    public Money Total => Gross - Incentive;

    /// <summary>First cost before the incentive.</summary>
    public Money Gross => Parts + Labour + Disposal + FixedSum + Contingency;

    /// <summary>Ids of the survey lines whose parts have no known price; what is missing is not in the sum.</summary>
    public IReadOnlyList<string> UnpricedLines { get; init; } = [];
}

/// <summary>Net flows of one year against keeping; savings positive.</summary>
/// <param name="Year">0 for the start, then 1, 2, … for the end of each year.</param>
/// <param name="FirstCost">First cost, negative; only in year 0.</param>
/// <param name="EnergySaving">Bill and fuel saved.</param>
/// <param name="MaintenanceSaving">Replacements avoided less replacements made.</param>
/// <param name="Cumulative">Sum of net flows so far.</param>
/// <param name="CumulativeDiscounted">The same, discounted to the start.</param>
public sealed record CashFlowYear(
    int Year, Money FirstCost, Money EnergySaving, Money MaintenanceSaving, Money Cumulative, Money CumulativeDiscounted)
{
    /// <summary>Net flow of the year.</summary>
    public Money Net => FirstCost + EnergySaving + MaintenanceSaving;
}

/// <summary>Years until the money is back.</summary>
/// <param name="Years">Years from the start; null means never within the study period; zero when nothing is spent.</param>
/// <param name="LostAgain">True when a later replacement takes the sum below zero once more.</param>
public readonly record struct Payback(double? Years, bool LostAgain = false);

/// <summary>A likely value between a low and a high one. Null payback limits mean never.</summary>
/// <param name="Low">Low end.</param>
/// <param name="Likely">Likely value.</param>
/// <param name="High">High end.</param>
/// <typeparam name="T">Kind of value.</typeparam>
public sealed record Range<T>(T Low, T Likely, T High);

/// <summary>Ranges of an option and what makes them wide.</summary>
/// <param name="Payback">Simple payback. [years; null = never within the study period]</param>
/// <param name="NetPresentValue">Net present value.</param>
/// <param name="AnnualBillSaving">Bill and fuel saved in a steady year.</param>
/// <param name="FirstCost">First cost.</param>
/// <param name="Swings">Each uncertain input alone, widest first.</param>
public sealed record OptionRanges(
    Range<double?> Payback, Range<Money> NetPresentValue, Range<Money> AnnualBillSaving, Range<Money> FirstCost,
    IReadOnlyList<Swing> Swings);

/// <summary>What one uncertain input does on its own.</summary>
/// <param name="Input">Key of the input, such as ElectricityPrice.</param>
/// <param name="Name">The input in plain words.</param>
/// <param name="Ask">What would settle it, in plain words.</param>
/// <param name="Payback">Payback with the input at its low and high end. [years; null = never]</param>
/// <param name="NetPresentValue">Net present value with the input at its low and high end.</param>
/// <param name="PaybackWithout">Payback range if this input were known exactly. [years; null = never]</param>
public sealed record Swing(
    string Input, string Name, string Ask, Range<double?> Payback, Range<Money> NetPresentValue, Range<double?> PaybackWithout);

/// <summary>A measure that does not fit its line.</summary>
/// <param name="Line">Id of the survey line.</param>
/// <param name="Reason">Why, and what would fit.</param>
public sealed record RefusedMeasure(string Line, string Reason);
