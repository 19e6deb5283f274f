using RetrofitCalc.Engine.Quantities;

namespace RetrofitCalc.Engine.Operation;

/// <summary>How one line is used in a year.</summary>
/// <param name="Hours">Hours lit in the year, any step.</param>
/// <param name="Starts">Times switched on in the year. [count]</param>
/// <param name="HoursPerStart">Hours over starts; for lights never switched off, all the hours of the year. [h]; zero when never lit.</param>
public sealed record LineOperation(OperatingTime Hours, double Starts, double HoursPerStart)
{
    /// <summary>Hours lit in a year until the start of the study, by which what hangs now has aged.</summary>
    public OperatingTime HoursBefore { get; init; } = Hours;
}
