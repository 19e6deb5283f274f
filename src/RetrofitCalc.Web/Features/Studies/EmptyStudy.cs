using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Studies;

/// <summary>A study nobody has answered anything in yet.</summary>
public static class EmptyStudy
{
    public static Study Named(string name) => new()
    {
        Name = name,
        Site = new Site { Name = name },
        Areas = [new Area { Id = "area-1", Name = "First area", Weekly = new WeeklySchedule { Hours = [OfficeHours] } }],
        Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.15)),
    };

    /// <summary>A placeholder the schedules page says is one: nobody has given the hours.</summary>
    private static WeeklyHours OfficeHours { get; } = new(
        [IsoDayOfWeek.Monday, IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Friday],
        new LocalTime(8, 0), new LocalTime(18, 0));
}
