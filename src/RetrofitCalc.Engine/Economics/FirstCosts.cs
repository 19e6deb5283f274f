using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Economics;

/// <summary>What an option costs to do, before and after its incentive.</summary>
/// <remarks>
/// E-13. Parts, labour and the incentive per luminaire count the luminaires fitted; recycling counts the lamps and ballasts taken
/// out. Lines kept as they are cost nothing, and the fixed sum is spent only when something is changed.
/// </remarks>
public static class FirstCosts
{
    /// <summary>First cost without any incentive.</summary>
    /// <param name="now">What is fitted now, by id of the line.</param>
    /// <param name="after">What is fitted afterwards.</param>
    /// <param name="option">The option.</param>
    public static FirstCost Gross(IReadOnlyDictionary<string, FittedLine> now, IReadOnlyList<FittedLine> after, RetrofitOption option)
    {
        var (parts, labour, disposal, unpriced) = (Money.Zero, Money.Zero, Money.Zero, new List<string>());
        foreach (var (line, measure) in Changed(after, option))
        {
            if ((measure.PartsPerLuminaire ?? PartsPrice(line.Fitting)) is { } price) parts += price * line.Luminaires;
            else unpriced.Add(line.Line.Id);
            var time = measure.LabourPerLuminaire ?? MeasureLabour.For(measure.Measure);
            labour += option.Costs.ElectricianRate * (time.Hours * line.Luminaires);
            disposal += Disposal(now[line.Line.Id], option.Costs);
        }
        var fixedSum = labour + parts + disposal == Money.Zero && unpriced.Count == 0 ? Money.Zero : option.Costs.FixedSum;
        return new FirstCost(parts, labour, disposal, fixedSum, (parts + labour + disposal) * option.Costs.Contingency, Money.Zero)
        {
            UnpricedLines = unpriced,
        };
    }

    /// <summary>Scales a first cost and takes off the incentive, up to its cap.</summary>
    /// <param name="gross">First cost without incentive.</param>
    /// <param name="factor">Factor on it. [unitless, above 0]</param>
    /// <param name="incentive">Incentive before its cap; zero or more.</param>
    /// <param name="cap">Highest incentive as a share of first cost. [unitless, 0–1]; null for no cap.</param>
    public static FirstCost Net(FirstCost gross, double factor, Money incentive, double? cap)
    {
        var scaled = gross with
        {
            Parts = gross.Parts * factor,
            Labour = gross.Labour * factor,
            Disposal = gross.Disposal * factor,
            FixedSum = gross.FixedSum * factor,
            Contingency = gross.Contingency * factor,
        };
        return scaled with { Incentive = cap is { } share && incentive > scaled.Gross * share ? scaled.Gross * share : incentive };
    }

    /// <summary>Incentive by luminaire; what is paid by kilowatt-hour comes on top.</summary>
    /// <param name="after">What is fitted afterwards.</param>
    /// <param name="option">The option.</param>
    public static Money IncentiveByLuminaire(IReadOnlyList<FittedLine> after, RetrofitOption option) =>
        Changed(after, option).Aggregate(Money.Zero, (sum, work) => sum + work.Measure.IncentivePerLuminaire * work.Line.Luminaires);

    private static IEnumerable<(FittedLine Line, LineMeasure Measure)> Changed(IReadOnlyList<FittedLine> after, RetrofitOption option)
    {
        var measures = option.Measures.ToDictionary(measure => measure.Line);
        foreach (var line in after)
            if (line.Fitting is not BallastedFitting { Renewed: false } && measures.TryGetValue(line.Line.Id, out var measure))
                yield return (line, measure);
    }

    /// <summary>Catalogue price of what is fitted in one luminaire; null as soon as one part has no known price.</summary>
    /// <param name="fitting">What is fitted.</param>
    public static Money? PartsPrice(Fitting fitting) => fitting switch
    {
        BallastedFitting f => f.Lamp.Price * f.SetUp.LampCount + BallastsPrice(f),
        TubeFitting f => f.Tube.Price * f.TubesPerLuminaire,
        LuminaireFitting f => f.Luminaire.Price,
        _ => null,
    };

    /// <summary>All ballasts of one luminaire; null as soon as one has no known price.</summary>
    public static Money? BallastsPrice(BallastedFitting fitting)
    {
        Money? sum = Money.Zero;
        foreach (var ballast in fitting.Ballasts) sum += ballast?.Price;
        return sum;
    }

    private static Money Disposal(FittedLine old, OptionCosts costs) => old.Fitting is BallastedFitting fitting
        ? (costs.DisposalPerLamp * fitting.SetUp.LampCount + costs.DisposalPerBallast * fitting.Ballasts.Count) * old.Luminaires
        : Money.Zero;
}
