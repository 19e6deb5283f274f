using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Web.Features.Results.Figures;

/// <summary>Lines that share an existing set-up, summed.</summary>
/// <param name="After">Null when nothing is proposed.</param>
public sealed record WattsGroup(string Name, double Luminaires, Power Now, Power LossNow, Power? After, Power LossAfter)
{
    /// <summary>False when the loss of a line is not known; it is then missing from <see cref="LossNow"/>.</summary>
    public bool LossKnown { get; init; } = true;

    /// <summary>True when nothing changes on any of its lines.</summary>
    public bool Kept { get; init; }

    /// <summary>Largest first; what goes beyond <paramref name="most"/> is summed as one.</summary>
    public static IReadOnlyList<WattsGroup> Of(StudyResult result, int most)
    {
        var setUps = result.Study.Lines.ToDictionary(l => l.Id, l => l.SetUp);
        var names = result.Study.Catalogue.SetUps.ToDictionary(s => s.Id, s => s.Name);
        var after = result.Chosen?.After.Lines.ToDictionary(l => l.Line);
        var all = result.Now.Lines
            .GroupBy(line => setUps.GetValueOrDefault(line.Line) ?? "")
            .Select(g => Sum(names.GetValueOrDefault(g.Key, g.Key), [.. g], after))
            .OrderByDescending(g => g.Now).ToList();
        return all.Count <= most ? all : [.. all.Take(most - 1), Rest([.. all.Skip(most - 1)])];
    }

    private static WattsGroup Sum(string name, List<LineFigures> lines, Dictionary<string, LineFigures>? after)
    {
        var later = after is null ? null : lines.Select(line => after.GetValueOrDefault(line.Line)).OfType<LineFigures>().ToList();
        return new WattsGroup(name, lines.Sum(l => l.Luminaires), Total(lines, l => l.Connected), Total(lines, l => l.BallastLoss),
            later is null ? null : Total(later, l => l.Connected), later is null ? Power.Zero : Total(later, l => l.BallastLoss))
        {
            LossKnown = lines.All(l => l.BallastLoss is not null),
            Kept = later is not null && lines.All(l => after!.GetValueOrDefault(l.Line) is { } same && same.PerLuminaire == l.PerLuminaire && same.Connected == l.Connected),
        };
    }

    private static WattsGroup Rest(List<WattsGroup> rest) => new(
        $"{rest.Count} other set-ups", rest.Sum(g => g.Luminaires), rest.Aggregate(Power.Zero, (sum, g) => sum + g.Now),
        rest.Aggregate(Power.Zero, (sum, g) => sum + g.LossNow),
        rest.All(g => g.After is null) ? null : rest.Aggregate(Power.Zero, (sum, g) => sum + (g.After ?? Power.Zero)),
        rest.Aggregate(Power.Zero, (sum, g) => sum + g.LossAfter))
    {
        LossKnown = rest.All(g => g.LossKnown),
        Kept = rest.All(g => g.Kept),
    };

    private static Power Total(IEnumerable<LineFigures> lines, Func<LineFigures, Power?> part) =>
        lines.Aggregate(Power.Zero, (sum, line) => sum + (part(line) ?? Power.Zero));
}
