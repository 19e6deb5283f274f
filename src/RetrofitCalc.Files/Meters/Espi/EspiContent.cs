using NodaTime;
using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Files.Meters.Espi;

/// <summary>What an ESPI file (NAESB REQ.21) holds.</summary>
/// <param name="Meters">Rows of readings to choose from.</param>
/// <param name="Bills">Amounts of bills the file states.</param>
/// <param name="StandardOffset">Standard time of the meter's place, ahead of UTC, as the file says; null when it does not. Readings are in UTC whatever it is.</param>
public sealed record EspiContent(IReadOnlyList<MeterSource> Meters, IReadOnlyList<EspiBill> Bills, Offset? StandardOffset);

/// <summary>A bill as the file states it.</summary>
/// <param name="Start">First instant of the billing period; null when not said.</param>
/// <param name="Length">Length of the billing period; null when not said.</param>
/// <param name="Amount">Amount billed for the last period; null when not said.</param>
/// <param name="Currency">ISO 4217 number of the currency; null when not said.</param>
public sealed record EspiBill(Instant? Start, Duration? Length, Money? Amount, int? Currency);
