using System.CommandLine;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Cli;

/// <summary>Where a spectrum or photometric file goes: into a study for one of its products, or nowhere, when only its figures are asked for.</summary>
internal sealed class LightFileTarget
{
    private readonly Option<string?> _into = new("--into") { Description = "The study file that takes it in; only the figures are printed when left out." };
    private readonly Option<string?> _product = new("--product") { Description = "Catalogue id of the lamp, tube or luminaire of that study whose light it is." };
    private readonly Option<string?> _name = new("--name") { Description = "What to call it; its name in the file when left out." };
    private readonly Option<string?> _out = new("--out") { Description = "The study file to write. An existing file is not overwritten." };

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { _into, _product, _name, _out }) command.Add(option);
        command.Validators.Add(asked =>
        {
            var (into, output) = (asked.GetValue(_into), asked.GetValue(_out));
            if (into is not null && output is null) asked.AddError("--into needs --out with the study file to write.");
            if (into is null && (output ?? asked.GetValue(_product) ?? asked.GetValue(_name)) is not null) asked.AddError("--out, --product and --name need --into with the study to take it in.");
        });
    }

    /// <summary>Takes the file in where a study is named.</summary>
    /// <param name="add">The study with the file under a name, and the light of the product with it.</param>
    public int Take(ParseResult parsed, Func<Study, string?, (Study Study, Func<ProductLight, ProductLight> Light)> add)
    {
        if (parsed.GetValue(_into) is not { } into) return ExitCode.Done;
        return StudyArgument.With(into, study =>
        {
            var product = parsed.GetValue(_product);
            if (product is not null && !Products(study).Contains(product))
                return Refusal.Of([$"The study has no lamp, tube or luminaire {product}. It has: {string.Join(", ", Products(study))}."]);
            var (grown, light) = add(study, parsed.GetValue(_name));
            return StudyOutput.Write(product is null ? grown : grown with { Products = With(grown.Products, product, light) }, parsed.GetValue(_out)!);
        });
    }

    private static IEnumerable<string> Products(Study study) =>
        [.. study.Catalogue.Lamps.Select(lamp => lamp.Id), .. study.Catalogue.Tubes.Select(tube => tube.Id), .. study.Catalogue.Luminaires.Select(luminaire => luminaire.Id)];

    private static IReadOnlyList<ProductLight> With(IReadOnlyList<ProductLight> all, string product, Func<ProductLight, ProductLight> light) =>
        all.Any(one => one.Product == product) ? [.. all.Select(one => one.Product == product ? light(one) : one)] : [.. all, light(new(product))];
}
