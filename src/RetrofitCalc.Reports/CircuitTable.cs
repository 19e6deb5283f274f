using RetrofitCalc.Engine.Circuits;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>Circuit loads for the electrician: what each line draws, now and after. Never what to wire.</summary>
public static class CircuitTable
{
    public const string Title = "Circuit loads, for the electrician";

    /// <summary>What the figures are, and who decides.</summary>
    public static IReadOnlyList<string> Cautions { get; } =
    [
        "Currents follow from the watts of this study, the supply voltage and the power factor; where the power factor is not known they are the least possible. All lighting counts as continuous: 125 % of its current, the same as 80 % of a circuit's rating.",
        "These figures are for talking to an electrician; they say nothing of what is on a circuit besides, of wire or of breakers. Local code, the inspector and a licensed electrician decide; rules and their section numbers differ from place to place and move between editions.",
    ];

    /// <summary>Two rows for each counted line, now and after; one where no option is looked at.</summary>
    /// <param name="result">The result.</param>
    /// <param name="option">The option looked at; null for the lighting as it is.</param>
    /// <param name="text">How figures are written.</param>
    public static ReportTable Of(StudyResult result, OptionResult? option, QuantityText text) => new("Currents line by line",
        [
            new("Line", 2.2), new("When", 0.8), new("Luminaires", 0.9, true), new("Supply, V", 0.8, true), new("Power factor", 0.9, true), new("One, A", 1, true),
            new("All, A", 1, true), new("All × 1.25, A", 1, true), new("Most on a 20 A circuit", 1, true),
        ],
        [.. CircuitLoads.Of(result, option).SelectMany(load => Rows(load, option, text))]);

    private static IEnumerable<ReportRow> Rows(CircuitLoad load, OptionResult? option, QuantityText text)
    {
        yield return Row(load.Line, "now", load.Now, text);
        if (option is not null) yield return Row(load.Line, "after", load.After, text);
    }

    private static ReportRow Row(SurveyLine line, string when, CircuitCurrent? current, QuantityText text)
    {
        var name = line.Name.Length > 0 ? line.Name : $"line {line.Id}";
        if (current is null) return new([name, when, .. Enumerable.Repeat(QuantityText.NotKnown, 7)]);
        var (least, most) = current.PowerFactor is null ? ("at least ", "at most ") : ("", "");
        return new([
            name, when, text.Count(current.Luminaires), text.Number(line.SupplyVolts!.Value),
            current.PowerFactor is { } factor ? text.Number(factor, 2) : QuantityText.NotKnown,
            least + text.Number(current.AmperesEach, 2), least + text.Number(current.Amperes, 1), least + text.Number(current.LeastRating, 1),
            current.MostOnOneCircuit is { } count ? most + text.Number(count) : QuantityText.DoesNotApply,
        ]);
    }
}
