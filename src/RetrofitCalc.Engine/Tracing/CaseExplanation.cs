using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Heat;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Tracing;

/// <summary>Runs the functions behind one figure with a recorder.</summary>
internal static class CaseExplanation
{
    public static void Record(CasePlan plan, ExplainedFigure figure, string? line, Trace trace)
    {
        if (line is null)
            RecordSite(plan, figure, trace);
        else
            RecordLine(plan, figure, line, trace);
    }

    private static void RecordLine(CasePlan plan, ExplainedFigure figure, string id, Trace trace)
    {
        var index = plan.Fitted.Index().Where(fitted => fitted.Item.Line.Id == id).Select(fitted => fitted.Index).DefaultIfEmpty(-1).First();
        if (index < 0)
            throw new ArgumentException($"Line {id} is not counted.", nameof(id));
        var counted = plan.Context.Lines[index];
        var lineTrace = new Trace();
        var load = CaseLines.Load(plan.Context, counted, plan.Fitted[index], lineTrace);
        // Parts lead to the figure only where better evidence did not replace them.
        if (load.PerLuminaire.Evidence == EvidenceKind.Computed)
            foreach (var step in lineTrace.Steps.SkipLast(1))
                trace.Add(step);
        trace.Add("Input of one luminaire", $"best evidence: {EvidenceOf(load)}", [], new("P_in", load.PerLuminaire.Total.Watts, "W"), load.PerLuminaire.Source.Source);
        if (figure == ExplainedFigure.InputPower)
            return;
        trace.Add(lineTrace.Steps[^1]);
        if (figure == ExplainedFigure.Heat)
            LightingGain.FromInput(load.Connected, counted.Fitted.Area.HeatInSpace, trace);
        else if (figure is ExplainedFigure.YearlyEnergy or ExplainedFigure.YearlyCost)
            RecordYear(plan, figure, load, counted.Area, trace);
    }

    private static void RecordYear(CasePlan plan, ExplainedFigure figure, LineLoad load, int area, Trace trace)
    {
        var (energy, cost) = plan.Sums(Perturbation.None).Sums.EnergyAndCost(load, area, trace);
        var result = figure == ExplainedFigure.YearlyEnergy ? new TraceValue("E", energy.KilowattHours, "kWh") : new("cost", cost.Units, "currency");
        trace.Add("Sum over seasons and stages", "sum of the steps above", [], result);
    }

    private static void RecordSite(CasePlan plan, ExplainedFigure figure, Trace trace)
    {
        if (figure == ExplainedFigure.YearlyCost)
        {
            plan.Totals(Perturbation.None, trace);
            return;
        }
        var (unit, value) = figure switch
        {
            ExplainedFigure.Connected => ("W", (Func<ShareFigures, double>)(share => share.Connected.Watts)),
            ExplainedFigure.Heat => ("BTU/h", share => share.Heat.BtuPerHour),
            ExplainedFigure.YearlyEnergy => ("kWh", share => share.Lighting.KilowattHours),
            _ => throw new ArgumentException("The input of one luminaire needs a line.", nameof(figure)),
        };
        var lighting = plan.Evaluate(Perturbation.None);
        trace.Add("The whole site", "sum of the areas", [.. lighting.Areas.Select(area => new TraceValue(area.Name, value(area), unit))], new("site", value(lighting.Site), unit));
    }

    private static string EvidenceOf(LineLoad load) => load.PerLuminaire.Evidence switch
    {
        EvidenceKind.Measured => "read at the luminaire",
        EvidenceKind.Tested => "tested or published for this combination",
        EvidenceKind.Computed => "computed from its parts, the ballasts added up",
        EvidenceKind.Nameplate => "nameplate",
        _ => "catalogue value",
    };
}
