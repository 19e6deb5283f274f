using System.Globalization;

namespace RetrofitCalc.Files.Weather;

/// <summary>One comma-separated line and where its fields stand.</summary>
internal sealed class EpwFields(string line, int number)
{
    /// <summary>A row of hours has 35; what stands behind is kept in one piece.</summary>
    private const int MostFields = 40;

    private readonly string[] _fields = line.Split(',', MostFields);

    public int Count => _fields.Length;

    /// <summary>A field, from 0; blank beyond the last.</summary>
    public string this[int index] => index < _fields.Length ? _fields[index].Trim() : "";

    public int? Whole(int index) => int.TryParse(this[index], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value) ? value : null;

    public double? Number(int index) =>
        double.TryParse(this[index], NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) ? value : null;

    /// <summary>A problem at the first letter of a field.</summary>
    public FileProblem Problem(int index, string what, string message) =>
        new(number, 1 + _fields.Take(index).Sum(field => field.Length + 1), what, message);

    /// <summary>A field as a message quotes it.</summary>
    public string Quoted(int index)
    {
        const int enough = 30;
        var text = this[index];
        return text.Length == 0 ? "nothing" : $"\"{(text.Length > enough ? text[..enough] + " …" : text)}\"";
    }
}
