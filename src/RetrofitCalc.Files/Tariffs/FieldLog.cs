using System.Text.Json;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Files.Tariffs;

/// <summary>Collects what became of each field of one record. Paths are those within the record.</summary>
internal sealed class FieldLog(RateRecord record)
{
    private const int MostProblems = 100;
    private const int MostFields = 2000;
    private readonly Dictionary<string, (FieldUse Use, string Note)> _fields = [];
    private readonly List<(string Path, string Message)> _problems = [];
    private int _more;

    public bool HasProblems => _problems.Count > 0;

    public void Used(string path, string note = "") => _fields.TryAdd(path, (FieldUse.Used, note));

    public void Doubtful(string path, string note)
    {
        var before = _fields.GetValueOrDefault(path);
        _fields[path] = (FieldUse.Doubtful, before.Use == FieldUse.Doubtful ? $"{before.Note} {note}" : note);
    }

    public void NotUsed(string path, string note)
    {
        if (_fields.Count < MostFields || _fields.ContainsKey(path))
            _fields[path] = (FieldUse.NotUsed, note);
        else
            _more++;
    }

    /// <summary>Something that keeps the record from being read; the message goes on from the name of the field.</summary>
    public void Wrong(string path, string what)
    {
        if (_problems.Count < MostProblems)
            _problems.Add((path, $"{Named(path)} {what}."));
    }

    public bool Knows(string path) => _fields.ContainsKey(path);

    public IReadOnlyList<RateField> Fields()
    {
        if (_more > 0)
            _fields["$"] = (FieldUse.Doubtful, $"There are {_more} more fields, none of them used.");
        var places = Places(_fields.Keys);
        return [.. _fields
            .Select(field => new RateField(places[field.Key].Line, places[field.Key].Column, InFile(field.Key), field.Value.Use, field.Value.Note))
            .OrderBy(field => (field.Line, field.Column))];
    }

    public IReadOnlyList<FileProblem> Problems()
    {
        var places = Places(_problems.Select(problem => problem.Path));
        return [.. _problems.Select(problem => new FileProblem(places[problem.Path].Line, places[problem.Path].Column, InFile(problem.Path), problem.Message))];
    }

    private static string Named(string path) => path == "$" ? "The record" : $"\"{path[2..]}\"";

    private string InFile(string path) => record.Path + path[1..];

    private Dictionary<string, (int Line, int Column)> Places(IEnumerable<string> paths)
    {
        string[] wanted = [.. paths.Distinct()];
        var offsets = JsonPlace.OffsetsOf(record.File.Span[record.Bytes], wanted);
        long OffsetOf(string path) => record.Bytes.Start.Value + offsets[JsonPlace.SelfAndAncestors(path).First(offsets.ContainsKey)];
        var places = JsonPlace.At(record.File.Span, wanted.Select(OffsetOf));
        return wanted.ToDictionary(path => path, path => places[OffsetOf(path)]);
    }
}
