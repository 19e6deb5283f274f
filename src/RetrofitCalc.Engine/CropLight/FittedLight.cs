using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>A model of the light over a bench that was fitted to readings (E-62).</summary>
public sealed record FittedLight
{
    private const double Below = 0.5, Beyond = 1.5;
    private const double NineteenInTwenty = 1.96; // of a normal spread

    private readonly NonNegativeFit _fit;

    internal FittedLight(NonNegativeFit fit, TubeEmission emission, (Length, Length) heights) => (_fit, Emission, Heights) = (fit, emission, heights);

    /// <summary>Share of the rated output seen as strips that face down. [unitless, 0 or more]</summary>
    public double Strip => _fit.Shares[LightShapes.Strip];

    /// <summary>Share seen as bare tubes. [unitless, 0 or more]</summary>
    public double Tube => _fit.Shares[LightShapes.Tube];

    /// <summary>Share of what the photometric files say, for luminaires that have one. [unitless, 0 or more]</summary>
    public double File => _fit.Shares[LightShapes.File];

    /// <summary>Even light for each µmol/s of all lit lamps together, from surfaces nobody described. [µmol m⁻² s⁻¹ per µmol/s]</summary>
    public PhotonFluxDensity Constant => PhotonFluxDensity.FromMicromolesPerSquareMetre(_fit.Shares[LightShapes.Constant]);

    /// <summary>How most of the lamps send out their light by themselves.</summary>
    public TubeEmission Emission { get; }

    /// <summary>(Model − read) / read for each reading, set by set, those left out of the fit too. [unitless]</summary>
    public required IReadOnlyList<double> Residuals { get; init; }

    /// <summary>Positions among the residuals of readings left out of the fit: they do not fit those around them, and nobody has confirmed them. [0-based]</summary>
    public IReadOnlyList<int> LeftOut { get; init; } = [];

    /// <summary>Of the residuals of readings that were fitted. [unitless]</summary>
    public double RootMeanSquare => Math.Sqrt(Residuals.Index().Where(each => !LeftOut.Contains(each.Index)).Average(each => each.Item * each.Item));

    /// <summary>Heights of the lamps over the sensor, lowest and highest.</summary>
    public (Length Low, Length High) Heights { get; }

    /// <summary>How far the readings may be off together, either way; it moves all shares alike. [unitless]</summary>
    public required double Uncertainty { get; init; }

    /// <summary>Whether all readings were taken at one height, so that the shape of the light is an assumption.</summary>
    public required bool OneHeight { get; init; }

    /// <summary>What the readings settle and what they leave open, in plain words.</summary>
    public string Determined => this switch
    {
        { OneHeight: true, File: 0 } => "Readings at one height cannot tell light sent straight down from light sent all around: the shape that fits better was taken. Other heights are less sure.",
        { OneHeight: true } => "Readings at one height scale the photometric file; they do not prove its shape.",
        _ => "Readings at different heights settle the shape of the light as well as its amount.",
    } + (LeftOut.Count == 0 ? "" : $" {LeftOutWords}.");

    /// <summary>How many readings were left out, in plain words; empty for none.</summary>
    internal string LeftOutWords => LeftOut.Count switch
    {
        0 => "",
        1 => "One reading does not fit those around it and is left out of the model",
        _ => $"{LeftOut.Count} readings do not fit those around them and are left out of the model",
    };

    /// <summary>
    /// A question where more light was found than lamps are rated for, beyond what the readings may be off; null where not. A lamp cannot be seen as more
    /// than itself, nor more be sent down than it sends out in all: max(tube, strip + tube/2), or the share of the files, above 1 (E-62).
    /// </summary>
    public string? TooMuch => Math.Max(Math.Max(Tube, Strip + Tube / 2), File) is var found && found > 1 + Uncertainty
        ? FormattableString.Invariant($"The readings find {found * 100:0} % of the light the lamps are rated for: is their output, the ballast factor, the height or the unit wrong, or does other light reach the sensor?")
        : null;

    /// <summary>Share of the rated output that the readings find below these luminaires; where only files were fitted, share of what those say. [unitless]</summary>
    public double Installation => Strip + Tube > 0 ? Strip + Tube : File;

    /// <summary>The model for luminaires that bring their own bodies: all of their rated light leaves them, by their own shape, into the same surroundings.</summary>
    internal FittedLight InNewBodies() => this with { IsAsRated = true };

    private bool IsAsRated { get; init; }

    internal ReflectingCavity? Box { get; init; }

    /// <summary>Whether the model may be used at a height: from half of the lowest measured one to one and a half of the highest.</summary>
    /// <param name="height">Of the lowest lamps over the crop.</param>
    public bool Reaches(Length height) => height.Metres >= Heights.Low.Metres * Below - 1e-9 && height.Metres <= Heights.High.Metres * Beyond + 1e-9;

    /// <summary>Light at points, in their order. [µmol m⁻² s⁻¹]</summary>
    /// <param name="sources">Lamps lit, at their own heights.</param>
    /// <param name="height">Of the lowest lamps over the crop; must lie within reach.</param>
    /// <param name="points">Places on the level of the crop.</param>
    /// <remarks>Lamps that send out their light otherwise than those the model was fitted to get the shares of <see cref="SharesOf"/>.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The height lies beyond half of the measured ones.</exception>
    public IReadOnlyList<PhotonFluxDensity> Over(IReadOnlyList<LightSource> sources, Length height, IReadOnlyList<PlanePoint> points)
    {
        var groups = Grouped(sources, height, points, onlyUsed: true);
        return [.. points.Select((_, at) => PhotonFluxDensity.FromMicromolesPerSquareMetre(groups.Sum(group => group.Shapes.At(at, group.Shares))))];
    }

    /// <summary>
    /// How far the mean of the light at points may be off by what the readings leave open in the shares, either way, 19 times in 20, not counting
    /// <see cref="Uncertainty"/>; null with no more readings than shares, or in the dark. [unitless]
    /// </summary>
    /// <param name="sources">Lamps lit.</param>
    /// <param name="height">Of the lowest lamps over the crop; must lie within reach.</param>
    /// <param name="points">Places on the level of the crop.</param>
    /// <exception cref="ArgumentOutOfRangeException">The height lies beyond half of the measured ones.</exception>
    public double? ErrorOfMean(IReadOnlyList<LightSource> sources, Length height, IReadOnlyList<PlanePoint> points)
    {
        if (_fit.Covariance is not { } covariance) return null;
        var groups = Grouped(sources, height, points);
        var mean = points.Select((_, at) => groups.Sum(group => group.Shapes.At(at, group.Shares))).Average();
        if (!(mean > 0)) return null;
        var slopes = MathNet.Numerics.LinearAlgebra.Vector<double>.Build.Dense(
            [.. _fit.Used.Select(shape => groups.Sum(group => group.Shapes.Mean(shape)))]);
        return NineteenInTwenty * Math.Sqrt(Math.Max(0, slopes.DotProduct(covariance * slopes))) / mean;
    }

    /// <summary>Shares for lamps of an emission in these luminaires.</summary>
    /// <param name="emission">Bare, or facing down.</param>
    /// <remarks>
    /// The same emission keeps the fitted shares. Strips in place of bare tubes: what was seen of the tube itself is now all sent down, or what left
    /// the luminaire downwards, whichever is more: max(tube, strip + tube/2). Bare tubes in place of strips: all of it seen bare, no reflector known.
    /// Where only luminaires with a file were fitted, their share stands for the lamps' own shape. Assumptions of this model, no source (E-62).
    /// </remarks>
    public (double Strip, double Tube) SharesOf(TubeEmission emission) => (Strip + Tube > 0, emission == Emission, emission) switch
    {
        (false, _, TubeEmission.DownFacingStrip) => (File, 0),
        (false, _, _) => (0, File),
        (true, true, _) => (Strip, Tube),
        (true, false, TubeEmission.DownFacingStrip) => (Math.Max(Tube, Strip + Tube / 2), 0),
        _ => (0, Strip + Tube),
    };

    private List<(LightShapes Shapes, double[] Shares)> Grouped(IReadOnlyList<LightSource> sources, Length height, IReadOnlyList<PlanePoint> points, bool onlyUsed = false)
    {
        if (!Reaches(height))
            throw new ArgumentOutOfRangeException(nameof(height), height.Metres, FormattableString.Invariant(
                $"Must be {Heights.Low.Metres * Below:0.###} to {Heights.High.Metres * Beyond:0.###} m: the readings do not reach further."));
        return [.. sources.GroupBy(source => source.Distribution is null ? source.Tube.Emission : (TubeEmission?)null)
            .Select(group => (Sources: group.ToList(), Shares: SharesFor(group.Key)))
            .Select(group => (LightShapes.Of(group.Sources, points, Box, onlyUsed ? group.Shares : null), group.Shares))];
    }

    /// <summary>A luminaire with a file where none was fitted is taken to do what its file says.</summary>
    private double[] SharesFor(TubeEmission? emission)
    {
        if (IsAsRated)
            return [emission == TubeEmission.DownFacingStrip ? 1 : 0, emission == TubeEmission.BareTube ? 1 : 0, 1, _fit.Shares[LightShapes.Constant] / Installation];
        var (strip, tube) = emission is { } known ? SharesOf(known) : (0, 0);
        return [strip, tube, File > 0 ? File : 1, _fit.Shares[LightShapes.Constant]];
    }
}
