using System.Collections.Concurrent;
using System.Text.Json.Serialization.Metadata;
using System.Text.RegularExpressions;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Files.Catalogues;

/// <summary>The columns of each kind of entry, from its properties, so that a new property is never left out of exports.</summary>
internal static partial class CatalogueColumns
{
    private static readonly ConcurrentDictionary<Type, IReadOnlyList<CatalogueColumn>> Known = new();

    private static readonly Dictionary<string, string> OwnHeadings = new()
    {
        ["source.kind"] = "evidence",
        ["source.source"] = "source",
        ["source.fromMemory"] = "from memory",
        ["voltage.lowest"] = "lowest voltage [V]",
        ["voltage.highest"] = "highest voltage [V]",
        ["ratedCaseTemperature"] = "rated case temperature [°C]",
        ["mercuryMilligrams"] = "mercury [mg]",
        ["harmonicDistortionPercent"] = "harmonic distortion [%]",
    };

    private static readonly Dictionary<Type, string> Units = new()
    {
        [typeof(Power)] = "W", [typeof(OperatingTime)] = "h", [typeof(Length)] = "m", [typeof(LuminousFlux)] = "lm", [typeof(PhotonFlux)] = "µmol/s",
    };

    private static readonly Dictionary<Type, ICell> Lists = new()
    {
        [typeof(IReadOnlyList<LampLife>)] = new LampLivesCell(),
        [typeof(IReadOnlyList<BallastPosition>)] = new BallastsCell(),
        [typeof(IReadOnlyList<LitStep>)] = new LitStepsCell(),
        [typeof(IReadOnlyDictionary<string, Provenance>)] = new FieldSourcesCell(),
    };

    public static IReadOnlyList<CatalogueColumn> Of<T>() where T : CatalogueEntry => Known.GetOrAdd(typeof(T), type => [.. Of(type, [])]);

    private static IEnumerable<CatalogueColumn> Of(Type type, IReadOnlyList<string> path) =>
        RetrofitJson.Options.GetTypeInfo(type).Properties.SelectMany(property => Of(property, [.. path, property.Name]));

    private static IEnumerable<CatalogueColumn> Of(JsonPropertyInfo property, IReadOnlyList<string> path)
    {
        var type = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
        if (Lists.TryGetValue(type, out var list)) return [new CatalogueColumn(Heading(type, path), path, list)];
        return RetrofitJson.Options.GetTypeInfo(type).Kind == JsonTypeInfoKind.Object
            ? Of(type, path)
            : [new CatalogueColumn(Heading(type, path), path, CellFor(type))];
    }

    private static ICell CellFor(Type type) =>
        type == typeof(string) ? new TextCell()
        : type == typeof(bool) ? new YesNoCell()
        : type.IsEnum ? new WordCell([.. JsonExpectation.EnumWords(type)])
        : new NumberCell();

    private static string Heading(Type type, IReadOnlyList<string> path)
    {
        if (OwnHeadings.TryGetValue(string.Join('.', path), out var own)) return own;
        var words = Capitals().Replace(path[^1], m => " " + m.Value.ToLowerInvariant());
        return Units.TryGetValue(type, out var unit) ? $"{words} [{unit}]" : words;
    }

    [GeneratedRegex("[A-Z]")]
    private static partial Regex Capitals();
}
