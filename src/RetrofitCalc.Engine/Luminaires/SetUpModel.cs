using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Tracing;

namespace RetrofitCalc.Engine.Luminaires;

/// <summary>Input power of one set-up: full, by ballast, and by lit step.</summary>
public sealed class SetUpModel
{
    private readonly double[] _lampShares;

    /// <summary>Works the set-up out from its parts.</summary>
    /// <param name="setUp">The set-up.</param>
    /// <param name="lamp">Its lamp.</param>
    /// <param name="ballasts">Its ballasts, in order; null where nobody has looked inside.</param>
    /// <param name="trace">Recorder; null when nobody asks.</param>
    public SetUpModel(SetUp setUp, Lamp lamp, IReadOnlyList<Ballast?> ballasts, Trace? trace = null)
    {
        Fitting = new(setUp, lamp, ballasts);
        Renewed = Fitting with { Renewed = true };
        LampPowers = [.. setUp.Ballasts.Zip(ballasts, (position, ballast) =>
            lamp.ArcPower is { } arc && ballast?.BallastFactor is { } factor ? BallastPower.Lamps(position.LampsDriven, arc, factor, trace) : (Power?)null)];
        Power?[] computed = [.. LampPowers.Zip(ballasts, (lamps, ballast) =>
            lamps is { } power && ballast?.LuminousEfficiency is { } efficiency ? BallastPower.Input(power, efficiency, trace) : (Power?)null)];
        Computed = Sum(computed);
        _lampShares = [.. setUp.Ballasts.Select(position => position.LampsDriven / (double)setUp.LampCount)];
        Shares = Computed is { } total && total > Power.Zero ? [.. computed.Select(part => part!.Value / total)] : _lampShares;
        Full = InputEvidence.Best(this);
    }

    /// <summary>The set-up with its lamp and ballasts.</summary>
    public BallastedFitting Fitting { get; }

    /// <summary>The same with new lamps and ballasts.</summary>
    public BallastedFitting Renewed { get; }

    /// <summary>Input with all lamps lit, by the best evidence in the catalogue; null when there is none.</summary>
    public InputPower? Full { get; }

    /// <summary>Input computed from the parts (E-01); null when a part is not known.</summary>
    public Power? Computed { get; }

    /// <summary>Power the lamps of each ballast take; null where arc power or ballast factor is not known.</summary>
    public IReadOnlyList<Power?> LampPowers { get; }

    /// <summary>Share of the full input that each ballast draws, in order: by the formula, else by lamps. [unitless; sum 1]</summary>
    public IReadOnlyList<double> Shares { get; }

    /// <summary>Positions energised in a step; all for the full step, and for a step this set-up does not have.</summary>
    /// <param name="step">Name of the step; null for all lamps.</param>
    public IReadOnlyList<int> Energised(string? step) =>
        FindStep(step)?.BallastIndexes ?? [.. Enumerable.Range(0, Shares.Count)];

    /// <summary>Input in a step over full input. A tested step counts against the tested whole. [unitless, 0 or more]</summary>
    /// <param name="step">Name of the step; null for all lamps.</param>
    public double PowerShare(string? step) =>
        FindStep(step) is not { } found ? 1
        : found.TestedPower is { } tested && Full is { } full ? tested / full.Total
        : found.BallastIndexes.Sum(index => Shares[index]);

    /// <summary>Lamps lit in a step over all lamps. [unitless, 0–1]</summary>
    /// <param name="step">Name of the step; null for all lamps.</param>
    public double LampShare(string? step) => FindStep(step)?.BallastIndexes.Sum(index => _lampShares[index]) ?? 1;

    /// <summary>Whether every ballast dims.</summary>
    public bool Dims => Fitting.Ballasts.All(ballast => ballast?.Dims == true);

    /// <summary>Loss in all ballasts at a given full input; null when it cannot be known.</summary>
    /// <param name="input">Input with all lamps lit.</param>
    public Power? Loss(Power input) => Sum(LampPowers) is { } lamps ? BallastPower.Loss(input, lamps) : null;

    private LitStep? FindStep(string? step) => step is null ? null : Fitting.SetUp.Steps.FirstOrDefault(s => s.Name == step);

    private static Power? Sum(IReadOnlyList<Power?> parts) =>
        parts.All(part => part is not null) ? parts.Aggregate(Power.Zero, (sum, part) => sum + part!.Value) : null;
}
