using NodaTime;
using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Lifetimes;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Light left of what is fitted on a line, at times that matter.</summary>
internal static class LampWear
{
    private const double DaysPerYear = 365.25;

    /// <summary>Just before lamps, tubes or luminaires are due and before the next cleaning: maintained light.</summary>
    public static LightLoss WhenDue(StudyContext context, FittedLine line) =>
        LightLoss.Of(line, Interval(context, line), CleaningYears(line));

    /// <summary>As the lamps are on a day, half way between two cleanings; lamps of unknown age are taken where mean light is read.</summary>
    public static LightLoss On(StudyContext context, FittedLine line, LocalDate? day) =>
        LightLoss.Of(line, Burned(context, line, day ?? context.Study.Assumptions.Start) ?? LumenMaintenance.Of(line).Known, CleaningYears(line) / 2);

    private static OperatingTime Interval(StudyContext context, FittedLine line) =>
        WearClocks.Of(line, context.Operations[line.Area.Id].LineOperation(1), context.Study.Assumptions, Perturbation.None)
            .FirstOrDefault(clock => clock.Part != WearPart.Ballast)?.Life ?? LumenMaintenance.Of(line).Known;

    private static OperatingTime? Burned(StudyContext context, FittedLine line, LocalDate day) => line.Line switch
    {
        { BurnHours: { } hours } => hours,
        { LampsInstalled: { } fitted } => context.Operations[line.Area.Id].LineOperation(1).Hours * (Math.Max(0, Period.DaysBetween(fitted, day)) / DaysPerYear),
        _ => null,
    };

    private static double CleaningYears(FittedLine line) => (line.Area.Light ?? new()).CleaningMonths / 12.0;
}
