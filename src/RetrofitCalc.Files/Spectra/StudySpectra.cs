using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;

namespace RetrofitCalc.Files.Spectra;

/// <summary>A spectrum a study can use: one of its own, or a shipped one.</summary>
/// <param name="Id">What the study names it by.</param>
/// <param name="Group">What kind it is, for lists to choose from.</param>
/// <param name="Own">Taken into the study itself.</param>
public sealed record UsableSpectrum(string Id, string Group, SpectralDistribution Spectrum, bool Own);

/// <summary>The spectra of a study, its own first.</summary>
public static class StudySpectra
{
    public const string OwnGroup = "This study’s own";

    public static IReadOnlyList<UsableSpectrum> All(Study study) =>
    [
        .. from own in study.Spectra let spectrum = Usable(own) where spectrum is not null select new UsableSpectrum(own.Id, OwnGroup, spectrum, true),
        .. ShippedSpectra.All.Select(shipped => new UsableSpectrum(shipped.Spectrum.Name, shipped.Group, shipped.Spectrum, false)),
    ];

    /// <summary>A spectrum by its id; null when the study names none, one that is gone, or one that is none.</summary>
    public static SpectralDistribution? Find(Study study, string? id) =>
        id is null ? null : study.Spectra.FirstOrDefault(own => own.Id == id) is { } found ? Usable(found) : ShippedSpectra.Find(id);

    public static SpectralDistribution Of(StudySpectrum own) =>
        new(own.Name, new(own.Nanometres.Zip(own.Values, SpectralSample.Of)), own.Scale, own.Source);

    /// <summary>Null for one a study file brought along that is no spectrum; the study's problems say why.</summary>
    private static SpectralDistribution? Usable(StudySpectrum own)
    {
        try
        {
            return Of(own);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    /// <summary>The study with a spectrum more, under an id nobody uses yet.</summary>
    public static Study Add(Study study, SpectralDistribution spectrum, string name)
    {
        var id = new NewIds("spectrum", study.Spectra.Select(own => own.Id)).Next();
        return study with
        {
            Spectra =
            [
                .. study.Spectra,
                new(id, name, spectrum.Provenance)
                {
                    Scale = spectrum.Scale,
                    Nanometres = [.. spectrum.Curve.Samples.Select(sample => sample.At.Nanometres)],
                    Values = [.. spectrum.Curve.Samples.Select(sample => sample.Value)],
                },
            ],
        };
    }
}
