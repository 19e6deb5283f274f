using NodaTime;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.Samples;

/// <summary>One billing month of a meter in plain numbers: January 2027 unless another is named. Adjustments see all the energy.</summary>
internal static class OneMonth
{
    public static MeteredMonth Meter(Tariff tariff, double?[] kilowattHours, double?[]? kilowatts = null, int month = 1) =>
        new(new YearMonth(2027, month), [.. kilowattHours.Select(e => e is { } kwh ? Energy.FromKilowattHours(kwh) : (Energy?)null)], Peaks(kilowatts ?? []))
        {
            Adjustments = [.. tariff.Adjustments.Select(_ => (Energy?)Energy.FromKilowattHours(kilowattHours.Sum() ?? 0))],
        };

    public static MonthlyBill Bill(Tariff tariff, MeteredMonth meter, double? powerFactor = null, double? earlierKilowatts = null) =>
        BillCalculation.Year(tariff, [meter], new(1, powerFactor, earlierKilowatts is { } earlier ? [meter with { Peaks = Peaks([.. meter.Peaks.Select(_ => (double?)earlier)]) }] : null)).Single();

    public static MonthlyBill Bill(Tariff tariff, double?[] kilowattHours, double?[]? kilowatts = null) => Bill(tariff, Meter(tariff, kilowattHours, kilowatts));

    private static IReadOnlyList<Power?> Peaks(double?[] kilowatts) => [.. kilowatts.Select(each => each is { } kw ? Power.FromKilowatts(kw) : (Power?)null)];
}
