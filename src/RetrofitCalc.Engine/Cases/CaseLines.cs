using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Tracing;

namespace RetrofitCalc.Engine.Cases;

/// <summary>What each counted line draws in one case.</summary>
internal static class CaseLines
{
    public static LineLoad[] Loads(StudyContext context, IReadOnlyList<FittedLine> fitted)
    {
        var loads = new LineLoad[fitted.Count];
        for (var i = 0; i < loads.Length; i++)
            loads[i] = Load(context, context.Lines[i], fitted[i]);
        return loads;
    }

    public static LineLoad Load(StudyContext context, CountedLine line, FittedLine fitted, Trace? trace = null) => fitted.Fitting switch
    {
        BallastedFitting { Renewed: false } => trace is null ? line.Load : context.ExistingLoad(line.Fitted.Line, line.Area, trace),
        BallastedFitting => LineLoad.Working(line.Load.PerLuminaire, fitted.Luminaires,
            context.ModeShares(line.Area, line.Model, new(StepKind.Ballasts, line.Model.Dims)), trace),
        TubeFitting tubes => LineLoad.Working(context.InputOf(tubes.Tube, tubes.TubesPerLuminaire), fitted.Luminaires,
            context.ModeShares(line.Area, line.Model, new(StepKind.Lamps, tubes.Tube.Dims == true)), trace),
        LuminaireFitting luminaire => LineLoad.Working(context.InputOf(luminaire.Luminaire, 1), fitted.Luminaires,
            context.ModeShares(line.Area, line.Model, new(StepKind.None, luminaire.Luminaire.Dims == true)), trace),
        _ => throw new ArgumentOutOfRangeException(nameof(fitted), fitted.Fitting.GetType().Name, "Unknown kind of fitting."),
    };

    /// <summary>The same line when its watts are off by a factor.</summary>
    public static LineLoad Scaled(LineLoad load, double factor)
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
