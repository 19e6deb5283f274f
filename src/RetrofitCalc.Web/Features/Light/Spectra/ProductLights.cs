using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Light.Spectra;

/// <summary>What a study says of the light of its products; a product it says nothing of has no row.</summary>
public static class ProductLights
{
    public static ProductLight Of(Study study, string product) => study.Products.FirstOrDefault(light => light.Product == product) ?? new(product);

    public static Study Change(Study study, string product, Func<ProductLight, ProductLight> change)
    {
        var changed = change(Of(study, product));
        var rest = study.Products.Where(light => light.Product != product);
        return study with { Products = changed == new ProductLight(product) ? [.. rest] : [.. rest, changed] };
    }

    /// <summary>The place of a product's row, for fields; past the end where it has none yet.</summary>
    public static string Path(Study study, string product)
    {
        var index = study.Products.ToList().FindIndex(light => light.Product == product);
        return $"Products[{(index < 0 ? study.Products.Count : index)}]";
    }
}
