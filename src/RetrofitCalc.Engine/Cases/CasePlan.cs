using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Heat;
using RetrofitCalc.Engine.Lifetimes;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tracing;
using RetrofitCalc.Engine.Uncertainty;

namespace RetrofitCalc.Engine.Cases;

/// <summary>One state of the lighting, its lines resolved once, to be evaluated under any factors on uncertain inputs.</summary>
public sealed class CasePlan
{
    private readonly StudyContext _context;
    private readonly string _name;
    private readonly OptionCosts? _costs;
    private readonly LineLoad[] _loads;
    private readonly SlotLoads _slots;
    private readonly bool _isPresent;
    private readonly Recent<(double Hours, double FluorescentLife, double ReplacementLife), IReadOnlyList<Money>> _replacements;

    /// <summary>Resolves the lines.</summary>
    /// <param name="context">The study's context.</param>
    /// <param name="name">Name of the case: "Now", or the option's.</param>
    /// <param name="measures">What is done, by id of the survey line; lines not named are kept.</param>
    /// <param name="costs">Rates of the option; null for the lighting kept as it is.</param>
    public CasePlan(StudyContext context, string name, IReadOnlyDictionary<string, Measure> measures, OptionCosts? costs)
    {
        (_context, _name, _costs, _replacements) = (context, name, costs, NewReplacements());
        Fitted = FittedLines.Of(context, measures, out var refused);
        Refused = refused;
        _loads = CaseLines.Loads(context, Fitted);
        _slots = new(context, Fitted, _loads, [.. context.Lines.Select(line => line.Area)]);
        _isPresent = context.IsLitAsToday && Fitted.SequenceEqual(context.Lines.Select(line => line.Fitted), ReferenceEqualityComparer.Instance);
    }

    private CasePlan(CasePlan like, IReadOnlyList<FittedLine> fitted)
    {
        (_context, _name, _costs, Fitted, Refused, _replacements) = (like._context, like._name, like._costs, fitted, like.Refused, NewReplacements());
        _loads = CaseLines.Loads(_context, Fitted);
        _slots = new(_context, Fitted, _loads, [.. _context.Lines.Select(line => line.Area)]);
    }

    /// <summary>The same with more or fewer luminaires on some lines.</summary>
    /// <param name="factors">Luminaires over those of this plan, by id of the line; lines not named stay. [unitless, above 0]</param>
    public CasePlan WithLuminaires(IReadOnlyDictionary<string, double> factors) =>
        new(this, [.. Fitted.Select(line => factors.TryGetValue(line.Line.Id, out var factor) ? line with { Luminaires = line.Luminaires * factor } : line)]);

    /// <summary>Connected load of all counted lines, likely case.</summary>
    public Power Connected => _loads.Aggregate(Power.Zero, (sum, load) => sum + load.Connected);

    /// <summary>The lighting after an option, its stages lit as it says.</summary>
    /// <param name="context">The context of the study as it is.</param>
    /// <param name="option">The option.</param>
    public static CasePlan After(StudyContext context, RetrofitOption option) =>
        new(context.After(option), option.Name, option.Measures.ToDictionary(measure => measure.Line, measure => measure.Measure), option.Costs);

    /// <summary>What is fitted on each counted line.</summary>
    public IReadOnlyList<FittedLine> Fitted { get; }

    /// <summary>Measures that do not fit their lines; such a line is kept as it is.</summary>
    public IReadOnlyList<RefusedMeasure> Refused { get; }

    /// <summary>Evaluates the case in full.</summary>
    /// <param name="perturbation">Factors on uncertain inputs.</param>
    public LightingCase Evaluate(Perturbation perturbation)
    {
        var (sums, bills) = Sums(perturbation);
        var lines = Lines(sums, perturbation);
        ShareFigures[] areas = [.. AreaSums(sums, perturbation)];
        return new()
        {
            Name = _name,
            Lines = lines,
            Areas = areas,
            Seasons = [.. Enumerable.Range(0, _context.Load.SeasonNames.Count).Select(sums.Season)],
            Site = sums.Site(_context.Study.Site.Name, areas),
            Bills = bills.Steady,
            Peaks = bills.Metered.Peaks,
            MeterEnergy = bills.Metered.Energy,
            Replacements = [.. lines.SelectMany((line, i) => ReplacementCalendar.Of(Fitted[i], line.Clocks, _context.Study.Assumptions, _costs)).OrderBy(due => due.YearsFromStart)],
        };
    }

    internal (CaseSums Sums, CaseBills Bills) Sums(Perturbation perturbation)
    {
        var load = LoadUnder(perturbation);
        var bills = new CaseBills(_context, load, perturbation);
        return (new(_context, load, LightingCost.Of(bills.Steady, bills.Rest, load.CellKilowattHours, _context.Load.Tariff)), bills);
    }

    /// <summary>Bills of the first year after the present lighting, likely case.</summary>
    internal IReadOnlyList<MonthlyBill> FirstYearBills() =>
        new CaseBills(_context, LoadUnder(Perturbation.None), Perturbation.None).FirstYear;

    internal StudyContext Context => _context;

    /// <summary>The sums alone, by the same bills and clocks: what ranges are made of.</summary>
    /// <param name="perturbation">Factors on uncertain inputs.</param>
    /// <param name="trace">Recorder; null when nobody asks.</param>
    public CaseTotals Totals(Perturbation perturbation, Trace? trace = null)
    {
        var load = LoadUnder(perturbation);
        var bills = new CaseBills(_context, load, perturbation);
        var (whole, rest) = (CaseBills.Total(bills.Steady), CaseBills.Total(bills.Rest));
        var fuel = load.FuelSaved;
        var cost = whole - rest - fuel;
        trace?.Add("Yearly cost of the lighting", "cost = bill(whole meter) − bill(without lighting and plant) − fuel saved (E-09)",
            [new("bill of the whole meter", whole.Units, "currency"), new("bill without lighting and plant", rest.Units, "currency"), new("fuel saved", fuel.Units, "currency")],
            new("cost", cost.Units, "currency"), _context.Study.Tariff.Source.Source);
        return new(cost, CaseBills.Total(bills.FirstYear) - rest - fuel, load.Lighting, _replacements.Of((perturbation.Hours, perturbation.FluorescentLife, perturbation.ReplacementLife)));
    }

    /// <summary>The present lighting is worked out once for itself and for what else is on the meter.</summary>
    private CaseLoad LoadUnder(Perturbation perturbation) =>
        _isPresent ? _context.PresentUnder(perturbation).Lighting : new(_context, _slots, perturbation);

    private LineOperation[] Operations(double hoursFactor) => [.. _context.LitAreas.Select((area, index) =>
        area.LineOperation(hoursFactor) with { HoursBefore = _context.LitAreas[_context.TodayOf(index)].LineOperation(hoursFactor).Hours })];

    private LineFigures[] Lines(CaseSums sums, Perturbation perturbation)
    {
        var operations = Operations(perturbation.Hours);
        var lines = new LineFigures[_loads.Length];
        for (var i = 0; i < lines.Length; i++)
        {
            var area = _context.Lines[i].Area;
            var load = CaseLines.Scaled(_loads[i], SlotLoads.Factor(Fitted[i], perturbation));
            var (energy, cost) = sums.EnergyAndCost(load, area);
            lines[i] = new()
            {
                Line = Fitted[i].Line.Id,
                Luminaires = Fitted[i].Luminaires,
                PerLuminaire = load.PerLuminaire,
                Connected = load.Connected,
                BallastLoss = load.BallastLoss,
                Hours = operations[area].Hours,
                Starts = operations[area].Starts,
                Energy = energy,
                Cost = cost,
                Clocks = WearClocks.Of(Fitted[i], operations[area], _context.Study.Assumptions, perturbation),
            };
        }
        return lines;
    }

    private Recent<(double Hours, double FluorescentLife, double ReplacementLife), IReadOnlyList<Money>> NewReplacements() =>
        new(key => ReplacementsByYear(new() { Hours = key.Hours, FluorescentLife = key.FluorescentLife, ReplacementLife = key.ReplacementLife }));

    private IReadOnlyList<Money> ReplacementsByYear(Perturbation perturbation)
    {
        var years = new Money[_context.Study.Assumptions.StudyYears];
        var operations = Operations(perturbation.Hours);
        for (var i = 0; i < Fitted.Count; i++)
        {
            var clocks = WearClocks.Of(Fitted[i], operations[_context.Lines[i].Area], _context.Study.Assumptions, perturbation);
            ReplacementCalendar.AddTo(years, Fitted[i], clocks, _context.Study.Assumptions, _costs);
        }
        return years;
    }

    private static ShareFigures WithPower(ShareFigures figures, AreaOperation area, Power connected, Power loss)
    {
        var heat = LightingGain.FromInput(connected, area.Area.HeatInSpace);
        return figures with { Connected = connected, BallastLoss = loss, Heat = heat, MoisturePerHour = Moisture.KilogramsPerHour(heat * area.Plant.LatentShare) };
    }

    private IEnumerable<ShareFigures> AreaSums(CaseSums sums, Perturbation perturbation)
    {
        var connected = new Power[_context.LitAreas.Count];
        var losses = new Power[_context.LitAreas.Count];
        for (var i = 0; i < _loads.Length; i++)
        {
            var factor = SlotLoads.Factor(Fitted[i], perturbation);
            connected[_context.Lines[i].Area] += _loads[i].Connected * factor;
            losses[_context.Lines[i].Area] += (_loads[i].BallastLoss ?? Power.Zero) * factor;
        }
        var index = 0;
        foreach (var area in _context.Study.Areas)
        {
            var lit = index < connected.Length && _context.LitAreas[index].Area == area ? index++ : -1;
            var figures = sums.Area(area, lit);
            yield return lit < 0 ? figures : WithPower(figures, _context.LitAreas[lit], connected[lit], losses[lit]);
        }
    }
}
