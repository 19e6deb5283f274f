using NodaTime;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Billing;

/// <summary>What the meter shows for one month.</summary>
/// <param name="Month">Calendar month.</param>
/// <param name="Energy">Energy under each energy charge of the tariff, in its order; null where the charge is not in force that month.</param>
/// <param name="Peaks">Highest window average under each demand charge, in its order; null where the charge is not in force that month.</param>
public sealed record MeteredMonth(YearMonth Month, IReadOnlyList<Energy?> Energy, IReadOnlyList<Power?> Peaks);
