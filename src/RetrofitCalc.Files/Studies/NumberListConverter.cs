using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace RetrofitCalc.Files.Studies;

/// <summary>
/// A list of numbers, many to a line: a meter year has 35,040 values, and one to a line would bury the rest of the file.
/// The text of a long list is kept while the list lives, because an edited study shares the unchanged list and is saved at every edit.
/// </summary>
/// <typeparam name="T">double, or double? where a value may be unknown.</typeparam>
internal sealed class NumberListConverter<T> : JsonConverter<IReadOnlyList<T>>
{
    /// <summary>A day of quarter-hours.</summary>
    private const int PerLine = 96;

    private readonly ConditionalWeakTable<IReadOnlyList<T>, byte[]> _written = [];

    public override IReadOnlyList<T> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.StartArray) throw new JsonException("Not a list of numbers.");
        var list = new List<T>();
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
            list.Add(reader.TokenType switch
            {
                JsonTokenType.Null when default(T) is null => default!,
                JsonTokenType.Number when reader.GetDouble() is var number && double.IsFinite(number) => (T)(object)number,
                _ => throw new JsonException("Not a number."),
            });
        return list.ToArray();
    }

    public override void Write(Utf8JsonWriter writer, IReadOnlyList<T> value, JsonSerializerOptions options)
    {
        var text = value.Count <= PerLine ? TextOf(value) : _written.GetValue(value, TextOf);
        writer.WriteRawValue(text, skipInputValidation: true);
    }

    private static byte[] TextOf(IReadOnlyList<T> list)
    {
        using var text = new MemoryStream(list.Count * 8 + 16);
        text.WriteByte((byte)'[');
        for (var i = 0; i < list.Count; i++)
        {
            if (i > 0) text.Write(","u8);
            if (list.Count > PerLine && i % PerLine == 0) text.Write("\n        "u8);
            WriteNumber(text, list[i]);
        }
        text.WriteByte((byte)']');
        return text.ToArray();
    }

    private static void WriteNumber(MemoryStream text, T value)
    {
        if (value is not double number)
        {
            text.Write("null"u8);
            return;
        }
        if (!double.IsFinite(number)) throw new JsonException($"{number} cannot be written as a number.");
        Span<byte> digits = stackalloc byte[32];
        number.TryFormat(digits, out var length, "R", CultureInfo.InvariantCulture);
        text.Write(digits[..length]);
    }
}
