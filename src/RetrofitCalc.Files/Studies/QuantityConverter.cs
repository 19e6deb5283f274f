using System.Text.Json;
using System.Text.Json.Serialization;

namespace RetrofitCalc.Files.Studies;

/// <summary>A quantity as a plain number in its base unit; a number out of range is reported with its path.</summary>
internal sealed class QuantityConverter<T>(Func<double, T> make, Func<T, double> number) : JsonConverter<T> where T : struct
{
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.Number) throw new JsonException($"Expected a number for {typeof(T).Name}.");
        var value = reader.GetDouble();
        try
        {
            return make(value);
        }
        catch (ArgumentOutOfRangeException)
        {
            throw new JsonException($"{value} is not a possible {typeof(T).Name}.");
        }
    }

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteNumberValue(number(value));
}
