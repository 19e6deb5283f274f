using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Circuits;

/// <summary>Currents of one survey line, now and after an option, for the electrician (E-30).</summary>
/// <param name="Line">The survey line.</param>
/// <param name="Now">As it is; null when the supply voltage is not known.</param>
/// <param name="After">After the option; null without one, or when the supply voltage is not known.</param>
public sealed record CircuitLoad(SurveyLine Line, CircuitCurrent? Now, CircuitCurrent? After);

/// <summary>Currents of one line in one state.</summary>
/// <param name="Luminaires">Luminaires. [count]</param>
/// <param name="PowerFactor">Power factor; null when not known: the currents are then the least possible. [unitless, 0–1]</param>
/// <param name="AmperesEach">Current of one luminaire. [A]</param>
public sealed record CircuitCurrent(double Luminaires, double? PowerFactor, double AmperesEach)
{
    /// <summary>Current of the whole line, all switched on. [A]</summary>
    public double Amperes => Luminaires * AmperesEach;

    /// <summary>Circuit rating the whole line asks for in sum, taken as continuous. [A]</summary>
    public double LeastRating => ContinuousLoad.LeastRating(Amperes);

    /// <summary>Most such luminaires on one 20 A circuit; null when one draws nothing. [count]</summary>
    public int? MostOnOneCircuit => AmperesEach > 0 ? ContinuousLoad.MostLuminaires(AmperesEach) : null;
}

/// <summary>Circuit loads of a study.</summary>
public static class CircuitLoads
{
    /// <summary>Each counted line, in the study's order.</summary>
    /// <param name="result">The study's result.</param>
    /// <param name="option">The option looked at; null for the lighting as it is.</param>
    public static IReadOnlyList<CircuitLoad> Of(StudyResult result, OptionResult? option) =>
    [
        .. from line in result.Study.Lines
           join now in result.Now.Lines on line.Id equals now.Line
           let after = option?.After.Lines.FirstOrDefault(figures => figures.Line == line.Id)
           let changed = option is not null && option.Refused.All(refusal => refusal.Line != line.Id)
               ? option.Option.Measures.FirstOrDefault(change => change.Line == line.Id)?.Measure : null
           select new CircuitLoad(line, Current(line, now, PowerFactorNow(line)), after is null ? null : Current(line, after, PowerFactorAfter(result.Study, line, changed))),
    ];

    private static CircuitCurrent? Current(SurveyLine line, LineFigures figures, double? powerFactor) => line.SupplyVolts is { } volts and > 0
        ? new(figures.Luminaires, powerFactor, ContinuousLoad.Amperes(figures.PerLuminaire.Total.Watts, volts, powerFactor ?? 1))
        : null;

    private static double? PowerFactorNow(SurveyLine line) => line is { Reading: { Amperes: { } amperes and > 0, Power: var power }, SupplyVolts: { } volts and > 0 }
        ? PowerFactors.FromReading(power.Watts, volts, amperes)
        : null;

    private static double? PowerFactorAfter(Study study, SurveyLine line, Measure? measure) => measure switch
    {
        null or KeepAsIs => PowerFactorNow(line),
        DirectWire wire => PowerFactorOf(study.Catalogue.Tubes.FirstOrDefault(tube => tube.Id == wire.Tube)),
        ReplaceLuminaire replace => PowerFactorOf(study.Catalogue.Luminaires.FirstOrDefault(luminaire => luminaire.Id == replace.Luminaire)),
        _ => null,
    };

    /// <summary>The sheet's own figure, else the best its distortion allows.</summary>
    private static double? PowerFactorOf(Replacement? product) =>
        product?.PowerFactor ?? (product?.HarmonicDistortionPercent is { } percent ? PowerFactors.FromDistortion(percent / 100) : null);
}
