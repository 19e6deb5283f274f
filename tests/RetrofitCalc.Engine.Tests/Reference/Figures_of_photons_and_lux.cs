using System.Text.Json;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;

namespace RetrofitCalc.Engine.Tests.Reference;

internal static class Figures_of_photons_and_lux
{
    [CanopyAnswer("photon conversion", "const_hcNA")]
    private static Answers Constant(JsonElement i) => PhotonEnergy.WattNanometresPerMicromole;

    [CanopyAnswer("photon conversion", "umol_per_J_mono")]
    private static Answers PhotonsOfAJoule(JsonElement i) => PhotonEnergy.MicromolesPerJoule(At(i));

    [CanopyAnswer("photon conversion", "W_to_umol")]
    private static Answers PhotonsOfWatts(JsonElement i) => i.Number("watts_optical") * PhotonEnergy.MicromolesPerJoule(At(i));

    [CanopyAnswer("lux↔PPFD", "ppfd_to_lux")]
    private static Answers ToLux(JsonElement i) =>
        Named(i).ToIlluminance(PhotonFluxDensity.FromMicromolesPerSquareMetre(i.Number("ppfd"))).Lux;

    [CanopyAnswer("lux↔PPFD", "lux_to_ppfd_factor")]
    private static Answers ToPhotons(JsonElement i) => Named(i).ToPhotonFluxDensity(Illuminance.FromLux(1)).MicromolesPerSquareMetre;

    [CanopyAnswer("lux↔PPFD", "fc_per_umol")]
    private static Answers FootCandles(JsonElement i) => Named(i).FootCandlesPerMicromole;

    [CanopyAnswer("photon efficacy", "kWh_per_mol")]
    private static Answers EnergyOfAMole(JsonElement i) =>
        PhotonEfficacy.FromMicromolesPerJoule(i.Number("umol_per_J")).EnergyPerMole.KilowattHours;

    [CanopyAnswer("photon efficacy", "efficacy")]
    private static Answers Efficacy(JsonElement i) =>
        PhotonEfficacy.Of(PhotonFlux.FromMicromolesPerSecond(i.Number("ppf")), Power.FromWatts(i.Number("watts"))).MicromolesPerJoule;

    /// <summary>Both studies give far red and the total it is part of.</summary>
    [CanopyAnswer("far-red", "ratio")]
    private static Answers FarRedShare(JsonElement i) => new ExtendedPar(Photons(i.Number("b") - i.Number("a")), Photons(i.Number("a"))).FarRedShare;

    [CanopyAnswer("far-red", "epar")]
    private static Answers Extended(JsonElement i)
    {
        var extended = new ExtendedPar(Photons(i.Number("ppfd")), Photons(i.Number("fr_700_750")));
        return new() { ["epfd"] = extended.Total.MicromolesPerSquareMetre, ["fr_fraction"] = extended.FarRedShare };
    }

    private static readonly Dictionary<string, string> Families = new()
    {
        ["sunlight"] = "Sunlight",
        ["cool white fluorescent"] = "Cool white fluorescent",
        ["HPS mogul"] = "High-pressure sodium, mogul base",
        ["metal halide"] = "Metal halide",
    };

    /// <summary>The shipped factor of the family, which must be the one the check quotes.</summary>
    private static LuxFactor Named(JsonElement i)
    {
        var factor = NamedLuxFactors.All.Single(named => named.Name == Families[i.GetProperty("source").GetString()!]).Factor;
        Assert.Equal(i.Number("lux_per_umol"), factor.LuxPerMicromole);
        return factor;
    }

    private static PhotonFluxDensity Photons(double micromoles) => PhotonFluxDensity.FromMicromolesPerSquareMetre(micromoles);

    private static Wavelength At(JsonElement i) => Wavelength.FromNanometres(i.Number("wavelength_nm"));
}
