namespace RetrofitCalc.Engine.Uncertainty;

/// <summary>Factors on uncertain inputs, applied inside the model itself. All 1 for the likely case.</summary>
/// <remarks>The whole model is evaluated again with these factors, bills and replacements included; nothing is linearised.</remarks>
public sealed record Perturbation
{
    /// <summary>The likely case.</summary>
    public static Perturbation None { get; } = new();

    /// <summary>Factor on input watts of ballasted set-ups that were not measured here. [unitless, above 0]</summary>
    public double ExistingWatts { get; init; } = 1;

    /// <summary>Factor on line watts of tubes and new luminaires. [unitless, above 0]</summary>
    public double ProposedWatts { get; init; } = 1;

    /// <summary>Factor on all prices of electricity. [unitless, above 0]</summary>
    public double ElectricityPrice { get; init; } = 1;

    /// <summary>Factor on hours lit; kilowatts stay. [unitless, above 0]</summary>
    public double Hours { get; init; } = 1;

    /// <summary>Factor on first cost before the incentive. [unitless, above 0]</summary>
    public double FirstCost { get; init; } = 1;

    /// <summary>Factor on lives of lamps and ballasts. [unitless, above 0]</summary>
    public double FluorescentLife { get; init; } = 1;

    /// <summary>Factor on lives of tubes and new luminaires. [unitless, above 0]</summary>
    public double ReplacementLife { get; init; } = 1;
}
