using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Web.Features.Tariffs.Clauses;

/// <summary>Kinds of power-factor clause as a reader meets them on a bill.</summary>
public enum PowerFactorKind
{
    None,
    KilovoltAmperes,
    Target,
    PerPoint,
    Reactive,
}

/// <summary>Which kind a clause is, and a clause of a kind to start from.</summary>
public static class PowerFactorKinds
{
    public static PowerFactorKind Of(PowerFactorClause? clause) => clause switch
    {
        BilledInKilovoltAmperes => PowerFactorKind.KilovoltAmperes,
        TargetPowerFactor => PowerFactorKind.Target,
        AddedPerPoint => PowerFactorKind.PerPoint,
        ReactiveAboveShare => PowerFactorKind.Reactive,
        _ => PowerFactorKind.None,
    };

    public static PowerFactorClause? Start(PowerFactorKind kind, IReadOnlyList<string> on) => kind switch
    {
        PowerFactorKind.KilovoltAmperes => new BilledInKilovoltAmperes { On = on },
        PowerFactorKind.Target => new TargetPowerFactor(0.9) { On = on },
        PowerFactorKind.PerPoint => new AddedPerPoint(0.9, 0.01) { On = on },
        PowerFactorKind.Reactive => new ReactiveAboveShare(0.5, DemandPrice.Zero) { On = on },
        _ => null,
    };

    public static string Name(PowerFactorKind kind) => kind switch
    {
        PowerFactorKind.KilovoltAmperes => "demand billed in kVA",
        PowerFactorKind.Target => "demand raised below a target",
        PowerFactorKind.PerPoint => "a percentage for each point below",
        PowerFactorKind.Reactive => "kvar above a share of kW",
        _ => "no clause",
    };

    public static string Explained(PowerFactorKind kind) => kind switch
    {
        PowerFactorKind.KilovoltAmperes => "The bill counts kVA, which is kW divided by the power factor.",
        PowerFactorKind.Target => "Below the target, billed demand is kW times the target divided by the power factor. Above it nothing changes.",
        PowerFactorKind.PerPoint => "For each hundredth of power factor that is missing, billed demand grows by a percentage.",
        PowerFactorKind.Reactive => "Reactive demand (kvar) up to a share of the kW is free; what lies above has a price and a line of its own.",
        _ => "Most small tariffs have none. Look for kVA, kvar, reactive or power factor on the bill.",
    };
}
