using System.Text.Json;

namespace RetrofitCalc.Files.Studies;

/// <summary>Reads format and version before anything else: another format or a newer version is refused, not half understood.</summary>
internal static class StudyFileHeader
{
    public static FileProblem? ProblemOf(ReadOnlyMemory<byte> text)
    {
        try
        {
            return ProblemOf(new Utf8JsonReader(text.Span));
        }
        catch (JsonException broken)
        {
            return JsonShape.BrokenText(broken);
        }
        catch (InvalidOperationException broken)
        {
            return FileProblem.Of($"This is not well-formed JSON: {broken.Message}");
        }
    }

    private static FileProblem? ProblemOf(Utf8JsonReader reader)
    {
        reader.Read();
        if (reader.TokenType != JsonTokenType.StartObject) return NotAStudy("it does not begin with {");
        string? format = null;
        double? version = null;
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var name = reader.GetString();
            reader.Read();
            if (name == "format" && reader.TokenType == JsonTokenType.String) format = reader.GetString();
            if (name == "version" && reader.TokenType == JsonTokenType.Number) version = reader.GetDouble();
            reader.Skip();
        }
        return Judge(format, version);
    }

    private static FileProblem? Judge(string? format, double? version)
    {
        if (format != StudyFile.Format) return NotAStudy(format is null ? "\"format\" is missing" : $"its format is \"{format}\"");
        return version switch
        {
            null => new FileProblem(null, null, "$.version", "\"version\" is missing; it must be a whole number."),
            > StudyFile.Version => new FileProblem(null, null, "$.version",
                $"This study file has version {version}; this program reads versions up to {StudyFile.Version}. " +
                "A newer RetrofitCalc wrote it: update this program to open it. Nothing was read."),
            StudyFile.Version => null,
            _ => new FileProblem(null, null, "$.version", $"There is no study file version {version}."),
        };
    }

    private static FileProblem NotAStudy(string why) =>
        new(null, null, "$.format", $"This is not a study file: {why}. A study file has \"format\": \"{StudyFile.Format}\".");
}
