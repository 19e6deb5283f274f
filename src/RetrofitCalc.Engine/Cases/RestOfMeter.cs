namespace RetrofitCalc.Engine.Cases;

/// <summary>Everything on the meter but lighting and its plant: the metered load less the present lighting and plant, or the stated base load (E-23).</summary>
internal sealed class RestOfMeter
{
    /// <summary>Takes the present lighting off the meter.</summary>
    /// <param name="context">The study's context.</param>
    /// <param name="present">The present lighting.</param>
    public RestOfMeter(StudyContext context, CaseLoad present)
    {
        var (load, baseKilowatts) = (context.Load, context.Study.Site.BaseLoad.Kilowatts);
        CellKilowattHours = load.MeteredCells is { } metered
            ? [.. metered.Zip(present.CellKilowattHours, (whole, lighting) => whole - lighting)]
            : [.. load.Tariff.CellHours.Select(hours => hours * baseKilowatts)];
        StateKilowatts = [.. present.StateKilowatts.Select(lighting => load.Meter is null ? baseKilowatts : -lighting)];
    }

    /// <summary>Energy in each cell of the tariff calendar; below zero where the survey exceeds the meter. [kWh]</summary>
    public double[] CellKilowattHours { get; }

    /// <summary>Load in each state of the site on top of what demand windows hold as metered. [kW]</summary>
    public double[] StateKilowatts { get; }
}
