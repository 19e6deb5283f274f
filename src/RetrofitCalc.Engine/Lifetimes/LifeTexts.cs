using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Lifetimes;

/// <summary>How lives were found, in plain words. Thousands are set apart by a space, which no reader takes for a decimal mark.</summary>
internal static class LifeTexts
{
    private const char NoBreakSpace = '\u00A0';

    public const string New = "New at the start.";

    public static string Lamp(OperatingTime rated, double hoursPerStart, StartMethod? start)
    {
        var method = start is { } known ? $"{Words(known)} start" : "start method not known, so the cautious row of the sheet";
        return $"Half the lamps have failed after {Hours(rated)}, lit about {Math.Round(hoursPerStart)} h at each start; {method}.";
    }

    /// <param name="assumptions">The policy.</param>
    /// <param name="rated">Life without it.</param>
    /// <param name="planned">Life under it.</param>
    public static string Relamping(Assumptions assumptions, OperatingTime rated, OperatingTime planned) => assumptions.RelampPolicy switch
    {
        RelampPolicy.Group when planned < rated => $"Changed together at {Percent(assumptions.GroupRelampShare)} of that.",
        RelampPolicy.Light when planned < rated => $"Changed together after {Hours(planned)}, when their light has fallen to {Percent(assumptions.LightRelampShare)} of that when new.",
        RelampPolicy.Light => $"Changed together then: their light has not fallen to {Percent(assumptions.LightRelampShare)} before.",
        RelampPolicy.Group => "Changed together then.",
        _ => "Changed one by one as they fail.",
    };

    public static string LampAge(SurveyLine line) => line switch
    {
        { BurnHours: { } burned } => $"They have burned {Hours(burned)} by the survey.",
        { LampsInstalled: not null } => "Hours burned so far follow from the day they were fitted.",
        _ => "Nobody has said how old they are: counted as new at the start.",
    };

    public static string Ballast(Ballast ballast, OperatingTime life, double? caseCelsius) =>
        (ballast.RatedCaseTemperature, caseCelsius) switch
        {
            (null, _) => $"Rated {Hours(life)}; the sheet gives no case temperature.",
            ({ } rated, null) => $"Rated {Hours(life)} at a case of {Math.Round(rated)} °C; the case temperature here is not known.",
            ({ } rated, { } here) when here > rated =>
                $"Rated {Hours(ballast.RatedLife!.Value)} at a case of {Math.Round(rated)} °C; {Hours(life)} at {Math.Round(here)} °C, halved for every 10 °C.",
            ({ } rated, { } here) => $"Rated {Hours(life)} at a case of {Math.Round(rated)} °C; not counted longer at {Math.Round(here)} °C.",
        };

    public static string BallastAge(SurveyLine line) => line.BallastYear is { } year
        ? $"In use since the middle of {year}."
        : "Nobody has said how old it is: counted as new at the start.";

    public static string Led(OperatingTime rated, OperatingTime quotable, OperatingTime? tested) => tested switch
    {
        null => $"Rated {Hours(rated)}; the sheet does not say how long it was tested, so the claim is unchecked. {New}",
        { } hours when quotable < rated => $"Rated {Hours(rated)}, but tested {Hours(hours)} only: counted as {Hours(quotable)}, six times the test. {New}",
        { } hours => $"Rated {Hours(rated)}, within six times the {Hours(hours)} tested. {New}",
    };

    private static string Percent(double share) => $"{Math.Round(share * 100)} %";

    private static string Hours(OperatingTime time)
    {
        var digits = Math.Round(time.Hours).ToString("F0", null);
        for (var at = digits.Length - 3; at > 0; at -= 3) digits = digits.Insert(at, NoBreakSpace.ToString());
        return digits + " h";
    }

    private static string Words(StartMethod method) => method switch
    {
        StartMethod.Instant => "instant",
        StartMethod.Rapid => "rapid",
        StartMethod.Programmed => "programmed",
        _ => "preheat",
    };
}
