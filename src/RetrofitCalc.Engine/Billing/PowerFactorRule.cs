using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Billing;

/// <summary>What a power-factor clause makes of demand (E-19).</summary>
internal static class PowerFactorRule
{
    private const double Point = 0.01;

    /// <summary>Factor from measured to billed demand. [kW/kW, or kVA/kW]</summary>
    public static double DemandFactor(PowerFactorClause? clause, DemandCharge charge, double? powerFactor)
    {
        if (clause is null or ReactiveAboveShare || !AppliesTo(clause, charge))
            return 1;
        var factor = Known(powerFactor);
        return clause switch
        {
            BilledInKilovoltAmperes => 1 / factor,
            TargetPowerFactor(var target) => Math.Max(1, target / factor),
            AddedPerPoint(var threshold, var share) => 1 + share * Math.Max(0, threshold - factor) / Point,
            _ => throw new NotSupportedException($"No rule for {clause.GetType().Name}."),
        };
    }

    /// <summary>Unit in which demand is billed.</summary>
    public static string DemandUnit(PowerFactorClause? clause, DemandCharge charge) =>
        clause is BilledInKilovoltAmperes && AppliesTo(clause, charge) ? "kVA" : "kW";

    /// <summary>Reactive over real power: tan φ. [kvar/kW]</summary>
    public static double ReactiveShare(double? powerFactor) => Math.Tan(Math.Acos(Known(powerFactor)));

    public static bool AppliesTo(PowerFactorClause clause, DemandCharge charge) => clause.On.Count == 0 || clause.On.Contains(charge.Name);

    private static double Known(double? powerFactor) =>
        powerFactor ?? throw new ArgumentException("A tariff with a power-factor clause needs the power factor of the meter.", nameof(powerFactor));
}
