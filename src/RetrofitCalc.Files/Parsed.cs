namespace RetrofitCalc.Files;

/// <summary>Something wrong in what a person or a file gave.</summary>
/// <param name="Line">Line in the source, from 1; null where there are no lines.</param>
/// <param name="Column">Column in that line, from 1: the character in a text file, the cell in a table.</param>
/// <param name="Path">What it concerns: a JSON path, a column heading, or nothing for a single text.</param>
/// <param name="Message">What is wrong and what to give instead.</param>
public sealed record FileProblem(int? Line, int? Column, string Path, string Message)
{
    /// <summary>A problem of a text that stands alone.</summary>
    public static FileProblem Of(string message) => new(null, null, "", message);

    public override string ToString()
    {
        var place = (Line, Column) switch
        {
            ({ } line, { } column) => $"line {line}, column {column}",
            ({ } line, null) => $"line {line}",
            _ => "",
        };
        var before = string.Join(", ", new[] { place, Path }.Where(part => part.Length > 0));
        return before.Length == 0 ? Message : $"{before}: {Message}";
    }
}

/// <summary>What was read from text, and what is wrong with it. No value: nothing usable could be read.</summary>
public sealed record Parsed<T>(T? Value, IReadOnlyList<FileProblem> Problems)
{
    public bool Ok => Problems.Count == 0;
}

public static class Parsed
{
    public static Parsed<T> Good<T>(T value) => new(value, []);

    public static Parsed<T> Bad<T>(string message) => Bad<T>(FileProblem.Of(message));

    public static Parsed<T> Bad<T>(params FileProblem[] problems) => new(default, problems);
}
