using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Light.People;

/// <summary>Sentences about light for people.</summary>
public static class PeopleSentences
{
    /// <summary>What they have and would have against what is wanted.</summary>
    /// <param name="after">The same area after the option asked for; null without one.</param>
    public static string Finding(TaskLight now, TaskLight? after, QuantityText text)
    {
        var wanted = $"{text.Number(now.Wanted.Lux)} lx wanted";
        if (now.Now is not { } present) return $"Light for people is not known here; {wanted}.";
        var today = $"{text.Number(present.Lux)} lx now";
        if (after is { After: null }) return $"{today}, {wanted}; light after the change is not known.";
        if (after?.After is not { } then) return $"{today}, {wanted}: {Judged(present.Lux, now.Wanted.Lux)}.";
        return $"{today}, {text.Number(then.Lux)} lx after the change, {wanted}: {Judged(then.Lux, now.Wanted.Lux)}.";
    }

    private static string Judged(double lux, double wanted) => lux >= wanted ? "enough" : "too little";
}
