using System.Text.Json;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Files.Spectra;

namespace RetrofitCalc.Engine.Tests.Reference;

internal static class Figures_of_a_spectrum
{
    [CanopyAnswer("lux↔PPFD (spectral)", "spd_lux_per_umol")]
    private static Answers Lux(JsonElement i) => Of(i).Lux!.LuxPerMicromole;

    [CanopyAnswer("luminous efficacy of radiation", "spd_LER")]
    private static Answers LuminousEfficacy(JsonElement i) => Of(i).LuminousEfficacy!.Value;

    [CanopyAnswer("photon conversion", "mono_lux_per_umol")]
    private static Answers OneWavelength(JsonElement i)
    {
        var nm = i.Number("wavelength_nm");
        var line = new SpectralCurve([SpectralSample.Of(nm - 0.5, 0), SpectralSample.Of(nm, 1), SpectralSample.Of(nm + 0.5, 0)]);
        var wide = new SpectralCurve([SpectralSample.Of(380, 0), .. line.Samples, SpectralSample.Of(780, 0)]);
        return SpectrumFigures.Of(new("One line", wide, SpectralScale.Relative, Provenance.None), ShippedSpectra.Tables).Lux!.LuxPerMicromole;
    }

    [CanopyAnswer("photon efficacy", "lumens_to_ppf")]
    private static Answers PhotonsOfLumens(JsonElement i) =>
        Of(i).Lux!.ToPhotonFlux(LuminousFlux.FromLumens(i.Number("lumens"))).MicromolesPerSecond;

    [CanopyAnswer("photon fractions", "band_fractions")]
    private static Answers Fractions(JsonElement i) =>
        Of(i).Fractions is { } shares ? new() { ["B"] = shares.Blue, ["G"] = shares.Green, ["R"] = shares.Red } : [];

    [CanopyAnswer("photon fractions", "fr_750_ratio")]
    private static Answers FarRed(JsonElement i) => Of(i).FarRedOverPar!.Value;

    [CanopyAnswer("red:far-red", "rfr_10nm")]
    private static Answers TenNanometres(JsonElement i) => Ratio(i, "Smith, 10 nm");

    [CanopyAnswer("red:far-red", "rfr_20nm")]
    private static Answers TwentyNanometres(JsonElement i) => Ratio(i, "Smith, 20 nm");

    [CanopyAnswer("colour", "spd_xy_cct")]
    private static Answers Colour(JsonElement i)
    {
        var colour = Of(i).Colour!;
        return new()
        {
            ["x"] = colour.Chromaticity.X,
            ["y"] = colour.Chromaticity.Y,
            ["cct_K"] = colour.Temperature!.Kelvins,
            ["duv"] = colour.Temperature.DistanceFromLocus,
        };
    }

    [CanopyAnswer("colour", "spd_Ra")]
    private static Answers Rendering(JsonElement i) =>
        Of(i).Colour!.Rendering is { } rendering ? new() { ["Ra"] = rendering.General, ["R9"] = rendering.Special[8] } : [];

    [CanopyAnswer("colour", "cri_delta_C")]
    private static Answers Difference(JsonElement i)
    {
        var rendering = Of(i).Colour!.Rendering!;
        Assert.Equal(ColourRendering.Tolerance, i.Number("limit"));
        return new() { ["dC"] = rendering.ChromaticityDifference, ["within"] = rendering.WithinTolerance ? 1 : 0 };
    }

    private static double Ratio(JsonElement i, string bands)
    {
        var ratio = Of(i).RedFarRed.Single(r => r.Bands.Name == bands);
        Assert.Equal(Band(i, "red_nm"), ratio.Bands.Red);
        Assert.Equal(Band(i, "farred_nm"), ratio.Bands.FarRed);
        return ratio.Value!.Value;
    }

    private static SpectralBand Band(JsonElement i, string name) => SpectralBand.OfNanometres(i.Numbers(name)[0], i.Numbers(name)[1]);

    private static SpectrumFigures Of(JsonElement i) =>
        SpectrumFigures.Of(ShippedSpectra.Find(i.GetProperty("illuminant").GetString()!)!, ShippedSpectra.Tables);
}
