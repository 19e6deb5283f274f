namespace RetrofitCalc.Engine.Heat;

/// <summary>What the plant does while lights burn.</summary>
public enum PlantMode
{
    /// <summary>The same in all hours: the method does not look at single hours.</summary>
    AllHours,
    /// <summary>It is warm enough outside that heat must be taken out by a machine.</summary>
    Cooling,
    /// <summary>It is cold enough outside that heat must be brought in.</summary>
    Heating,
    /// <summary>Heat of the lights neither needs a machine nor saves heating.</summary>
    Neither,
}

/// <summary>What follows each kilowatt-hour of the lights' heat in the space.</summary>
/// <param name="Electricity">Electricity of the plant; negative when more electric heating is saved than cooling used. [kWh/kWh]</param>
/// <param name="FuelTherms">Fuel that need not be burned; negative where cooling burns it. [therm/kWh]</param>
public readonly record struct PlantEffect(double Electricity, double FuelTherms)
{
    /// <summary>What follows where only a share of the heat stays in the space.</summary>
    public static PlantEffect operator *(PlantEffect effect, double share) => new(effect.Electricity * share, effect.FuelTherms * share);
}
