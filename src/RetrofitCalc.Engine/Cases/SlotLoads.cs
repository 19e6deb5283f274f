using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Cases;

/// <summary>Lighting in each slot of the site, kept apart by how its watts are known, so that uncertain watts cost no second walk over the lines.</summary>
internal sealed class SlotLoads
{
    private readonly double[][] _kilowatts;
    private readonly double[][] _lossKilowatts;

    public SlotLoads(StudyContext context, IReadOnlyList<FittedLine> fitted, IReadOnlyList<LineLoad> loads, IReadOnlyList<int> areas)
    {
        var slots = context.Load.Slots.Count;
        _kilowatts = [new double[slots], new double[slots], new double[slots]];
        _lossKilowatts = [new double[slots], new double[slots], new double[slots]];
        for (var i = 0; i < loads.Count; i++)
            Add(loads[i], context.Load.FirstSlots[areas[i]], (int)KnownBy(fitted[i]));
    }

    /// <summary>Lighting in each slot. [kW]</summary>
    public double[] Kilowatts(Perturbation perturbation) => Combined(_kilowatts, perturbation);

    /// <summary>Known ballast loss in each slot. [kW]</summary>
    public double[] LossKilowatts(Perturbation perturbation) => Combined(_lossKilowatts, perturbation);

    /// <summary>Factor on a line's watts.</summary>
    public static double Factor(FittedLine fitted, Perturbation perturbation) => Factor(KnownBy(fitted), perturbation);

    private static double Factor(Known known, Perturbation perturbation) => known switch
    {
        Known.Existing => perturbation.ExistingWatts,
        Known.Proposed => perturbation.ProposedWatts,
        _ => 1,
    };

    private static Known KnownBy(FittedLine fitted) =>
        fitted.Fitting is not BallastedFitting ? Known.Proposed
        : fitted.Line.Reading is null ? Known.Existing
        : Known.Measured;

    private static double[] Combined(double[][] parts, Perturbation perturbation)
    {
        var sum = new double[parts[0].Length];
        for (var known = Known.Measured; known <= Known.Proposed; known++)
        {
            var factor = Factor(known, perturbation);
            for (var slot = 0; slot < sum.Length; slot++)
                sum[slot] += parts[(int)known][slot] * factor;
        }
        return sum;
    }

    private void Add(LineLoad line, int firstSlot, int known)
    {
        var lossShare = line.BallastLoss is { } loss && line.Connected > Power.Zero ? loss / line.Connected : 0;
        for (var mode = 0; mode < line.ModeShares.Count; mode++)
        {
            var kilowatts = line.Connected.Kilowatts * line.ModeShares[mode];
            _kilowatts[known][firstSlot + mode] += kilowatts;
            _lossKilowatts[known][firstSlot + mode] += kilowatts * lossShare;
        }
    }

    private enum Known
    {
        Measured,
        Existing,
        Proposed,
    }
}
