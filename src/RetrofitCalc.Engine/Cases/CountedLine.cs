using RetrofitCalc.Engine.Luminaires;

namespace RetrofitCalc.Engine.Cases;

/// <summary>A survey line that can be counted, as it is now.</summary>
/// <param name="Fitted">The line with its existing set-up.</param>
/// <param name="Area">Index of its area among the lit areas.</param>
/// <param name="Model">Its set-up's power.</param>
/// <param name="Load">What it draws now, as the baseline says.</param>
public sealed record CountedLine(FittedLine Fitted, int Area, SetUpModel Model, LineLoad Load);
