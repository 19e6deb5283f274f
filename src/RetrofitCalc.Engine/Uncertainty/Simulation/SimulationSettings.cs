using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Uncertainty.Simulation;

/// <summary>How the ends of a range are read.</summary>
public enum RangeShape
{
    /// <summary>The ends are hardly ever met: PERT.</summary>
    Pert,
    /// <summary>The ends are met more often: straight lines down to them.</summary>
    Triangular,
}

/// <summary>What is drawn, and how often.</summary>
public sealed record SimulationSettings
{
    /// <summary>Fewest draws: below that one in ten of them is too few to read a band from. [count]</summary>
    public const int LeastDraws = 100;

    /// <summary>Most draws: what is kept of each is some two hundred bytes. [count]</summary>
    public const int MostDraws = 1_000_000;

    private readonly int _draws = 10_000;
    private readonly double _livesTogether = 0.5;

    /// <summary>Draws. [count, 100–1,000,000]</summary>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public int Draws { get => _draws; init => _draws = (int)Require.InRange(value, LeastDraws, MostDraws); }

    /// <summary>How the ranges of the study's assumptions are read.</summary>
    public RangeShape Shape { get; init; }

    /// <summary>Correlation of the lives of old and new lighting, of their normal scores. [unitless, 0–1]</summary>
    /// <remarks>Stated assumption, no source: heat and starts shorten both, makers' claims stand apart.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public double LivesTogether { get => _livesTogether; init => _livesTogether = Require.InRange(value, 0, 1); }
}

/// <summary>How a simulation is run: nothing here changes what comes out.</summary>
public sealed record SimulationControl
{
    private readonly int _workers = 1;

    /// <summary>Threads at most; the caller knows the machine. [count, 1–64]</summary>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public int Workers { get => _workers; init => _workers = (int)Require.InRange(value, 1, 64); }

    /// <summary>Told the share done, ever more up to 1, by whichever thread got there; one call at a time. [unitless, 0–1]</summary>
    public IProgress<double>? Progress { get; init; }

    /// <summary>Stops the work within a few draws.</summary>
    public CancellationToken Cancellation { get; init; }
}
