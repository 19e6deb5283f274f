using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Heat;
using RetrofitCalc.Engine.Lifetimes;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Cases;

/// <summary>Evaluates one state of the lighting over the calendar year of the start.</summary>
public static class CaseEvaluation
{
    /// <summary>Name of the present lighting.</summary>
    public const string Now = "Now";

    /// <summary>Evaluates one state of the lighting.</summary>
    /// <param name="context">The study's context.</param>
    /// <param name="name">Name of the case: "Now", or the option's.</param>
    /// <param name="measures">What is done, by id of the survey line; lines not named are kept.</param>
    /// <param name="costs">Rates of the option; null for the lighting kept as it is.</param>
    /// <param name="perturbation">Factors on uncertain inputs.</param>
    public static LightingCase Evaluate(
        StudyContext context, string name, IReadOnlyDictionary<string, Measure> measures, OptionCosts? costs, Perturbation perturbation)
    {
        var fitted = FittedLines.Of(context, measures, out _);
        var loads = CaseLines.Loads(context, fitted, perturbation);
        var load = new CaseLoad(context, loads, perturbation.Hours);
        var cells = load.CellKilowattHours();
        var bills = BillCalculation.Year(context.Study.Tariff, load.Metered(cells), perturbation.ElectricityPrice);
        var baseBills = BillCalculation.Year(context.Study.Tariff, load.MeteredBase(), perturbation.ElectricityPrice);
        var sums = new CaseSums(context, load, LightingCost.Of(bills, baseBills, cells, context.Load.Tariff));
        var lines = Lines(context, fitted, loads, sums, perturbation);
        ShareFigures[] areas = [.. AreaSums(context, loads, sums)];
        return new()
        {
            Name = name,
            Lines = lines,
            Areas = areas,
            Seasons = [.. Enumerable.Range(0, context.Load.SeasonNames.Count).Select(sums.Season)],
            Site = sums.Site(context.Study.Site.Name, areas),
            Bills = bills,
            Replacements = Replacements(context, fitted, lines, costs),
        };
    }

    /// <summary>Measures that do not fit their lines; such a line is kept as it is.</summary>
    /// <param name="context">The study's context.</param>
    /// <param name="measures">What is done, by id of the survey line.</param>
    public static IReadOnlyList<RefusedMeasure> Refusals(StudyContext context, IReadOnlyDictionary<string, Measure> measures)
    {
        FittedLines.Of(context, measures, out var refused);
        return refused;
    }

    private static LineFigures[] Lines(
        StudyContext context, IReadOnlyList<FittedLine> fitted, LineLoad[] loads, CaseSums sums, Perturbation perturbation)
    {
        LineOperation[] operations = [.. context.LitAreas.Select(area => area.LineOperation(perturbation.Hours))];
        var lines = new LineFigures[loads.Length];
        for (var i = 0; i < lines.Length; i++)
        {
            var operation = operations[context.Lines[i].Area];
            lines[i] = Line(context, i, loads[i], sums) with
            {
                Luminaires = fitted[i].Luminaires,
                Hours = operation.Hours,
                Starts = operation.Starts,
                Clocks = WearClocks.Of(fitted[i], operation, context.Study.Assumptions, perturbation),
            };
        }
        return lines;
    }

    private static LineFigures Line(StudyContext context, int index, LineLoad load, CaseSums sums)
    {
        var (energy, cost) = (0.0, 0.0);
        var slot = context.Load.FirstSlots[context.Lines[index].Area];
        foreach (var share in load.ModeShares)
        {
            energy += share * sums.HoursOf(slot);
            cost += share * sums.CostPerKilowatt(slot++);
        }
        return new()
        {
            Line = context.Lines[index].Fitted.Line.Id,
            Luminaires = 0,
            PerLuminaire = load.PerLuminaire,
            Connected = load.Connected,
            BallastLoss = load.BallastLoss,
            Hours = default,
            Starts = 0,
            Energy = Energy.FromKilowattHours(load.Connected.Kilowatts * energy),
            Cost = Money.FromUnits(load.Connected.Kilowatts * cost),
            Clocks = [],
        };
    }

    private static IEnumerable<ShareFigures> AreaSums(StudyContext context, LineLoad[] loads, CaseSums sums)
    {
        var connected = new Power[context.LitAreas.Count];
        var losses = new Power[context.LitAreas.Count];
        for (var i = 0; i < loads.Length; i++)
        {
            connected[context.Lines[i].Area] += loads[i].Connected;
            losses[context.Lines[i].Area] += loads[i].BallastLoss ?? Power.Zero;
        }
        var index = 0;
        foreach (var area in context.Study.Areas)
        {
            var lit = index < context.LitAreas.Count && context.LitAreas[index].Area == area ? index++ : -1;
            var figures = sums.Area(area, lit);
            yield return lit < 0 ? figures : figures with
            {
                Connected = connected[lit],
                BallastLoss = losses[lit],
                Heat = LightingGain.FromInput(connected[lit], area.HeatInSpace),
            };
        }
    }

    private static List<ReplacementEvent> Replacements(
        StudyContext context, IReadOnlyList<FittedLine> fitted, LineFigures[] lines, OptionCosts? costs)
    {
        var events = new List<ReplacementEvent>();
        for (var i = 0; i < lines.Length; i++)
            events.AddRange(ReplacementCalendar.Of(fitted[i], lines[i].Clocks, context.Study.Assumptions, costs));
        events.Sort((a, b) => a.YearsFromStart.CompareTo(b.YearsFromStart));
        return events;
    }
}
