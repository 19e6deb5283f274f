using RetrofitCalc.Engine.Heat;

namespace RetrofitCalc.Engine.Operation;

/// <summary>One mode of one area, with its hours.</summary>
/// <param name="Area">Index among the lit areas.</param>
/// <param name="Mode">Season, stage, step and level.</param>
/// <param name="Season">Index of the season name in the site's list.</param>
/// <param name="Hours">Hours in the year. [h]</param>
/// <param name="CellHours">Hours in each month and energy charge, as the tariff calendar numbers them. [h]</param>
public sealed record Slot(int Area, LitMode Mode, int Season, double Hours, double[] CellHours)
{
    /// <summary>What the plant does about each kilowatt-hour of lighting: heat in the space times what follows it. [per kWh of lighting]</summary>
    public required PlantEffect Plant { get; init; }
}
