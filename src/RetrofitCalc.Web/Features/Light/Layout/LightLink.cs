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
        var stages = area.Seasons.SelectMany(season => season.Stages).ToList();
        var targets = stages.Count(stage => stage.Target is not null);
        return
        [
            new("What the crop wants", $"/studies/{id}/light/targets?area={Uri.EscapeDataString(area.Id)}", area.GrowsCrop ? $"a target for {targets} of {stages.Count} stages of {area.Name}" : "no crop grows here"),
            new("Layout over the bench", $"/studies/{id}/light/layout?area={Uri.EscapeDataString(area.Id)}", area.Light is { Layout.Count: > 0 and var hung } ? $"{Words(hung, "luminaire", "luminaires")} over a bench of {area.Name}" : $"nobody has said what hangs over {area.Name}"),
            new("Spectra of lamps, tubes and luminaires", $"/studies/{id}/light/spectra", unknown == 0 ? "known for all products of this study" : $"not known for {Words(unknown, "product", "products")}"),
            new("Photometric files", $"/studies/{id}/light/photometry", study.Distributions.Count == 0 ? "none taken in" : $"{Words(study.Distributions.Count, "file", "files")} taken in"),
            new("Light for people", $"/studies/{id}/light/people", study.Areas.Count(a => a.Light?.People is not null) is > 0 and var asked ? $"asked about in {Words(asked, "area", "areas")}" : "not asked about"),
        ];
    }

    private static string Words(int count, string one, string many) => $"{CountText.Word(count).ToLowerInvariant()} {(count == 1 ? one : many)}";
}
