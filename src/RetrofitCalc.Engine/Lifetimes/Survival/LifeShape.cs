using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Engine.Lifetimes.Survival;

/// <summary>How closely parts of one kind fail together, and how that is known.</summary>
/// <param name="Shape">Weibull shape. [unitless]</param>
/// <param name="Source">Where it comes from.</param>
public sealed record LifeShape(double Shape, Provenance Source)
{
    private static readonly LifeShape Lamp = new(6, new Provenance(EvidenceKind.Practice,
        "90 to 95 % of lamps left at 70 % of rated life asks for a shape of 5.3 to 7.3 (mortality curve of the IES Lighting Handbook, S-91)", FromMemory: true));

    private static readonly LifeShape Electronics = new(3, new Provenance(EvidenceKind.Practice,
        "Common practice, no source: early and late failures lie wide apart where a capacitor wears out"));

    /// <summary>The shape taken for a part until the site knows better.</summary>
    /// <param name="part">Lamp, ballast, tube or luminaire.</param>
    /// <remarks>
    /// Lamps 6: then 7.8 % have failed at 70 % of rated life, 71 % fail between 80 and 120 % of it ("mostly", S-91).
    /// Ballasts, tubes and luminaires 3: then 21 % have failed at 70 % and 19 % last beyond 130 %. The rated life of a tube is often
    /// that of its light and not of its driver; its clock says which.
    /// </remarks>
    public static LifeShape Of(WearPart part) => part == WearPart.Lamp ? Lamp : Electronics;
}
