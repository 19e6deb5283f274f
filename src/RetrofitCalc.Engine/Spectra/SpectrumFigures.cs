using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Spectra;

/// <summary>Everything a spectrum tells. The front door of this folder.</summary>
/// <remarks>A figure whose wavelengths the samples do not reach over is null, never a guess; a remark says so.</remarks>
public sealed record SpectrumFigures
{
    private SpectrumFigures()
    {
    }

    /// <summary>The spectrum itself.</summary>
    public required SpectralDistribution Spectrum { get; init; }

    /// <summary>Blue, green and red among the photons of 400–700 nm.</summary>
    public required PhotonFractions? Fractions { get; init; }

    /// <summary>Photons of 700–750 nm over photons of 400–700 nm (E-43). [unitless]</summary>
    public required double? FarRedOverPar { get; init; }

    /// <summary>Far-red fraction: photons of 700–750 nm over those of 600–750 nm (E-43). [unitless, 0–1]</summary>
    /// <remarks>FR / (R + FR) after Kusuma and Bugbee (2021), whose exact bands were not seen: ours are the red and far red of this folder.</remarks>
    public required double? FarRedFraction { get; init; }

    /// <summary>Red to far red for each usual choice of bands.</summary>
    public required IReadOnlyList<RedFarRedRatio> RedFarRed { get; init; }

    /// <summary>Photons in a joule of radiation, both of 400–700 nm (E-41). [µmol/J]</summary>
    public required double? PhotonsPerJoule { get; init; }

    /// <summary>Lux per µmol m⁻² s⁻¹ (E-42).</summary>
    public required LuxFactor? Lux { get; init; }

    /// <summary>Luminous efficacy of radiation: lumens per watt of radiation of 380–780 nm (E-42). [lm/W]</summary>
    public required double? LuminousEfficacy { get; init; }

    /// <summary>How the light looks to people.</summary>
    public required ColourFigures? Colour { get; init; }

    /// <summary>Photons of 400–700 nm; null when only the shape is known. [µmol/s]</summary>
    public required PhotonFlux? Photons { get; init; }

    /// <summary>Light; null when only the shape is known. [lm]</summary>
    public required LuminousFlux? Light { get; init; }

    /// <summary>What to know before relying on the figures.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>Reads all figures off a spectrum.</summary>
    /// <param name="spectrum">The spectrum.</param>
    /// <param name="tables">Published tables of eye and colour.</param>
    public static SpectrumFigures Of(SpectralDistribution spectrum, ColorimetricTables tables)
    {
        var par = spectrum.Curve.Covers(PlantBands.Par) ? Positive(spectrum.Photons(PlantBands.Par)) : null;
        var light = par is null ? null : Positive(spectrum.Light(tables));
        var farRed = par is not null && spectrum.Curve.Covers(PlantBands.FarRed) ? (double?)spectrum.Photons(PlantBands.FarRed) : null;
        var isAmount = spectrum.Scale == SpectralScale.RadiantPower;
        var figures = new SpectrumFigures
        {
            Spectrum = spectrum,
            Fractions = PhotonFractions.Of(spectrum),
            FarRedOverPar = farRed / par,
            FarRedFraction = Positive(farRed + spectrum.Photons(PlantBands.Red)) is { } sum ? farRed / sum : null,
            RedFarRed = [.. RedFarRedBands.All.Select(bands => RedFarRedRatio.Of(spectrum, bands))],
            PhotonsPerJoule = par / spectrum.Radiation(PlantBands.Par),
            Lux = light is { } lumens ? new(lumens / par!.Value) : null,
            LuminousEfficacy = spectrum.Curve.Covers(PlantBands.Visible) ? light / spectrum.Radiation(PlantBands.Visible) : null,
            Colour = light is null ? null : ColourFigures.Of(spectrum.Curve, tables),
            Photons = isAmount && par is { } micromoles ? PhotonFlux.FromMicromolesPerSecond(micromoles) : null,
            Light = isAmount && light is { } amount ? LuminousFlux.FromLumens(amount) : null,
            Remarks = [],
        };
        return figures with { Remarks = [.. SpectrumRemarks.Of(figures)] };
    }

    /// <summary>Photon efficacy of the lamp or luminaire (E-44); null when only the shape is known. [µmol/J]</summary>
    /// <param name="input">Power drawn from the supply; more than zero. [W]</param>
    /// <exception cref="ArgumentOutOfRangeException">The power is zero or less.</exception>
    public PhotonEfficacy? EfficacyAt(Power input) => Photons is { } photons ? PhotonEfficacy.Of(photons, input) : null;

    /// <summary>The far red that comes with so much PAR of this spectrum, as context; null where its far red is not known.</summary>
    /// <param name="par">Photons of 400–700 nm. [µmol m⁻² s⁻¹]</param>
    public ExtendedPar? WithFarRed(PhotonFluxDensity par) => FarRedOverPar is { } share ? new(par, par * share) : null;

    private static double? Positive(double? value) => value > 0 ? value : null;
}
