using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Shared.Fields;

namespace RetrofitCalc.Web.Features.Options;

/// <summary>What can be done on a line, as one chooses it from a list.</summary>
public enum MeasureKind
{
    Keep,
    Renew,
    DirectWire,
    NewLuminaire,
}

public static class MeasureKinds
{
    public static IReadOnlyList<Choice<MeasureKind>> All { get; } =
    [
        new(MeasureKind.Keep, "Keep as it is"), new(MeasureKind.Renew, "Renew like for like"),
        new(MeasureKind.DirectWire, "Direct-wire tubes"), new(MeasureKind.NewLuminaire, "New luminaire"),
    ];

    public static MeasureKind Of(Measure? measure) => measure switch
    {
        RenewLikeForLike => MeasureKind.Renew,
        DirectWire => MeasureKind.DirectWire,
        ReplaceLuminaire => MeasureKind.NewLuminaire,
        _ => MeasureKind.Keep,
    };

    /// <summary>Catalogue id of what is fitted; null when nothing new is chosen from it.</summary>
    public static string? Product(Measure? measure) => measure switch
    {
        DirectWire wire => wire.Tube,
        ReplaceLuminaire replace => replace.Luminaire,
        _ => null,
    };

    /// <summary>The same kind of measure with another product; what was typed about counts stays.</summary>
    public static Measure WithProduct(Measure measure, string product) => measure switch
    {
        DirectWire wire => wire with { Tube = product },
        ReplaceLuminaire replace => replace with { Luminaire = product },
        _ => measure,
    };
}
