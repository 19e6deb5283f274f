using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Lifetimes;

/// <summary>Clocks of what wears out on a line. A part whose life nobody knows has no clock.</summary>
/// <remarks>Every clock is the plain "hours over hours a year": the middle of what happens, not a spread of failures.</remarks>
public static class WearClocks
{
    /// <summary>The clocks of one line.</summary>
    /// <param name="fitted">The line and what is fitted.</param>
    /// <param name="operation">How it is used.</param>
    /// <param name="assumptions">Policies.</param>
    /// <param name="perturbation">Factors on uncertain inputs. Only the likely case carries basis texts.</param>
    public static IReadOnlyList<WearClock> Of(
        FittedLine fitted, LineOperation operation, Assumptions assumptions, Perturbation perturbation) => fitted.Fitting switch
    {
        BallastedFitting ballasted => BallastedClocks.Of(fitted, ballasted, new ClockSetting(operation, assumptions, perturbation)),
        TubeFitting tube => Led(WearPart.Tube, fitted, tube.Tube, new ClockSetting(operation, assumptions, perturbation)),
        LuminaireFitting luminaire => Led(WearPart.Luminaire, fitted, luminaire.Luminaire, new ClockSetting(operation, assumptions, perturbation)),
        _ => [],
    };

    private static WearClock[] Led(WearPart part, FittedLine fitted, Replacement product, ClockSetting setting)
    {
        if (product.RatedLife is not { } rated) return [];
        var quotable = RatedLives.Quotable(rated, product.TestHours);
        var planned = RelampRules.OfReplacements(fitted, quotable, setting.Assumptions);
        var life = planned * setting.Perturbation.ReplacementLife;
        var years = RatedLives.Years(life, setting.Operation.Hours);
        var basis = setting.WantsTexts ? LifeTexts.Led(rated, quotable, product.TestHours) : "";
        if (setting is { WantsTexts: true, Assumptions.RelampPolicy: RelampPolicy.Light }) basis += " " + LifeTexts.Relamping(setting.Assumptions, quotable, planned);
        return [new WearClock(part, life, years, years, basis)];
    }
}

/// <summary>What the clocks of one line share.</summary>
/// <param name="Operation">How the line is used.</param>
/// <param name="Assumptions">Policies.</param>
/// <param name="Perturbation">Factors on uncertain inputs.</param>
internal sealed record ClockSetting(LineOperation Operation, Assumptions Assumptions, Perturbation Perturbation)
{
    public bool WantsTexts { get; } = Perturbation == Perturbation.None;
}
