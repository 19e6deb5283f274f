using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

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
    public static LineLoad Working(InputPower perLuminaire, double luminaires, IReadOnlyList<double> modeShares) =>
        new(perLuminaire, perLuminaire.Total * luminaires, perLuminaire.BallastLoss * luminaires, modeShares);

    /// <summary>An existing line with the lamps out that the survey found.</summary>
    /// <param name="perLuminaire">Input of one luminaire, all lamps lit.</param>
    /// <param name="line">The survey line.</param>
    /// <param name="model">Its set-up.</param>
    /// <param name="modes">Modes of its area.</param>
    public static LineLoad AsFound(InputPower perLuminaire, SurveyLine line, SetUpModel model, IReadOnlyList<LitMode> modes)
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
        return new(perLuminaire, connected, FoundLoss(connected, found, model),
            [.. modes.Select(mode => connected > Power.Zero ? Drawn(mode.Step) / connected * Level(mode, model.Dims) : 0)]);
    }

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
