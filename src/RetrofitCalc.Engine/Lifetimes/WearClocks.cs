using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Lifetimes;

/// <summary>Clocks of what wears out on a line.</summary>
public static class WearClocks
{
    /// <summary>The clocks of one line.</summary>
    /// <param name="fitted">The line and what is fitted.</param>
    /// <param name="operation">How it is used.</param>
    /// <param name="assumptions">Policies.</param>
    /// <param name="perturbation">Factors on uncertain inputs.</param>
    public static IReadOnlyList<WearClock> Of(
        FittedLine fitted, LineOperation operation, Assumptions assumptions, Perturbation perturbation) => [];
}
