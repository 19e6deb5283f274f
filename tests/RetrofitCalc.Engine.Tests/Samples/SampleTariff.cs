using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.Samples;

internal static class SampleTariff
{
    private static readonly AnnualDate SummerStart = new(6, 1);
    private static readonly AnnualDate SummerEnd = new(9, 30);

    /// <summary>Summer and winter, on-peak and rest, two blocks in winter, two demand charges, a ratchet, a holiday.</summary>
    public static Tariff TimeOfUse => new()
    {
        Name = "Invented time of use",
        Fixed = [new("Customer charge", Money.FromUnits(35.5))],
        Holidays = [new FixedHoliday(new(7, 4))],
        Energy =
        [
            Charge("Summer on-peak", Summer([new(DayKind.Weekday, new(12, 0), new(20, 0))]), new EnergyBlock(null, Price(0.24))),
            Charge("Summer rest", Summer([]), new EnergyBlock(null, Price(0.11))),
            Charge("Winter", new() { Start = new(10, 1), End = new(5, 31) }, new(Energy.FromKilowattHours(2000), Price(0.14)), new EnergyBlock(null, Price(0.10))),
        ],
        Demand =
        [
            new() { Name = "Demand", Price = DemandPrice.FromPerKilowatt(9.5), Ratchet = new(0.8) },
            new() { Name = "Summer peak demand", Price = DemandPrice.FromPerKilowatt(6), WindowMinutes = 30, When = Summer([new(DayKind.Weekday, new(12, 0), new(20, 0))]) },
        ],
    };

    public static EnergyPrice Price(double perKilowattHour) => EnergyPrice.FromPerKilowattHour(perKilowattHour);

    public static EnergyCharge Charge(string name, TariffHours when, params EnergyBlock[] blocks) => new() { Name = name, When = when, Blocks = blocks };

    private static TariffHours Summer(IReadOnlyList<TariffWindow> windows) => new() { Start = SummerStart, End = SummerEnd, Windows = windows };
}
