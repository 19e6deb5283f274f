using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Cases;

/// <summary>What each counted line draws in one case, uncertain watts factored in.</summary>
internal static class CaseLines
{
    public static LineLoad[] Loads(StudyContext context, IReadOnlyList<FittedLine> fitted, Perturbation perturbation)
    {
        var loads = new LineLoad[fitted.Count];
        for (var i = 0; i < loads.Length; i++)
            loads[i] = Scaled(Load(context, context.Lines[i], fitted[i]), Factor(fitted[i], perturbation));
        return loads;
    }

    private static LineLoad Load(StudyContext context, CountedLine line, FittedLine fitted) => fitted.Fitting switch
    {
        BallastedFitting { Renewed: false } => line.Load,
        BallastedFitting => LineLoad.Working(line.Load.PerLuminaire, fitted.Luminaires,
            context.ModeShares(line.Area, line.Model, new(StepKind.Ballasts, line.Model.Dims))),
        TubeFitting tubes => LineLoad.Working(context.InputOf(tubes.Tube, tubes.TubesPerLuminaire), fitted.Luminaires,
            context.ModeShares(line.Area, line.Model, new(StepKind.Lamps, tubes.Tube.Dims == true))),
        LuminaireFitting luminaire => LineLoad.Working(context.InputOf(luminaire.Luminaire, 1), fitted.Luminaires,
            context.ModeShares(line.Area, line.Model, new(StepKind.None, luminaire.Luminaire.Dims == true))),
        _ => throw new ArgumentOutOfRangeException(nameof(fitted), fitted.Fitting.GetType().Name, "Unknown kind of fitting."),
    };

    private static double Factor(FittedLine fitted, Perturbation perturbation) => fitted switch
    {
        { Fitting: BallastedFitting, Line.Reading: null } => perturbation.ExistingWatts,
        { Fitting: BallastedFitting } => 1,
        _ => perturbation.ProposedWatts,
    };

    private static LineLoad Scaled(LineLoad load, double factor)
    {
        if (factor == 1)
            return load;
        var per = load.PerLuminaire;
        return load with
        {
            PerLuminaire = per with { Total = per.Total * factor, BallastLoss = per.BallastLoss * factor },
            Connected = load.Connected * factor,
            BallastLoss = load.BallastLoss * factor,
        };
    }
}
