using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Light.Spectra;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Light.Layout;

/// <summary>A page about what light rests on.</summary>
/// <param name="State">How far it is filled in.</param>
public sealed record LightLink(string Name, string Address, string State)
{
    public static IReadOnlyList<LightLink> Of(Study study, Guid id, Area area)
    {
        var products = UsedProduct.Of(study);
        var unknown = products.Count(product => ProductFactor.Of(study, product) is null);
        return
        [
            new("Spectra of lamps, tubes and luminaires", $"/studies/{id}/light/spectra", unknown == 0 ? "known for all products of this study" : $"not known for {Words(unknown, "product", "products")}"),
        ];
    }

    private static string Words(int count, string one, string many) => $"{CountText.Word(count).ToLowerInvariant()} {(count == 1 ? one : many)}";
}
