using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Results;

/// <summary>The figures of one line in one state: inputs, products, and where the watts come from.</summary>
public sealed record LineTrace(string Line, string State, string Luminaires, string Watts, string Evidence, string Connected, string Hours, string Energy, string Cost)
{
    /// <summary>Lamps, ballasts or tubes, how long they last here, and how that was found.</summary>
    public required IReadOnlyList<string> Lives { get; init; }

    /// <summary>Each line as it is and, where it changes, as proposed.</summary>
    public static IReadOnlyList<LineTrace> Of(StudyResult result, QuantityText text)
    {
        var names = result.Study.Lines.ToDictionary(l => l.Id, l => l.Name.Length > 0 ? l.Name : l.Id);
        var after = result.Chosen?.After.Lines.ToDictionary(l => l.Line) ?? [];
        return [.. result.Now.Lines.SelectMany(now => Both(names.GetValueOrDefault(now.Line, now.Line), now, after.GetValueOrDefault(now.Line), text))];
    }

    private static IEnumerable<LineTrace> Both(string name, LineFigures now, LineFigures? after, QuantityText text)
    {
        yield return One(name, "now", now, text);
        if (after is not null && (after.PerLuminaire != now.PerLuminaire || after.Luminaires != now.Luminaires)) yield return One(name, "proposed", after, text);
    }

    private static LineTrace One(string name, string state, LineFigures line, QuantityText text) => new(
        name, state, text.Count(line.Luminaires), text.Number(line.PerLuminaire.Total.Watts, 1), Known(line.PerLuminaire),
        text.Number(line.Connected.Watts), text.Number(line.Hours.Hours), text.Number(line.Energy.KilowattHours), text.Money(line.Cost))
    {
        Lives = [.. line.Clocks.Select(clock => Life(clock, text))],
    };

    private static string Known(InputPower power) =>
        $"{power.Evidence.ToString().ToLowerInvariant()}{(power.Source.FromMemory ? ", from memory" : "")}{(power.Source.Kind == EvidenceKind.Unsourced ? "" : $": {power.Source.Source}")}";

    private static string Life(WearClock clock, QuantityText text)
    {
        var interval = clock.Interval is { } years ? $"every {text.Years(years)}" : "never worn out, as the light never burns";
        return $"{clock.Part} {interval} ({text.Hours(clock.Life)}): {clock.Basis}";
    }
}
