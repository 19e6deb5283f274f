using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tracing;

namespace RetrofitCalc.Engine.Luminaires;

/// <summary>What one line draws.</summary>
/// <param name="PerLuminaire">Input of one luminaire, all lamps lit.</param>
/// <param name="Connected">Input of the line with all switched on, lamps out counted as the baseline says.</param>
/// <param name="BallastLoss">Part of it lost in ballasts; null when not known.</param>
/// <param name="ModeShares">Share of <paramref name="Connected"/> drawn in each mode of the area, in order. [unitless]</param>
public sealed record LineLoad(InputPower PerLuminaire, Power Connected, Power? BallastLoss, IReadOnlyList<double> ModeShares)
{
    /// <summary>A line with all its lamps working.</summary>
    /// <param name="perLuminaire">Input of one luminaire.</param>
    /// <param name="luminaires">Luminaires. [count]</param>
    /// <param name="modeShares">Share drawn in each mode of the area.</param>
    /// <param name="trace">Recorder; null when nobody asks.</param>
    public static LineLoad Working(InputPower perLuminaire, double luminaires, IReadOnlyList<double> modeShares, Trace? trace = null)
    {
        var load = new LineLoad(perLuminaire, perLuminaire.Total * luminaires, perLuminaire.BallastLoss * luminaires, modeShares);
        trace?.Add("Connected power of the line", "P = N · P_in",
            [new("N", luminaires, "luminaires"), new("P_in", perLuminaire.Total.Watts, "W")], new("P", load.Connected.Watts, "W"));
        return load;
    }

    /// <summary>An existing line with the lamps out that the survey found.</summary>
    /// <param name="perLuminaire">Input of one luminaire, all lamps lit.</param>
    /// <param name="line">The survey line.</param>
    /// <param name="model">Its set-up.</param>
    /// <param name="modes">Modes of its area.</param>
    /// <param name="trace">Recorder; null when nobody asks.</param>
    public static LineLoad AsFound(InputPower perLuminaire, SurveyLine line, SetUpModel model, IReadOnlyList<LitMode> modes, Trace? trace = null)
    {
        var found = LampsOut.Found(line, model.Fitting);
        Power Drawn(string? step)
        {
            var energised = model.Energised(step);
            var correction = model.PowerShare(step) / energised.Sum(i => model.Shares[i]);
            return energised.Aggregate(Power.Zero, (sum, i) => sum
                + perLuminaire.Total * (model.Shares[i] * correction * found[i].FullBallasts)
                + LampsOut.DarkPower(model.Fitting.Ballasts[i]) * found[i].DarkBallasts);
        }
        var connected = Drawn(null);
        trace?.Add("Connected power of the line, lamps out left out", "P = Σ ballasts still lit · P_in of each + dark ballasts · dark watts (E-03)",
            [new("N", line.Count ?? 0, "luminaires"), new("P_in", perLuminaire.Total.Watts, "W"), new("lamps out", line.LampsOut ?? 0, "lamps"), new("dead ballasts", line.DeadBallasts ?? 0, "ballasts")],
            new("P", connected.Watts, "W"), "Survey");
        return new(perLuminaire, connected, FoundLoss(connected, found, model),
            [.. modes.Select(mode => connected > Power.Zero ? Drawn(mode.Step) / connected * Level(mode, model.Dims) : 0)]);
    }

    /// <summary>Share of its connected power that a fitting draws in a mode, all lamps working. [unitless]</summary>
    /// <param name="mode">The mode.</param>
    /// <param name="model">The existing set-up, whose steps tubes keep.</param>
    /// <param name="kind">How what is fitted answers to steps and dimming.</param>
    internal static double Share(LitMode mode, SetUpModel model, FittingKind kind) => Level(mode, kind.Dims) * kind.Steps switch
    {
        StepKind.Ballasts => model.PowerShare(mode.Step),
        StepKind.Lamps => model.LampShare(mode.Step),
        _ => 1,
    };

    /// <summary>Factor of a mode's dimming on what dims; input power is taken as proportional to the level. [unitless]</summary>
    /// <param name="mode">The mode.</param>
    /// <param name="dims">Whether what is fitted dims.</param>
    public static double Level(LitMode mode, bool dims) => dims ? mode.Dimming : 1;

    private static Power? FoundLoss(Power connected, IReadOnlyList<FoundPosition> found, SetUpModel model)
    {
        var lamps = Power.Zero;
        for (var i = 0; i < found.Count; i++)
        {
            if (model.LampPowers[i] is not { } power)
                return null;
            lamps += power * ((double)found[i].WorkingLamps / model.Fitting.SetUp.Ballasts[i].LampsDriven);
        }
        return BallastPower.Loss(connected, lamps);
    }
}
