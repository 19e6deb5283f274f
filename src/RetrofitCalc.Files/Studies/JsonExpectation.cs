using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using NodaTime;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Studies;

/// <summary>Says in plain words what a value of some type must look like in a file.</summary>
internal static class JsonExpectation
{
    private static readonly Dictionary<Type, string> Words = new()
    {
        [typeof(string)] = "text in quotation marks",
        [typeof(bool)] = "true or false",
        [typeof(int)] = "a whole number",
        [typeof(double)] = "a number",
        [typeof(Power)] = "a number of watts",
        [typeof(Energy)] = "a number of kilowatt-hours",
        [typeof(OperatingTime)] = "a number of hours, zero or more",
        [typeof(Money)] = "an amount of money as a plain number",
        [typeof(EnergyPrice)] = "a price per kilowatt-hour as a plain number",
        [typeof(DemandPrice)] = "a price per kilowatt as a plain number",
        [typeof(LuminousFlux)] = "a number of lumens, zero or more",
        [typeof(PhotonFlux)] = "a number of micromoles per second, zero or more",
        [typeof(Length)] = "a number of metres, zero or more",
        [typeof(PhotonFluxDensity)] = "a number of micromoles per square metre and second, zero or more",
        [typeof(Illuminance)] = "a number of lux, zero or more",
        [typeof(DailyLight)] = "a number of moles per square metre and day, zero or more",
        [typeof(LocalDate)] = "a date such as \"2027-03-15\"",
        [typeof(LocalTime)] = "a time of day such as \"06:30:00\"",
        [typeof(AnnualDate)] = "a day of the year such as \"04-15\"",
        [typeof(Holiday)] = "a holiday such as \"07-04\", \"fourth Thursday of November\" or \"Easter + 1\"",
        [typeof(IReadOnlyList<double>)] = "a list of numbers in [ ]",
        [typeof(IReadOnlyList<double?>)] = "a list of numbers in [ ], null where one is not known",
        [typeof(YearMonth)] = "a month such as \"2027-03\"",
    };

    public static string Of(Type type, JsonSerializerOptions options)
    {
        var bare = Nullable.GetUnderlyingType(type) ?? type;
        if (bare.IsEnum) return "one of " + string.Join(", ", EnumWords(bare).Select(word => $"\"{word}\""));
        if (Words.TryGetValue(bare, out var words)) return words;
        return options.GetTypeInfo(bare).Kind == JsonTypeInfoKind.Enumerable ? "a list in [ ]" : "an object in { }";
    }

    /// <summary>The words of an enumeration, as written; "none" is no day of the week.</summary>
    public static IEnumerable<string> EnumWords(Type type) => Enum.GetNames(type)
        .Where(name => type != typeof(IsoDayOfWeek) || name != nameof(IsoDayOfWeek.None))
        .Select(JsonNamingPolicy.CamelCase.ConvertName);
}
