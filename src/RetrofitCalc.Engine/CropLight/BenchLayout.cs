using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Engine.Studies;
using static System.Math;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>What is fitted in each luminaire of a survey line, as far as light goes.</summary>
/// <param name="Count">Lamps in the luminaire; they lie side by side. [count, 0 or more]</param>
/// <param name="Length">Lit length of a lamp. [m]</param>
/// <param name="PerTube">Photons of one lamp as it is now: ballast, wear and dirt are in it. [µmol/s]</param>
/// <param name="Emission">How a lamp sends out its light; not used with a distribution.</param>
/// <param name="LitLamps">Positions of the lamps that are lit [0-based, by their order across]; null for all.</param>
public sealed record FittedSource(int Count, Length Length, PhotonFlux PerTube, TubeEmission Emission, IReadOnlyList<int>? LitLamps = null)
{
    /// <summary>Lit lamps in each named step; a step that is not there lights what <see cref="LitLamps"/> says.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<int>> Steps { get; init; } = new Dictionary<string, IReadOnlyList<int>>();

    /// <summary>How the whole luminaire sends out its light, where a file tells; null for lamp by lamp.</summary>
    public LuminousIntensityDistribution? Distribution { get; init; }

    /// <summary>Lux of its light. With a distribution its lumens then become the photons, and <see cref="PerTube"/> is not used; null when not known.</summary>
    public LuxFactor? Factor { get; init; }

    /// <summary>Share of its output left by dimming or wear, beyond what <see cref="PerTube"/> says. [unitless, 0 or more]</summary>
    public double Share { get; init; } = 1;

    /// <summary>Positions lit in a step, each once. [0-based]</summary>
    /// <param name="step">Name of the step; null for all lamps.</param>
    public IReadOnlyList<int> Lit(string? step)
    {
        var lit = step is not null && Steps.TryGetValue(step, out var named) ? named : LitLamps;
        return lit is null ? [.. Enumerable.Range(0, Require.Count(Count))] : [.. lit.Where(lamp => lamp >= 0 && lamp < Count).Distinct().Order()];
    }

    /// <summary>Lit lamps of each step of a set-up, taking its ballasts to feed neighbouring lamps in their order.</summary>
    /// <param name="setUp">The luminaire body.</param>
    /// <remarks>Which lamps a ballast feeds is not on record; the order is an assumption, no source.</remarks>
    public static IReadOnlyDictionary<string, IReadOnlyList<int>> StepsOf(SetUp setUp)
    {
        int[] first = [.. setUp.Ballasts.Select((_, index) => setUp.Ballasts.Take(index).Sum(ballast => ballast.LampsDriven))];
        return setUp.Steps.DistinctBy(step => step.Name).ToDictionary(step => step.Name, IReadOnlyList<int> (step) =>
            [.. step.BallastIndexes.Where(ballast => ballast >= 0 && ballast < first.Length)
                .SelectMany(ballast => Enumerable.Range(first[ballast], setUp.Ballasts[ballast].LampsDriven))]);
    }
}

/// <summary>What is fitted, by survey line. Luminaires of other lines give no light: they are taken down, or nobody knows their output.</summary>
/// <param name="ByLine">By id of the line.</param>
public sealed record LayoutFittings(IReadOnlyDictionary<string, FittedSource> ByLine);

/// <summary>The lamps over a bench.</summary>
public static class BenchLayout
{
    /// <summary>A source for each lit lamp, or for each luminaire with a distribution that is lit (E-61).</summary>
    /// <param name="light">The bench and where luminaires hang.</param>
    /// <param name="fittings">What is in them.</param>
    /// <param name="height">Of the lowest lamps over the crop. [m, above 0]</param>
    /// <param name="step">Name of the lit step; null for all lamps.</param>
    /// <remarks>Lamps lie side by side across the luminaire's axis, <see cref="LuminairePlace.LampSpacing"/> apart; each is turned about its own axis.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A height of zero, or a lamp without length.</exception>
    public static IReadOnlyList<LightSource> Sources(AreaLight light, LayoutFittings fittings, Length height, string? step) =>
        [.. light.Layout.SelectMany(place => fittings.ByLine.TryGetValue(place.Line, out var fitted) ? In(place, fitted, height, step) : [])];

    private static IEnumerable<LightSource> In(LuminairePlace place, FittedSource fitted, Length height, string? step)
    {
        var lit = fitted.Lit(step);
        if (lit.Count == 0) return [];
        var level = height + Length.FromMetres(place.HigherBy);
        return fitted.Distribution is { } distribution
            ? [new(Placed(place, fitted, (WholeOutput(fitted, distribution, lit.Count), level), 0), distribution, fitted.Factor)]
            : lit.Select(lamp => new LightSource(
                Placed(place, fitted, (fitted.PerTube * fitted.Share, level), (lamp - (fitted.Count - 1) / 2.0) * place.LampSpacing.Metres), null, fitted.Factor));
    }

    private static PlacedTube Placed(LuminairePlace place, FittedSource fitted, (PhotonFlux Output, Length Height) lamp, double across)
    {
        var (sine, cosine) = SinCos(place.AxisDegrees * PI / 180);
        return new(fitted.Emission, fitted.Length, lamp.Output, lamp.Height)
        {
            Centre = new(place.Centre.X - across * sine, place.Centre.Y + across * cosine),
            AxisDegrees = place.AxisDegrees,
            TiltDegrees = place.TiltDegrees,
        };
    }

    private static PhotonFlux WholeOutput(FittedSource fitted, LuminousIntensityDistribution distribution, int lit) => fitted.Factor is { } factor
        ? factor.ToPhotonFlux(distribution.TotalFlux) * (fitted.Share * lit / fitted.Count)
        : fitted.PerTube * (lit * fitted.Share * (distribution.Efficiency ?? 1));
}
