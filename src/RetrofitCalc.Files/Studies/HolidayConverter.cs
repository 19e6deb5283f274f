using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Studies;

/// <summary>A holiday as a short text, such as "07-04", "fourth Thursday of November" or "Easter + 1".</summary>
internal sealed class HolidayConverter : JsonConverter<Holiday>
{
    public override Holiday Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.String && HolidayText.Parse(reader.GetString()!, CultureInfo.InvariantCulture) is { Ok: true, Value: { } holiday }
            ? holiday
            : throw new JsonException("Not a holiday.");

    public override void Write(Utf8JsonWriter writer, Holiday value, JsonSerializerOptions options) => writer.WriteStringValue(HolidayText.Stored(value));
}
