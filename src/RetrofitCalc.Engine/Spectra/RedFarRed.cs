namespace RetrofitCalc.Engine.Spectra;

/// <summary>Which bands a red to far-red ratio compares: always printed beside the ratio, since the same lamp differs severalfold between them.</summary>
/// <param name="Name">What the trade calls it.</param>
/// <param name="Red">Band of red. [nm]</param>
/// <param name="FarRed">Band of far red. [nm]</param>
public sealed record RedFarRedBands(string Name, SpectralBand Red, SpectralBand FarRed)
{
    /// <summary>The usual choices (S-53: a band list of a photobiology package's manual, read; it names Smith 1981/82, Sellaro 2010, Murakami 1997).</summary>
    public static IReadOnlyList<RedFarRedBands> All { get; } =
    [
        Of("Smith, 10 nm", (655, 665), (725, 735)),
        Of("Smith, 20 nm", (650, 670), (720, 740)),
        Of("Sellaro", (620, 680), (700, 750)),
        Of("Inada", (600, 700), (700, 800)),
        Of("Warrington", (625, 675), (700, 850)),
    ];

    private static RedFarRedBands Of(string name, (double From, double To) red, (double From, double To) farRed) =>
        new(name, SpectralBand.OfNanometres(red.From, red.To), SpectralBand.OfNanometres(farRed.From, farRed.To));
}

/// <summary>How far a red to far-red ratio can be trusted.</summary>
public enum RatioTrust
{
    /// <summary>It can be printed.</summary>
    Stable,
    /// <summary>So little far red that stray light in the instrument decides the ratio: print "very high" and the far-red fraction.</summary>
    TooLittleFarRed,
    /// <summary>Samples lie too far apart for bands so narrow.</summary>
    TooCoarse,
    /// <summary>The samples end before the bands do: no ratio.</summary>
    NotCovered,
}

/// <summary>Photons of red over photons of far red (E-43).</summary>
/// <param name="Bands">Which bands.</param>
/// <param name="Value">The ratio; null where the bands are not covered or there is no far red at all. [unitless]</param>
/// <param name="Trust">How far it can be trusted.</param>
public sealed record RedFarRedRatio(RedFarRedBands Bands, double? Value, RatioTrust Trust)
{
    /// <summary>
    /// Far red per nanometre below this share of the mean of 400–700 nm is too little: stray light of half a percent of that mean
    /// would then move the ratio by a tenth. Common practice, no source. [unitless]
    /// </summary>
    public const double LeastFarRed = 0.05;

    private const double LeastStepsPerBand = 2;

    internal static RedFarRedRatio Of(SpectralDistribution spectrum, RedFarRedBands bands)
    {
        if (!spectrum.Curve.Covers(bands.Red) || !spectrum.Curve.Covers(bands.FarRed))
            return new(bands, null, RatioTrust.NotCovered);
        var farRed = spectrum.Photons(bands.FarRed);
        return new(bands, farRed > 0 ? spectrum.Photons(bands.Red) / farRed : null, TrustIn(spectrum, bands, farRed));
    }

    private static RatioTrust TrustIn(SpectralDistribution spectrum, RedFarRedBands bands, double farRed)
    {
        var mean = spectrum.Photons(PlantBands.Par) / PlantBands.Par.WidthNanometres;
        if (farRed / bands.FarRed.WidthNanometres < LeastFarRed * mean)
            return RatioTrust.TooLittleFarRed;
        return IsTooCoarse(spectrum, bands.Red) || IsTooCoarse(spectrum, bands.FarRed) ? RatioTrust.TooCoarse : RatioTrust.Stable;
    }

    private static bool IsTooCoarse(SpectralDistribution spectrum, SpectralBand band) =>
        spectrum.Curve.WidestStep(band) * LeastStepsPerBand > band.WidthNanometres + 1e-9;
}
