using System.Globalization;
using System.Text.Json;

namespace RetrofitCalc.Files.Tariffs;

/// <summary>A value in a rate record and its place there; what is misshapen goes to the log.</summary>
internal readonly record struct RecordNode(JsonElement Element, string Path, FieldLog Log)
{
    /// <summary>A field with a value; null when it is absent or null.</summary>
    public RecordNode? Find(string name) =>
        Element.TryGetProperty(name, out var value) && value.ValueKind != JsonValueKind.Null ? new RecordNode(value, $"{Path}.{name}", Log) : null;

    /// <summary>The items of a list of at most so many; null and a problem when it is none.</summary>
    public IReadOnlyList<RecordNode>? Items(int most)
    {
        if (Element.ValueKind != JsonValueKind.Array)
            return Wrong<IReadOnlyList<RecordNode>>("must be a list in [ ]");
        if (Element.GetArrayLength() > most)
            return Wrong<IReadOnlyList<RecordNode>>($"must have at most {most} items, but has {Element.GetArrayLength()}");
        var (path, log) = (Path, Log);
        return [.. Element.EnumerateArray().Select((item, i) => new RecordNode(item, $"{path}[{i}]", log))];
    }

    /// <summary>A list of just so many items; null and a problem when it is none.</summary>
    public IReadOnlyList<RecordNode>? Just(int count) =>
        Element.ValueKind == JsonValueKind.Array && Element.GetArrayLength() != count
            ? Wrong<IReadOnlyList<RecordNode>>($"must have {count} items, but has {Element.GetArrayLength()}")
            : Items(count);

    public bool IsObject => Element.ValueKind == JsonValueKind.Object;

    public string? Text() => Element.ValueKind == JsonValueKind.String ? RecordText.Line(Element.GetString()!) : Wrong<string>("must be text");

    /// <summary>Some records write "no limit" as 1e38; past this sums of numbers could leave what a number can be.</summary>
    private const double Largest = 1e40;

    /// <summary>A number, also when it stands in quotes.</summary>
    public double? Number()
    {
        double number = default;
        var isNumber = Element.ValueKind switch
        {
            JsonValueKind.Number => Element.TryGetDouble(out number),
            JsonValueKind.String => double.TryParse(Element.GetString(), NumberStyles.Float, CultureInfo.InvariantCulture, out number),
            _ => false,
        };
        if (isNumber && Math.Abs(number) <= Largest)
            return number;
        Log.Wrong(Path, "must be a number");
        return null;
    }

    /// <summary>A price that is no credit.</summary>
    public double? NotNegative()
    {
        if (Number() is not { } number)
            return null;
        if (number >= 0)
            return number;
        Log.Wrong(Path, "must be zero or more");
        return null;
    }

    public int? Whole(int low, int high)
    {
        if (Number() is not { } number)
            return null;
        if (number >= low && number <= high && number == Math.Floor(number))
            return (int)number;
        Log.Wrong(Path, $"is {number.ToString(CultureInfo.InvariantCulture)}; it must be a whole number from {low} to {high}");
        return null;
    }

    /// <summary>Twelve numbers, January first.</summary>
    public double[]? Months()
    {
        double?[]? months = [.. Just(12)?.Select(month => month.Number()) ?? []];
        return months.Length == 12 && months.All(month => month is not null) ? [.. months.Select(month => month!.Value)] : null;
    }

    private T? Wrong<T>(string what)
        where T : class
    {
        Log.Wrong(Path, what);
        return null;
    }
}
