using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Luminaires;

/// <summary>What the ballasts of one position draw over a whole line, lamps out counted.</summary>
/// <param name="FullBallasts">Ballasts' worth of full power still drawn. [count, may be a fraction]</param>
/// <param name="DarkBallasts">Ballasts energised with every lamp dark. [count]</param>
/// <param name="WorkingLamps">Lamps that give light. [count]</param>
public readonly record struct FoundPosition(double FullBallasts, int DarkBallasts, int WorkingLamps);

/// <summary>Spreads the lamps found out over the ballasts of a line (E-03).</summary>
/// <remarks>
/// A series ballast goes dark with all its lamps and draws its dark power. On a parallel ballast the other lamps go on, each drawing
/// its share. A dead ballast draws nothing. Where the catalogue does not say how lamps are joined, instant start means parallel and
/// everything else series (common practice, no source).
/// </remarks>
public static class LampsOut
{
    /// <summary>Power a magnetic ballast draws with its lamps removed, when its row does not say: about 4 W (trade ballast notes).</summary>
    public static Power MagneticDarkPower { get; } = Power.FromWatts(4);

    /// <summary>Each position of the set-up, over the whole line.</summary>
    /// <param name="line">The line, with its count.</param>
    /// <param name="fitting">What is fitted.</param>
    public static IReadOnlyList<FoundPosition> Found(SurveyLine line, BallastedFitting fitting)
    {
        var positions = fitting.SetUp.Ballasts;
        var luminaires = line.Count ?? 0;
        var dead = Spread(line.DeadBallasts ?? 0, [.. positions.Select(_ => 1)]);
        var onDead = positions.Zip(dead, (position, d) => position.LampsDriven * d).Sum();
        var outs = Spread(Math.Max(0, (line.LampsOut ?? 0) - onDead), [.. positions.Select(p => p.LampsDriven)]);
        return [.. positions.Select((position, i) =>
            FoundAt(position.LampsDriven, Math.Max(0, luminaires - dead[i]), outs[i], IsSeries(fitting.Ballasts[i])))];
    }

    /// <summary>Power of one ballast energised with every lamp dark; zero when nothing is known.</summary>
    /// <param name="ballast">The ballast; null when nobody has looked inside.</param>
    public static Power DarkPower(Ballast? ballast) =>
        ballast?.LampsOutPower ?? (ballast?.Technology == BallastTechnology.Magnetic ? MagneticDarkPower : Power.Zero);

    private static bool IsSeries(Ballast? ballast) => ballast switch
    {
        null => false,
        { Circuit: { } circuit } => circuit == LampCircuit.Series,
        _ => ballast.StartMethod != StartMethod.Instant,
    };

    private static FoundPosition FoundAt(int lampsDriven, int ballasts, int lampsOut, bool series)
    {
        lampsOut = Math.Min(lampsOut, lampsDriven * ballasts);
        if (series)
        {
            var dark = (lampsOut + lampsDriven - 1) / lampsDriven;
            return new(ballasts - dark, dark, (ballasts - dark) * lampsDriven);
        }
        // Lamps fail here and there: a parallel ballast is wholly dark only when fewer lamps work than there are ballasts.
        var working = lampsDriven * ballasts - lampsOut;
        return new(working / (double)lampsDriven, Math.Max(0, ballasts - working), working);
    }

    /// <summary>Shares a count out in proportion to weights, whole numbers, the remainder to the first positions.</summary>
    private static int[] Spread(int count, int[] weights)
    {
        var total = weights.Sum();
        int[] parts = [.. weights.Select(weight => (int)((long)count * weight / total))];
        for (var i = 0; i < parts.Length && parts.Sum() < count; i++)
            parts[i]++;
        return parts;
    }
}
