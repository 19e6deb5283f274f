using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Whether crops keep their light, and people theirs.</summary>
public static class CropLightEvaluation
{
    /// <summary>A verdict for each stage of each growing area, and light for people by area.</summary>
    /// <param name="context">The context of the study as it is; readings and the models fitted to them are kept with it.</param>
    /// <param name="now">What is fitted now.</param>
    /// <param name="after">What is fitted after; the same as now for the lighting kept as it is.</param>
    /// <param name="option">The option; null for the lighting kept as it is.</param>
    public static CropLightResult Of(StudyContext context, IReadOnlyList<FittedLine> now, IReadOnlyList<FittedLine> after, RetrofitOption? option) =>
        WithFactors(context, now, after, option).Result;

    /// <summary>The same with what gives the light of now.</summary>
    internal static (CropLightResult Result, EqualLuminaires EqualLight) WithFactors(
        StudyContext context, IReadOnlyList<FittedLine> now, IReadOnlyList<FittedLine> after, RetrofitOption? option)
    {
        var growing = context.Study.Areas.Where(area => area.GrowsCrop).ToList();
        var benches = growing.Select(area => new BenchVerdict(new(PresentBench.Of(context, area), after, option))).ToList();
        return (
            new([.. benches.SelectMany(bench => bench.Stages)], PeopleLightEvaluation.Of(context, now, after)),
            new(benches.SelectMany(bench => bench.EqualLight).ToDictionary(line => line.Line, line => line.Factor),
                [.. growing.Zip(benches).Where(each => each.Second.IsLeftOut).Select(each => each.First.Name)]));
    }
}

/// <summary>Luminaires that would give the light of now.</summary>
/// <param name="Factors">For each one of the option, by id of the line; lines without other products are left out. [unitless, 1 or more]</param>
/// <param name="Without">Names of the areas that the option changes but whose light is not known.</param>
internal sealed record EqualLuminaires(IReadOnlyDictionary<string, double> Factors, IReadOnlyList<string> Without);
