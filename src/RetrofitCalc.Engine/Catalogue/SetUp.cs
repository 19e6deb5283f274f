using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Catalogue;

/// <summary>An existing luminaire body with its lamps and ballasts.</summary>
public sealed record SetUp : CatalogueEntry
{
    /// <summary>Catalogue id of the lamp.</summary>
    public required string Lamp { get; init; }

    /// <summary>The ballasts inside, in order; each drives its own lamps.</summary>
    public required IReadOnlyList<BallastPosition> Ballasts { get; init; }

    /// <summary>Input power of the whole set-up, tested or published for this combination; null when only parts are known.</summary>
    public Power? TestedPower { get; init; }

    /// <summary>Input power by nameplate; null when not known.</summary>
    public Power? NameplatePower { get; init; }

    /// <summary>Switching steps; empty when all lamps are switched together. The full step is always there and need not be listed.</summary>
    public IReadOnlyList<LitStep> Steps { get; init; } = [];

    /// <summary>Lamps in one luminaire. [count]</summary>
    public int LampCount => (int)Math.Clamp(Ballasts.Sum(b => (long)b.LampsDriven), int.MinValue, int.MaxValue);
}

/// <summary>One ballast in a luminaire and the lamps it feeds.</summary>
/// <param name="Ballast">Catalogue id of the ballast; null when nobody has looked inside.</param>
/// <param name="LampsDriven">Lamps on this ballast. [count, 1 or more]</param>
public sealed record BallastPosition(string? Ballast, int LampsDriven);

/// <summary>A switching step: which ballasts are energised.</summary>
/// <param name="Name">Name of the step, such as "one of three lamps".</param>
/// <param name="BallastIndexes">Positions in <see cref="SetUp.Ballasts"/> that are energised. [0-based]</param>
/// <param name="TestedPower">Input power in this step, when tested; null to compute from the parts.</param>
public sealed record LitStep(string Name, IReadOnlyList<int> BallastIndexes, Power? TestedPower = null);
