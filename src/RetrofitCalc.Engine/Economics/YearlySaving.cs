using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Economics;

/// <summary>Bill and fuel saved in a year, at prices of the start.</summary>
/// <param name="FirstYear">In the first year after the change, when a ratchet still remembers the peaks before it.</param>
/// <param name="Steady">In every later year.</param>
internal readonly record struct YearlySaving(Money FirstYear, Money Steady);
