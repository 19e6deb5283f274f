using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Luminous intensity of a luminaire by direction, with all multipliers of its source already in it.</summary>
/// <remarks>Between the angles intensities follow straight lines in both angles; beyond the vertical angles given there is no light (E-56).</remarks>
public sealed partial class LuminousIntensityDistribution
{
    private readonly AngleAxis _vertical;
    private readonly AngleAxis _horizontal;
    private readonly double[][] _candelas;

    /// <summary>Takes a table of intensities.</summary>
    /// <param name="type">How the angles lie.</param>
    /// <param name="verticalDegrees">Vertical angles, rising. [degrees; type C 0–180, A and B −90–90]</param>
    /// <param name="horizontalDegrees">Horizontal angles, rising. [degrees; type C 0–360, A and B −90–90]</param>
    /// <param name="candelas">A row for each horizontal angle, with a value for each vertical one. [cd, 0 or more]</param>
    /// <exception cref="ArgumentException">Angles that do not rise, fewer than two, or a table of another size.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An angle outside, or an intensity below zero.</exception>
    public LuminousIntensityDistribution(
        PhotometricType type, IReadOnlyList<double> verticalDegrees, IReadOnlyList<double> horizontalDegrees, IReadOnlyList<IReadOnlyList<double>> candelas)
    {
        Type = type;
        _vertical = new(verticalDegrees, type == PhotometricType.C ? (0, 180) : (-90, 90), nameof(verticalDegrees));
        _horizontal = new(horizontalDegrees, type == PhotometricType.C ? (0, 360) : (-90, 90), nameof(horizontalDegrees));
        if (verticalDegrees.Count < 2 || (type != PhotometricType.C && horizontalDegrees.Count < 2))
            throw new ArgumentException("Must hold two vertical angles, and two horizontal ones for types A and B.", nameof(verticalDegrees));
        if (candelas.Count != horizontalDegrees.Count || candelas.Any(row => row.Count != verticalDegrees.Count))
            throw new ArgumentException($"Must be {horizontalDegrees.Count} rows of {verticalDegrees.Count} values.", nameof(candelas));
        _candelas = [.. candelas.Select(row => row.Select(value => Require.NotNegative(value, nameof(candelas))).ToArray())];
    }

    /// <summary>How the angles lie.</summary>
    public PhotometricType Type { get; }

    /// <summary>Vertical angles, rising. [degrees]</summary>
    public IReadOnlyList<double> VerticalDegrees => _vertical.Degrees;

    /// <summary>Horizontal angles, rising. [degrees]</summary>
    public IReadOnlyList<double> HorizontalDegrees => _horizontal.Degrees;

    /// <summary>A row for each horizontal angle, a value for each vertical one. [cd]</summary>
    public IReadOnlyList<IReadOnlyList<double>> Candelas => _candelas;

    /// <summary>What the horizontal angles leave out because it repeats.</summary>
    public DistributionSymmetry Symmetry => Type == PhotometricType.C ? OfPlanes() : OfHalves();

    /// <summary>The luminous part.</summary>
    public LuminousOpening Opening { get; init; }

    /// <summary>Power drawn when measured; null where the source gives none. [W]</summary>
    public Power? InputPower { get; init; }

    /// <summary>Number of lamps. [count]</summary>
    public int LampCount { get; init; } = 1;

    /// <summary>Rated flux of each lamp; null for absolute photometry, which knows no lamp apart from its luminaire. [lm]</summary>
    public LuminousFlux? LampFlux { get; init; }

    /// <summary>Flux of the luminaire by that of its lamps; null for absolute photometry. [unitless]</summary>
    public double? Efficiency => LampFlux is { Lumens: > 0 } lamp && LampCount > 0 ? TotalFlux / (lamp * LampCount) : null;

    /// <summary>Lumens of light for a watt of electricity; null where power is not known. [lm/W]</summary>
    public double? LumensPerWatt => InputPower is { Watts: > 0 } power ? TotalFlux.Lumens / power.Watts : null;

    private DistributionSymmetry OfPlanes() => (_horizontal.First, _horizontal.Last) switch
    {
        _ when _horizontal.Degrees.Count == 1 => DistributionSymmetry.Axial,
        (0, 90) => DistributionSymmetry.Quadrant,
        (0, 180) => DistributionSymmetry.Bilateral,
        (90, 270) => DistributionSymmetry.BilateralAcross,
        _ => DistributionSymmetry.None,
    };

    private DistributionSymmetry OfHalves() => (_horizontal.First >= 0, _vertical.First >= 0) switch
    {
        (true, true) => DistributionSymmetry.Quadrant,
        (true, false) => DistributionSymmetry.Bilateral,
        (false, true) => DistributionSymmetry.BilateralAcross,
        _ => DistributionSymmetry.None,
    };
}
