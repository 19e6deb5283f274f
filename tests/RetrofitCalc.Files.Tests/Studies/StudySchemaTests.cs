using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using CsCheck;
using Json.Schema;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Files.Tests.Studies;

public class The_published_schema
{
    private static readonly string Text = File.ReadAllText(Repository.PathOf("docs/study-file.schema.json"));
    private static readonly JsonSchema Schema = JsonSchema.FromText(Text);
    private static readonly JsonObject Definitions = JsonNode.Parse(Text)!["$defs"]!.AsObject();

    private static bool Accepts(string study) => Schema.Evaluate(JsonDocument.Parse(study).RootElement).IsValid;

    [Fact]
    public void accepts_whatever_is_written() =>
        StudyGen.Studies.Sample(study => Accepts(Encoding.UTF8.GetString(StudyFile.Write(study))), iter: 50, threads: 1);

    [Theory]
    [InlineData("\"count\": 10", "\"count\": \"ten\"")]
    [InlineData("\"count\": 10", "\"count\": 10.5")]
    [InlineData("\"count\": 10", "\"cuont\": 10")]
    [InlineData("\"price\": 0.2", "\"price\": \"0.2\"")]
    [InlineData("\"name\": \"Quillmere\",", "")]
    [InlineData("\"length\": 1.2", "\"length\": -1.2")]
    [InlineData("\"startMethod\": \"instant\"", "\"startMethod\": \"Instant\"")]
    [InlineData("\"start\": \"2027-01-01\"", "\"start\": \"1/1/2027\"")]
    [InlineData("\"kind\": \"directWire\"", "\"kind\": \"magic\"")]
    [InlineData("\"kind\": \"directWire\",", "")]
    [InlineData("\"on\": \"06:00:00\"", "\"on\": \"25:00:00\"")]
    [InlineData("\"seasons\": []", "\"seasons\": null")]
    [InlineData("\"version\": 1", "\"version\": 2")]
    public void refuses_what_the_reader_refuses(string old, string changed)
    {
        var text = SmallStudy.Text();
        Assert.True(Accepts(text));
        var at = text.IndexOf(old, StringComparison.Ordinal);
        Assert.True(at > 0, old);
        var broken = text[..at] + changed + text[(at + old.Length)..];
        Assert.Null(StudyFile.Read(Encoding.UTF8.GetBytes(broken)).Value);
        Assert.False(Accepts(broken));
    }

    /// <summary>Only adjustments may be credits; a block below zero opens to be mended.</summary>
    [Fact]
    public void refuses_a_block_of_energy_below_zero_which_opens_with_a_problem()
    {
        var broken = SmallStudy.Text().Replace("\"price\": 0.2", "\"price\": -0.2");
        var read = StudyFile.Read(Encoding.UTF8.GetBytes(broken));
        Assert.NotNull(read.Value);
        Assert.Contains(read.Problems, problem => problem.Path == "$.study.tariff.energy[0].blocks[0].price");
        Assert.False(Accepts(broken));
    }

    [Fact]
    public void describes_every_property_of_every_type_that_a_study_holds()
    {
        foreach (var type in StudyTypes.Objects())
        {
            var definition = Definitions[StudyTypes.NameOf(type.Type)];
            Assert.True(definition is not null, $"docs/study-file.schema.json has no definition of {type.Type.Name}.");
            var described = definition["properties"]!.AsObject().Where(p => !IsMark(type.Type, p.Key)).ToDictionary(p => p.Key, p => (string?)p.Value!["description"]);
            Assert.Equal(type.Properties.Select(p => p.Name).Order(), described.Keys.Order());
            Assert.All(described, d => Assert.True(d.Value?.Length > 5, $"{type.Type.Name}.{d.Key} has no description in the schema."));
            Assert.False((bool)definition["additionalProperties"]!, $"{type.Type.Name} must not allow unknown members.");
        }
    }

    /// <summary>The "kind" of a measure or clause tells its type and is no property of it.</summary>
    private static bool IsMark(Type type, string name) => name == "kind" && RetrofitJson.Options.GetTypeInfo(type.BaseType!).PolymorphismOptions is not null;

    [Fact]
    public void requires_exactly_what_the_reader_requires()
    {
        foreach (var type in StudyTypes.Objects())
        {
            var required = (Definitions[StudyTypes.NameOf(type.Type)]!["required"]?.AsArray() ?? []).Select(n => (string)n!).Where(n => !IsMark(type.Type, n));
            Assert.Equal(type.Properties.Where(p => p.IsRequired).Select(p => p.Name).Order(), required.Order());
        }
    }

    [Fact]
    public void lists_exactly_the_words_of_every_choice()
    {
        foreach (var choice in StudyTypes.Choices())
        {
            var words = Definitions[StudyTypes.NameOf(choice)]!["enum"]!.AsArray().Select(n => (string)n!);
            var ours = Enum.GetNames(choice).Select(JsonNamingPolicy.CamelCase.ConvertName).Where(w => choice != typeof(NodaTime.IsoDayOfWeek) || w != "none");
            Assert.Equal(ours, words);
        }
    }

    [Fact]
    public void names_a_unit_for_every_quantity()
    {
        foreach (var (name, unit) in new[] { ("power", "W"), ("energy", "kWh"), ("operatingTime", "h"), ("money", "currency"), ("energyPrice", "currency/kWh"), ("demandPrice", "currency/kW"), ("luminousFlux", "lm"), ("photonFlux", "µmol/s"), ("length", "m"), ("photonFluxDensity", "µmol m⁻² s⁻¹"), ("illuminance", "lx"), ("dailyLight", "mol m⁻² d⁻¹") })
            Assert.StartsWith($"In {unit}", (string)Definitions[name]!["description"]!);
    }
}

/// <summary>Walks the types a study holds as the serializer sees them.</summary>
internal static class StudyTypes
{
    public static string NameOf(Type type) => JsonNamingPolicy.CamelCase.ConvertName(type.Name);

    public static IEnumerable<JsonTypeInfo> Objects() => All().Select(RetrofitJson.Options.GetTypeInfo)
        .Where(i => i.Kind == JsonTypeInfoKind.Object && i.PolymorphismOptions is null);

    public static IEnumerable<Type> Choices() => All().Where(t => t.IsEnum);

    private static HashSet<Type> All()
    {
        var found = new HashSet<Type>();
        Visit(typeof(Study), found);
        return found;
    }

    private static void Visit(Type type, HashSet<Type> found)
    {
        var bare = Nullable.GetUnderlyingType(type) ?? type;
        if (!found.Add(bare)) return;
        var info = RetrofitJson.Options.GetTypeInfo(bare);
        if (info.ElementType is { } element) Visit(element, found);
        foreach (var derived in info.PolymorphismOptions?.DerivedTypes ?? []) Visit(derived.DerivedType, found);
        if (info.Kind == JsonTypeInfoKind.Object)
            foreach (var property in info.Properties) Visit(property.PropertyType, found);
    }
}
