using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>Figures of one state of the lighting, each rounded once to what is printed; sums are sums of printed figures.</summary>
internal sealed class PrintedCase(LightingCase lighting)
{
    public LightingCase Case { get; } = lighting;

    public Power Connected { get; } = Power.FromWatts(lighting.Lines.Sum(line => Whole(line.Connected.Watts)));

    public Power BallastLoss { get; } = Power.FromWatts(lighting.Lines.Sum(line => Whole(line.BallastLoss?.Watts ?? 0)));

    /// <summary>True when some line's ballast loss is not known, so that the sum is a lower limit.</summary>
    public bool LossIsPartial { get; } = lighting.Lines.Any(line => line.BallastLoss is null);

    public Power Heat => Case.Site.Heat;

    public Energy Lighting { get; } = Energy.FromKilowattHours(lighting.Seasons.Sum(season => Whole(season.Lighting.KilowattHours)));

    public Money Cost { get; } = PrintedSums.Cost(lighting);

    /// <summary>Parts falling due in the study period, at prices of the start.</summary>
    public Money Replacements { get; } = Money.FromUnits(Whole(lighting.Replacements.Sum(due => due.Cost.Units)));

    public static double Whole(double value) => PrintedSums.Whole(value);
}

/// <summary>Figures of an option as printed.</summary>
internal sealed class PrintedOption(OptionResult result, PrintedCase now)
{
    public OptionResult Result { get; } = result;

    public PrintedCase After { get; } = new(result.After);

    public Money Parts { get; } = Whole(result.FirstCost.Parts);

    public Money Labour { get; } = Whole(result.FirstCost.Labour);

    public Money Disposal { get; } = Whole(result.FirstCost.Disposal);

    public Money FixedSum { get; } = Whole(result.FirstCost.FixedSum);

    public Money Contingency { get; } = Whole(result.FirstCost.Contingency);

    public Money Incentive { get; } = Whole(result.FirstCost.Incentive);

    public Money FirstCost { get; } = PrintedSums.Of(result.FirstCost);

    /// <summary>Printed bill now less printed bill after.</summary>
    public Money BillSaving => now.Cost - After.Cost;

    private static Money Whole(Money amount) => Money.FromUnits(PrintedCase.Whole(amount.Units));
}
