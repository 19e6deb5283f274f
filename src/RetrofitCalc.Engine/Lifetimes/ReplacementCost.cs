using RetrofitCalc.Engine.Economics;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Lifetimes;

/// <summary>Parts of one kind on a line, and what replacing all of them costs once, at prices of the start.</summary>
/// <param name="Count">Parts. [count]</param>
/// <param name="Cost">Parts, labour and recycling; without the parts when their price is not known.</param>
/// <param name="PriceMissing">True when the price of the part is not known.</param>
internal readonly record struct ReplacementCost(int Count, Money Cost, bool PriceMissing)
{
    public static ReplacementCost Of(FittedLine fitted, WearPart part, Assumptions assumptions, OptionCosts costs) =>
        (part, fitted.Fitting) switch
        {
            (WearPart.Lamp, BallastedFitting f) =>
                Sum(fitted.Luminaires * f.SetUp.LampCount, f.Lamp.Price, LampLabour(assumptions) + costs.DisposalPerLamp),
            (WearPart.Ballast, BallastedFitting f) =>
                Sum(fitted.Luminaires * f.Ballasts.Count, FirstCosts.BallastsPrice(f) / f.Ballasts.Count, BallastLabour(assumptions) + costs.DisposalPerBallast),
            (WearPart.Tube, TubeFitting f) =>
                Sum(fitted.Luminaires * f.TubesPerLuminaire, f.Tube.Price, TubeLabour(assumptions, costs) + costs.DisposalPerLamp),
            (WearPart.Luminaire, LuminaireFitting f) =>
                Sum(fitted.Luminaires, f.Luminaire.Price, costs.ElectricianRate * MeasureLabour.NewLuminaire.Hours),
            _ => throw new ArgumentOutOfRangeException(nameof(part), part, "This part is not fitted here."),
        };

    private static ReplacementCost Sum(double parts, Money? price, Money labourAndRecycling)
    {
        var count = (int)Math.Ceiling(parts - 1e-9);
        return new ReplacementCost(count, ((price ?? Money.Zero) + labourAndRecycling) * count, price is null);
    }

    private static Money LampLabour(Assumptions assumptions) =>
        assumptions.MaintenanceRate *
        (RelampRules.Together(assumptions) ? assumptions.GroupLampTime : assumptions.SpotLampTime).Hours;

    private static Money BallastLabour(Assumptions assumptions) => assumptions.ElectricianRate * assumptions.BallastTime.Hours;

    /// <summary>Changing a direct-wire tube is electrical work on a dead circuit, so the electrician's rate holds.</summary>
    private static Money TubeLabour(Assumptions assumptions, OptionCosts costs) => costs.ElectricianRate * assumptions.SpotLampTime.Hours;
}
