namespace RetrofitCalc.Engine.Billing;

/// <summary>All times of one billing month with the same energy charge and the same adjustments.</summary>
/// <param name="Month">Billing month. [0-based]</param>
/// <param name="Charge">Index of the energy charge.</param>
/// <param name="Adjustments">Indexes of the adjustments that apply.</param>
public sealed record TariffCell(int Month, int Charge, IReadOnlyList<int> Adjustments);
