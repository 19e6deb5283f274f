using RetrofitCalc.Engine.Heat;

namespace RetrofitCalc.Web.Features.Plant;

/// <summary>A way in which nameplates rate plant; the study keeps the coefficient of performance.</summary>
/// <param name="Name">What stands on the nameplate.</param>
/// <param name="Least">Least rating.</param>
/// <param name="Most">Greatest rating.</param>
/// <param name="ToCop">From a rating to the coefficient of performance.</param>
/// <param name="FromCop">And back.</param>
/// <param name="Note">What to know about it.</param>
public sealed record RatingKind(string Name, double Least, double Most, Func<double, double> ToCop, Func<double, double> FromCop, string Note)
{
    private const double HighestSeer = 26;

    private static readonly RatingKind Cop = new("COP", 0.5, 15, cop => cop, cop => cop, "Coefficient of performance: heat moved for each unit of electricity; about 3 when nobody knows.");

    /// <summary>Ratings of cooling.</summary>
    public static IReadOnlyList<RatingKind> OfCooling { get; } =
    [
        Cop,
        new("EER", 1.7, 51, CoolingRatings.CopFromEer, CoolingRatings.EerFromCop, "Energy efficiency ratio, at design conditions."),
        new("SEER", 6, HighestSeer, seer => CoolingRatings.CopFromEer(CoolingRatings.EerFromSeer(seer)), cop => SeerFromEer(CoolingRatings.EerFromCop(cop)), "A season's average of residential plant, turned into EER by a fit; SEER2 is another rating."),
        new("kW/ton", 0.24, 7, CoolingRatings.CopFromKilowattsPerTon, KilowattsPerTonFromCop, "Power for one ton of refrigeration: the smaller, the better."),
    ];

    /// <summary>Ratings of electric heating.</summary>
    public static IReadOnlyList<RatingKind> OfHeating { get; } =
    [
        Cop with { Least = 1, Note = "1 for electric resistance, about 3 for a heat pump." },
        new("HSPF", 3.42, 51, HeatingRatings.CopFromHspf, CoolingRatings.EerFromCop, "A season's average of heat pumps; HSPF2 is another rating."),
    ];

    /// <summary>One rating is twelve thousand BTU an hour over the other, so the same division leads back.</summary>
    private static double KilowattsPerTonFromCop(double cop) => CoolingRatings.CopFromKilowattsPerTon(cop);

    /// <summary>The rating of a coefficient of performance; null where this kind of rating does not reach it.</summary>
    public double? Of(double cop) => FromCop(cop) is var rating && rating >= Least && rating <= Most ? Math.Round(rating, 3) : null;

    /// <summary>The fit read backwards; not a number past its top.</summary>
    private static double SeerFromEer(double eer)
    {
        const double a = 0.02, b = 1.12;
        return (b - Math.Sqrt(b * b - 4 * a * eer)) / (2 * a);
    }
}
