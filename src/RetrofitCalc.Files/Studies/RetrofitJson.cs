using System.Reflection;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using NodaTime;
using NodaTime.Serialization.SystemTextJson;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Studies;

/// <summary>How engine types are written as JSON: quantities as numbers in their base unit, dates and times as ISO 8601, words in camel case.</summary>
public static class RetrofitJson
{
    public static JsonSerializerOptions Options { get; } = Build();

    private static JsonSerializerOptions Build()
    {
        var options = new JsonSerializerOptions(JsonSerializerDefaults.Web)
        {
            NumberHandling = JsonNumberHandling.Strict,
            PropertyNameCaseInsensitive = false,
            AllowDuplicateProperties = false,
            AllowOutOfOrderMetadataProperties = true,
            RespectNullableAnnotations = true,
            UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
            WriteIndented = true,
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { DescribeKinds, LeaveOutComputed, RequireArguments } },
            Converters =
            {
                new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false),
                new HolidayConverter(),
                new NumberListConverter<double>(),
                new NumberListConverter<double?>(),
                new QuantityConverter<Power>(Power.FromWatts, p => p.Watts),
                new QuantityConverter<Energy>(Energy.FromKilowattHours, e => e.KilowattHours),
                new QuantityConverter<OperatingTime>(OperatingTime.FromHours, t => t.Hours),
                new QuantityConverter<Money>(Money.FromUnits, m => m.Units),
                new QuantityConverter<EnergyPrice>(EnergyPrice.FromPerKilowattHour, p => p.PerKilowattHour),
                new QuantityConverter<DemandPrice>(DemandPrice.FromPerKilowatt, p => p.PerKilowatt),
                new QuantityConverter<LuminousFlux>(LuminousFlux.FromLumens, f => f.Lumens),
                new QuantityConverter<PhotonFlux>(PhotonFlux.FromMicromolesPerSecond, f => f.MicromolesPerSecond),
                new QuantityConverter<Length>(Length.FromMetres, l => l.Metres),
                new QuantityConverter<PhotonFluxDensity>(PhotonFluxDensity.FromMicromolesPerSquareMetre, d => d.MicromolesPerSquareMetre),
                new QuantityConverter<Illuminance>(Illuminance.FromLux, e => e.Lux),
                new QuantityConverter<DailyLight>(DailyLight.FromMolesPerSquareMetre, d => d.MolesPerSquareMetre),
            },
        };
        return options.ConfigureForNodaTime(DateTimeZoneProviders.Tzdb);
    }

    private static readonly Dictionary<Type, JsonDerivedType[]> Kinds = new()
    {
        [typeof(Measure)] =
        [
            new(typeof(KeepAsIs), "keep"), new(typeof(RenewLikeForLike), "renew"), new(typeof(DirectWire), "directWire"), new(typeof(ReplaceLuminaire), "newLuminaire"),
        ],
        [typeof(PowerFactorClause)] =
        [
            new(typeof(BilledInKilovoltAmperes), "kilovoltAmperes"), new(typeof(TargetPowerFactor), "target"),
            new(typeof(AddedPerPoint), "perPoint"), new(typeof(ReactiveAboveShare), "reactive"),
        ],
    };

    private static readonly string?[] Namespaces = [typeof(Study).Namespace, typeof(Engine.Catalogue.Lamp).Namespace, typeof(CavityShare).Namespace];

    private static void DescribeKinds(JsonTypeInfo type)
    {
        if (!Kinds.TryGetValue(type.Type, out var kinds)) return;
        type.PolymorphismOptions = new JsonPolymorphismOptions
        {
            TypeDiscriminatorPropertyName = "kind",
            UnknownDerivedTypeHandling = JsonUnknownDerivedTypeHandling.FailSerialization,
        };
        foreach (var kind in kinds)
            type.PolymorphismOptions.DerivedTypes.Add(kind);
    }

    /// <summary>Properties without a setter are computed from the others and would only be able to disagree.</summary>
    private static void LeaveOutComputed(JsonTypeInfo type)
    {
        if (!Namespaces.Contains(type.Type.Namespace)) return;
        for (var i = type.Properties.Count - 1; i >= 0; i--)
            if (type.Properties[i].Set is null && !IsConstructorArgument(type, type.Properties[i]))
                type.Properties.RemoveAt(i);
    }

    /// <summary>A value a record cannot be made without must be there, or a left-out price would silently be zero.</summary>
    private static void RequireArguments(JsonTypeInfo type)
    {
        foreach (var property in type.Properties)
            if (ArgumentOf(type, property) is { HasDefaultValue: false } && !property.IsSetNullable)
                property.IsRequired = true;
    }

    private static bool IsConstructorArgument(JsonTypeInfo type, JsonPropertyInfo property) => ArgumentOf(type, property) is not null;

    private static ParameterInfo? ArgumentOf(JsonTypeInfo type, JsonPropertyInfo property) => type.Type.GetConstructors()
        .SelectMany(c => c.GetParameters())
        .FirstOrDefault(p => string.Equals(p.Name, property.Name, StringComparison.OrdinalIgnoreCase));
}
