using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Survey.Grid;

/// <summary>A line's figures as the grid shows them.</summary>
public sealed record LineText(string Each, string Loss, string Total, string Evidence, bool FromMemory, string Source)
{
    public static LineText Of(LineFigures? figures, QuantityText text)
    {
        if (figures is not { PerLuminaire: var input } line) return new("not counted", "", "", "", false, "");
        return new(
            text.Number(input.Total.Watts),
            line.BallastLoss is { } loss ? text.Number(loss.Watts) : QuantityText.NotKnown,
            text.Number(line.Connected.Watts),
            input.Evidence.ToString().ToLowerInvariant(),
            input.Source.FromMemory && input.Evidence != EvidenceKind.Measured,
            input.Source.Source);
    }

    /// <summary>What follows the lamps in the name of a set-up: its ballasts.</summary>
    public static string Gear(string setUp) => setUp.IndexOf(", ", StringComparison.Ordinal) is var at and > 0 ? setUp[(at + 2)..] : "";
}
