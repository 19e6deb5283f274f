using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Economics;

/// <summary>An option against keeping the lighting.</summary>
public static class OptionEvaluation
{
    /// <summary>Evaluates an option, its ranges included.</summary>
    /// <param name="context">The study's context.</param>
    /// <param name="now">The present lighting.</param>
    /// <param name="option">The option.</param>
    public static OptionResult Run(StudyContext context, LightingCase now, RetrofitOption option) =>
        throw new NotImplementedException();
}
