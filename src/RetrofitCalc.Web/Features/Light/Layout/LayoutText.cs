using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Light.Layout;

/// <summary>Sentences about what hangs over a bench.</summary>
public static class LayoutText
{
    public static string Finding(Study study, Area area, QuantityText text)
    {
        var light = area.Light!;
        var size = $"{text.Length(light.BenchLength!.Value)} by {text.Length(light.BenchWidth!.Value)}";
        return light.Layout.Count == 0 ? $"A bench of {size} with nothing over it yet" : $"{CountText.Word(light.Layout.Count)} {(light.Layout.Count == 1 ? "luminaire" : "luminaires")} over a bench of {size}{Beyond(study, light)}";
    }

    public static string Spoken(Study study, Area area, QuantityText text) => $"{Finding(study, area, text)}. Places in the table below.";

    /// <summary>How many such benches the surveyed luminaires make, line by line.</summary>
    public static IEnumerable<string> Benches(Study study, Area area)
    {
        foreach (var (line, over) in (area.Light?.Layout ?? []).CountBy(place => place.Line))
        {
            if (study.Lines.FirstOrDefault(l => l.Id == line) is not { Count: > 0 and var count, Name: var name }) continue;
            yield return count % over == 0
                ? $"{name}: {count} luminaires are surveyed, {over} over this bench, so there are {count / over} alike."
                : $"{name}: {count} luminaires are surveyed and {over} hang over this bench, which do not come out even. Check the count, or how many hang over one bench.";
        }
    }

    private static string Beyond(Study study, AreaLight light) =>
        BenchPlan.Of(study, light, 1000) is { } plan && plan.Lamps.Any(lamp => lamp.X < plan.Bench.X || lamp.X > plan.Bench.X + plan.Bench.Width || lamp.Y < plan.Bench.Y || lamp.Y > plan.Bench.Y + plan.Bench.Height)
            ? ", some beside it" : "";
}
