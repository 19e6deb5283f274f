using System.Globalization;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Spectra;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Web.Features.Light.Spectra;

/// <summary>Lamps of one spectrum in a mixture, as typed.</summary>
public sealed class MixturePartDraft
{
    public string Spectrum { get; set; } = "";

    public string Count { get; set; } = "1";

    public string Output { get; set; } = "";

    public bool InLumens { get; set; }

    /// <summary>The lamps with their output; a problem says what to type instead.</summary>
    public Parsed<MixturePart> Read(IReadOnlyList<UsableSpectrum> spectra, CultureInfo culture)
    {
        if (spectra.FirstOrDefault(usable => usable.Id == Spectrum)?.Spectrum is not { } shape) return Parsed.Bad<MixturePart>("Choose a spectrum.");
        var (count, output) = (NumberText.Parse(Count, culture), NumberText.Parse(Output, culture));
        if (!count.Ok || count.Value is not > 0) return Parsed.Bad<MixturePart>($"{shape.Name}: type how many burn, 1 or more; part of one where it is dimmed.");
        if (!output.Ok || output.Value is not > 0) return Parsed.Bad<MixturePart>($"{shape.Name}: type the output of one lamp, more than 0.");
        if (!shape.Curve.Covers(PlantBands.Par)) return Parsed.Bad<MixturePart>($"{shape.Name}: its samples do not reach over 400–700 nm, so its output cannot be weighed.");
        var lamp = InLumens
            ? LampSpectrum.WithLight(shape, LuminousFlux.FromLumens(output.Value.Value), ShippedSpectra.Tables)
            : LampSpectrum.WithPhotons(shape, PhotonFlux.FromMicromolesPerSecond(output.Value.Value));
        return Parsed.Good(new MixturePart(lamp, count.Value.Value));
    }
}
