using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;

namespace RetrofitCalc.Files.Photometry;

/// <summary>Photometric files of a study.</summary>
public static class StudyDistributions
{
    private static readonly string[] SourceLabels = ["TEST", "TESTLAB", "ISSUEDATE", "MANUFAC"];

    /// <summary>A distribution by its id; null when the study has none of it, or it is none: the study's problems then say why.</summary>
    public static LuminousIntensityDistribution? Find(Study study, string? id) =>
        study.Distributions.FirstOrDefault(file => file.Id == id) is { } found ? Usable(found) : null;

    public static LuminousIntensityDistribution Of(StudyDistribution file) =>
        new(file.Type, file.Vertical, file.Horizontal, file.Candelas) { Opening = file.Opening, InputPower = file.InputPower };

    private static LuminousIntensityDistribution? Usable(StudyDistribution file)
    {
        try
        {
            return Of(file);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    /// <summary>The study with a photometric file more, under an id nobody uses yet: the last of the study's distributions.</summary>
    /// <param name="name">What the page calls it.</param>
    /// <param name="source">Where it comes from; null takes what its labels say.</param>
    public static Study Add(Study study, PhotometricFile file, string name, Provenance? source = null)
    {
        var id = new NewIds("photometry", study.Distributions.Select(own => own.Id)).Next();
        var light = file.Distribution;
        return study with
        {
            Distributions =
            [
                .. study.Distributions,
                new(id, name, source ?? SourceOf(file))
                {
                    Type = light.Type, Vertical = light.VerticalDegrees, Horizontal = light.HorizontalDegrees, Candelas = light.Candelas, Opening = light.Opening,
                    InputPower = light.InputPower is { Watts: > 0 } ? light.InputPower : null,
                },
            ],
        };
    }

    /// <summary>Without a file; products that had it go back to bare or facing down.</summary>
    public static Study Remove(Study study, string id) => study with
    {
        Distributions = [.. study.Distributions.Where(file => file.Id != id)],
        Products = [.. study.Products.Select(light => light.Distribution == id ? light with { Distribution = null } : light)],
    };

    /// <summary>As a file of the form of 2002, with its source among the labels.</summary>
    public static byte[] Write(StudyDistribution file) => Lm63Writer.Write(new PhotometricFile(Lm63Edition.Of2002, Of(file))
    {
        Labels = [new("LUMINAIRE", file.Name), new("OTHER", file.Source.Source.Length > 0 ? file.Source.Source : "source not known")],
    });

    /// <summary>What a luminaire is called in its file.</summary>
    public static string? NameIn(PhotometricFile file) =>
        new[] { "LUMINAIRE", "LUMCAT" }.Select(file.Label).FirstOrDefault(text => !string.IsNullOrWhiteSpace(text))
        ?? file.Labels.FirstOrDefault(label => label.Keyword.Length == 0 && label.Text.Length > 0)?.Text;

    private static Provenance SourceOf(PhotometricFile file)
    {
        var labels = SourceLabels.Select(file.Label).Where(text => !string.IsNullOrWhiteSpace(text)).ToList();
        var isTested = new[] { "TEST", "TESTLAB" }.Any(keyword => !string.IsNullOrWhiteSpace(file.Label(keyword))); // a maker's name or a date is no report
        return new(isTested ? EvidenceKind.Tested : EvidenceKind.Unsourced, labels.Count > 0 ? $"Photometric file: {string.Join(", ", labels)}" : "Photometric file without a report");
    }
}
