using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Options;

/// <summary>Sentences about options.</summary>
public static class OptionText
{
    public static string Title(StudyResult? result, bool stale)
    {
        if (result?.Chosen is not { } chosen || stale) return "What could be done?";
        var text = QuantityText.For(result.Study);
        var years = result.Study.Assumptions.StudyYears;
        return chosen.SimplePayback.Years is { } payback
            ? $"{chosen.Option.Name}: pays back in {text.Number(payback, 1)} years{(chosen.SimplePayback.LostAgain ? ", and a later replacement loses it again" : "")}"
            : $"{chosen.Option.Name}: never pays back in {years} years";
    }

    public static string Lead(Study study) => study.Options.Count switch
    {
        0 => "No option yet. Add two or more, so that the choice is a comparison and not a sales pitch.",
        1 => "One option against keeping the lighting. Add another, so that the choice is a comparison.",
        var count => $"{count} options against keeping the lighting as it is, on the same bill and the same years.",
    };

    /// <summary>The name, with its watts where the name does not say them.</summary>
    public static string Product(Engine.Catalogue.Replacement product, QuantityText text)
    {
        var watts = product.Name.Contains(" W", StringComparison.Ordinal) ? "" : $", {text.Watts(product.LinePower)}";
        return product.Name + watts + (product.Retired ? ", no longer offered" : "");
    }
}
