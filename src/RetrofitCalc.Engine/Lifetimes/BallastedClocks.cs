using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Lifetimes;

/// <summary>The lamp clock and the ballast clock of a ballasted line.</summary>
internal static class BallastedClocks
{
    private const double DaysPerYear = 365.25;

    public static IReadOnlyList<WearClock> Of(FittedLine fitted, BallastedFitting fitting, ClockSetting setting)
    {
        var lamp = LampClock(fitted, fitting, setting);
        var ballast = BallastClock(fitted, fitting, setting);
        return (lamp, ballast) switch
        {
            ({ } l, { } b) => [l, b],
            ({ } l, null) => [l],
            (null, { } b) => [b],
            _ => [],
        };
    }

    private static WearClock? LampClock(FittedLine fitted, BallastedFitting fitting, ClockSetting setting)
    {
        var start = fitted.Line.StartMethod ?? FirstKnown(fitting.Ballasts)?.StartMethod;
        var perStart = setting.Operation.HoursPerStart;
        if (LampLives.At(fitting.Lamp.Lives, start, perStart) is not { } rated) return null;
        var planned = RelampRules.OfLamps(fitted, rated, setting.Assumptions);
        var life = planned * setting.Perturbation.FluorescentLife;
        var age = fitting.Renewed ? OperatingTime.Zero : LampAge(fitted.Line, setting);
        var basis = setting.WantsTexts
            ? LifeTexts.Lamp(rated, perStart, LampLives.Names(fitting.Lamp.Lives, start) ? start : null) + " " +
              LifeTexts.Relamping(setting.Assumptions, rated, planned) + " " + (fitting.Renewed ? LifeTexts.New : LifeTexts.LampAge(fitted.Line))
            : "";
        return Clock(WearPart.Lamp, life, age, setting, basis);
    }

    /// <summary>A luminaire's ballasts share one clock, that of the one with the shortest life: they are changed in one visit.</summary>
    private static WearClock? BallastClock(FittedLine fitted, BallastedFitting fitting, ClockSetting setting)
    {
        var temperature = fitted.Area.BallastCaseTemperature;
        if (Shortest(fitting.Ballasts, temperature) is not { } ballast) return null;
        var life = LifeOf(ballast, temperature);
        var age = fitting.Renewed ? OperatingTime.Zero : BallastAge(fitted.Line, setting);
        var basis = setting.WantsTexts
            ? LifeTexts.Ballast(ballast, life, temperature) + " " +
              (fitting.Renewed ? LifeTexts.New : LifeTexts.BallastAge(fitted.Line))
            : "";
        return Clock(WearPart.Ballast, life * setting.Perturbation.FluorescentLife, age, setting, basis);
    }

    private static Ballast? FirstKnown(IReadOnlyList<Ballast?> ballasts)
    {
        foreach (var ballast in ballasts)
            if (ballast is not null) return ballast;
        return null;
    }

    private static Ballast? Shortest(IReadOnlyList<Ballast?> ballasts, double? caseCelsius)
    {
        Ballast? shortest = null;
        foreach (var ballast in ballasts)
            if (ballast?.RatedLife is not null && (shortest is null || LifeOf(ballast, caseCelsius) < LifeOf(shortest, caseCelsius)))
                shortest = ballast;
        return shortest;
    }

    private static OperatingTime LifeOf(Ballast ballast, double? caseCelsius) =>
        ballast.RatedCaseTemperature is { } rated && caseCelsius is { } here
            ? RatedLives.BallastAt(ballast.RatedLife!.Value, rated, here)
            : ballast.RatedLife!.Value;

    private static WearClock Clock(WearPart part, OperatingTime life, OperatingTime age, ClockSetting setting, string basis)
    {
        var remaining = age < life ? OperatingTime.FromHours(life.Hours - age.Hours) : OperatingTime.Zero;
        var hours = setting.Operation.Hours;
        return new WearClock(part, life, RatedLives.Years(life, hours), RatedLives.Years(remaining, hours), basis);
    }

    private static OperatingTime LampAge(SurveyLine line, ClockSetting setting) =>
        line.BurnHours ?? (line.LampsInstalled is { } day ? BurnedSince(day, setting) : OperatingTime.Zero);

    private static OperatingTime BallastAge(SurveyLine line, ClockSetting setting) =>
        line.BallastYear is { } year ? BurnedSince(new LocalDate(year, 7, 1), setting) : OperatingTime.Zero;

    private static OperatingTime BurnedSince(LocalDate day, ClockSetting setting) =>
        setting.Operation.HoursBefore * (Math.Max(0, Period.DaysBetween(day, setting.Assumptions.Start)) / DaysPerYear);
}
