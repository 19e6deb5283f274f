using System.Globalization;
using System.Text.Json;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Studies;

/// <summary>The study file: one study in an envelope that names format and version. See docs/study-file.md.</summary>
public static class StudyFile
{
    public const string Format = "retrofitcalc-study";
    public const int Version = 1;
    public const int LimitMegabytes = 64;

    /// <summary>Problems that are named one by one.</summary>
    public const int MostProblems = 100;

    private const int LimitBytes = LimitMegabytes * 1024 * 1024;
    private static readonly string TooLarge =
        $"The file is larger than {LimitMegabytes} MB, the most a study file may have. Is it another kind of file?";

    private sealed record Envelope(string Format, int Version, Study Study);

    public static byte[] Write(Study study) =>
        JsonSerializer.SerializeToUtf8Bytes(new Envelope(Format, Version, study), RetrofitJson.Options);

    public static Parsed<Study> Read(Stream stream)
    {
        try
        {
            return BoundedRead.All(stream, LimitBytes) is { } all ? Read(all) : Parsed.Bad<Study>(TooLarge);
        }
        catch (IOException unreadable)
        {
            return Parsed.Bad<Study>($"The file could not be read: {unreadable.Message}");
        }
    }

    /// <summary>
    /// Reads a study. Without a value the file could not be understood. A value with problems is a whole study
    /// that can be opened and mended, but not evaluated yet.
    /// </summary>
    public static Parsed<Study> Read(ReadOnlyMemory<byte> text)
    {
        if (text.Length > LimitBytes) return Parsed.Bad<Study>(TooLarge);
        var body = StudyFileText.WithoutMark(text);
        if (StudyFileText.ProblemOf(body) is { } notJson) return Parsed.Bad<Study>(notJson);
        if (StudyFileHeader.ProblemOf(body) is { } notOurs) return Parsed.Bad<Study>(notOurs);
        var misshapen = JsonShape.Check<Envelope>(body, RetrofitJson.Options);
        return misshapen.Count > 0 ? new Parsed<Study>(null, misshapen) : ReadChecked(body);
    }

    private static Parsed<Study> ReadChecked(ReadOnlyMemory<byte> body)
    {
        try
        {
            var study = JsonSerializer.Deserialize<Envelope>(body.Span, RetrofitJson.Options)!.Study;
            return new Parsed<Study>(study, Placed([.. StudyEvaluation.Check(study), .. CultureProblem(study), .. SpectrumIds.ProblemsOf(study)], body));
        }
        catch (Exception wrong) when (wrong is JsonException or ArgumentException or FormatException or InvalidOperationException)
        {
            var place = wrong as JsonException;
            return Parsed.Bad<Study>(new FileProblem(
                (int?)place?.LineNumber + 1, (int?)place?.BytePositionInLine + 1, place?.Path ?? "$", $"The study cannot be read here: {wrong.Message}"));
        }
    }

    /// <summary>The engine only carries the culture; whoever prints the study needs one this machine knows.</summary>
    private static IEnumerable<StudyProblem> CultureProblem(Study study)
    {
        try
        {
            _ = CultureInfo.GetCultureInfo(study.Site.Culture, predefinedOnly: true); // any well-formed name would pass else, and read 1,5 as English
            return [];
        }
        catch (CultureNotFoundException)
        {
            return [new StudyProblem("Site.Culture", $"\"{study.Site.Culture}\" is not a culture this program knows. Give one such as en-US or de-DE.")];
        }
    }

    /// <summary>Gives the engine's problems the line, column and path of the file; past the limit only their number, as finding a place takes time.</summary>
    private static IReadOnlyList<FileProblem> Placed(IReadOnlyList<StudyProblem> all, ReadOnlyMemory<byte> body)
    {
        if (all.Count > MostProblems)
            return [.. Placed([.. all.Take(MostProblems)], body), FileProblem.Of($"There are {all.Count - MostProblems} more problems. Mend these first.")];
        return all.Count == 0 ? [] : Located(all, body);
    }

    private static List<FileProblem> Located(IReadOnlyList<StudyProblem> problems, ReadOnlyMemory<byte> body)
    {
        var paths = problems.Select(problem => StudyPath.InFile(problem.Path)).ToList();
        var offsets = JsonPlace.OffsetsOf(body.Span, paths);
        return problems.Select((problem, i) =>
        {
            var nearest = JsonPlace.SelfAndAncestors(paths[i]).First(offsets.ContainsKey);
            var (line, column) = JsonPlace.At(body.Span, offsets[nearest]);
            return new FileProblem(line, column, paths[i], problem.Message);
        }).ToList();
    }
}
