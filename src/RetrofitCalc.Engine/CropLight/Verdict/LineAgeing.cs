using NodaTime;
using RetrofitCalc.Engine.Lifetimes;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>What wear, dirt and air leave of the rated light of one line, from some day on (E-77).</summary>
/// <remarks>
/// What hangs when the readings are taken has burned as long as the survey says, half of its interval where nobody has said, and stands in
/// the middle between two cleanings. What is newly fitted is new and clean. Later dirt is counted as just before a cleaning.
/// </remarks>
internal sealed class LineAgeing
{
    private const double DaysPerYear = 365.25;

    private readonly LumenMaintenance _maintenance;
    private readonly AreaLight _light;
    private readonly double _temperature;
    private readonly OperatingTime _burned;
    private readonly double _hoursPerYear;
    private readonly double _yearsSinceCleaning;

    private LineAgeing(FittedLine line, double hoursPerYear, OperatingTime? burned, bool isNew, Assumptions assumptions)
    {
        _maintenance = LumenMaintenance.Of(line);
        _light = line.Area.Light ?? new();
        _temperature = LightLoss.Of(line, OperatingTime.Zero, 0).Temperature;
        _hoursPerYear = hoursPerYear;
        _yearsSinceCleaning = isNew ? 0 : CleaningYears / 2;
        var life = LifeOf(line, hoursPerYear, assumptions);
        AgeKnown = isNew || burned is not null;
        _burned = isNew ? OperatingTime.Zero : burned ?? life * 0.5;
        var end = line.Fitting is BallastedFitting ? life.Hours : Math.Min(life.Hours, hoursPerYear * assumptions.StudyYears);
        EndYears = hoursPerYear > 0 ? Math.Max(0, end - _burned.Hours) / hoursPerYear : 0;
        AgeDoubt = AgeKnown ? 0 : (_maintenance.At(OperatingTime.Zero) - _maintenance.At(life)) / 2 / _maintenance.At(_burned);
        FadingDoubt = AgeKnown ? (1 - _maintenance.At(_burned)) / 2 / _maintenance.At(_burned) : 0;
    }

    /// <summary>What hangs today, from the day of the readings on.</summary>
    /// <param name="line">The line as it is.</param>
    /// <param name="operation">How it is used today.</param>
    /// <param name="read">Day of the readings; null for the start of the study.</param>
    /// <param name="assumptions">Policies.</param>
    public static LineAgeing Present(FittedLine line, LineOperation operation, LocalDate? read, Assumptions assumptions) =>
        new(line, operation.Hours.Hours, BurnedUntil(line.Line, operation, read ?? assumptions.Start), false, assumptions);

    /// <summary>What is newly fitted.</summary>
    /// <param name="line">The line after its measure.</param>
    /// <param name="operation">How it is used then.</param>
    /// <param name="assumptions">Length of the study.</param>
    public static LineAgeing New(FittedLine line, LineOperation operation, Assumptions assumptions) =>
        new(line, operation.Hours.Hours, OperatingTime.Zero, true, assumptions);

    /// <summary>Whether the hours burned are known.</summary>
    public bool AgeKnown { get; }

    /// <summary>How far light may be off for want of the lamps' age, either way. [unitless]</summary>
    public double AgeDoubt { get; }

    /// <summary>How far light may be off because lamps of known age fade otherwise than their sheet says: half of the fall, either way; common practice, no source. [unitless]</summary>
    public double FadingDoubt { get; }

    /// <summary>Until lamps, tubes or luminaires are due, or the study ends for tubes and luminaires. [years]</summary>
    public double EndYears { get; }

    /// <summary>Share of rated light that is left. [unitless, 0–1]</summary>
    /// <param name="years">Since the first day; not counted beyond <see cref="EndYears"/>. [years, 0 or more]</param>
    public double At(double years)
    {
        years = Math.Min(years, EndYears);
        var dirt = DirtDepreciation.At(_light, Math.Min(_yearsSinceCleaning + years, CleaningYears));
        return _maintenance.At(_burned + OperatingTime.FromHours(_hoursPerYear * years)) * dirt * _temperature;
    }

    private double CleaningYears => _light.CleaningMonths / 12.0;

    /// <summary>Interval of what gives light; where no life is known, the one its fall of light rests on.</summary>
    private static OperatingTime LifeOf(FittedLine line, double hoursPerYear, Assumptions assumptions)
    {
        var operation = new LineOperation(OperatingTime.FromHours(hoursPerYear), 365, hoursPerYear / 365);
        var clock = WearClocks.Of(line, operation, assumptions, Perturbation.None).FirstOrDefault(clock => clock.Part != Results.WearPart.Ballast);
        var known = LumenMaintenance.Of(line).Known;
        return clock?.Life ?? (line.Fitting is BallastedFitting ? known / LumenMaintenance.MeanLightAt : known);
    }

    private static OperatingTime? BurnedUntil(SurveyLine line, LineOperation operation, LocalDate day) =>
        line.BurnHours ?? (line.LampsInstalled is { } fitted
            ? operation.HoursBefore * (Math.Max(0, Period.DaysBetween(fitted, day)) / DaysPerYear)
            : (OperatingTime?)null);
}
