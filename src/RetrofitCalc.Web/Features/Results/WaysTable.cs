using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Results;

/// <summary>A column of the comparison.</summary>
public sealed record WayColumn(string Name, bool Now = false, bool Chosen = false);

/// <summary>A row of the comparison, with one cell for each column.</summary>
public sealed record WayRow(string Name, string Unit, IReadOnlyList<string> Cells);

/// <summary>Rows under one heading.</summary>
public sealed record WayGroup(string Name, IReadOnlyList<WayRow> Rows);

/// <summary>All ways to go side by side: keeping first, the chosen one beside it.</summary>
public sealed class WaysTable
{
    private readonly StudyResult _result;
    private readonly QuantityText _text;
    private readonly List<OptionResult> _options;

    private WaysTable(StudyResult result, QuantityText text)
    {
        (_result, _text) = (result, text);
        _options = [.. result.Options.OrderByDescending(option => option == result.Chosen)];
        Columns = [new("Keep as is", Now: true), .. _options.Select(o => new WayColumn(o.Option.Name, Chosen: o == result.Chosen))];
        Groups = [new("Power and bill", [.. PowerAndBill()]), new("Money", [.. MoneyRows()]), new("Carbon and waste", [.. CarbonAndWaste()]), new("Crop and safety", [.. CropAndSafety()])];
    }

    public IReadOnlyList<WayColumn> Columns { get; }

    public IReadOnlyList<WayGroup> Groups { get; }

    public static WaysTable Of(StudyResult result, QuantityText text) => new(result, text);

    private int Years => _result.Study.Assumptions.StudyYears;

    private IEnumerable<WayRow> PowerAndBill()
    {
        yield return Site("Connected load", "W", s => _text.Number(s.Connected.Watts));
        yield return Site("of it lost in ballasts", "W", s => _text.Number(s.BallastLoss.Watts));
        yield return Site("Heat from lights", "BTU/h", s => _text.Number(s.Heat.BtuPerHour));
        yield return Site("Cooling it asks for", "tons", s => _text.Number(s.Heat.TonsOfCooling, 1));
        yield return Site("Lighting energy", "kWh/yr", s => _text.Number(s.Lighting.KilowattHours));
        yield return Site("Cooling and heating that follow", "kWh/yr", s => _text.Number(s.Plant.KilowattHours));
        yield return Site("Fuel the lights' heat saves", "therm/yr", s => _text.Number(s.FuelTherms));
        if (_result.Now.Site.MoisturePerHour > 0)
            yield return Site("Water plants give off by it", "kg/h", s => _text.Number(s.MoisturePerHour, 1));
        yield return new WayRow("Bill, lights and plant", "per year",
            [_text.Money(PrintedSums.Cost(_result.Now)), .. _options.Select(o => _text.Money(PrintedSums.Cost(o.After)))]);
        yield return Options("Saved on the electricity bill", "per year", QuantityText.DoesNotApply, o => _text.Money(o.Bill.Total));
        if (_result.Study.Tariff.Demand.Count == 0) yield break;
        yield return Options("of it demand", "per year", QuantityText.DoesNotApply, o => _text.Money(o.Bill.Demand));
        if (_options.Any(o => Math.Abs((o.Bill.Demand - o.Bill.FirstYearDemand).Units) >= 0.5))
            yield return Options("of it demand, in the first year", "", QuantityText.DoesNotApply, o => _text.Money(o.Bill.FirstYearDemand));
    }

    private IEnumerable<WayRow> MoneyRows()
    {
        yield return Options("First cost after incentive", "", "none", o => _text.Money(PrintedSums.Of(o.FirstCost)));
        yield return new WayRow($"Lamps, ballasts and tubes, {Years} years", "at prices of the start",
            [_text.Money(Upkeep(_result.Now)), .. _options.Select(o => _text.Money(Upkeep(o.After)))]);
        yield return Options("Payback, likely", "", QuantityText.DoesNotApply, o => _text.Payback(o.SimplePayback, Years));
        yield return Options("Payback, range", "", QuantityText.DoesNotApply, o => _text.Range(o.Ranges.Payback, Years));
        yield return Options("Payback without replacements or price rises", "", QuantityText.DoesNotApply, o => _text.Payback(o.PlainPayback, Years));
        yield return Options("Payback, discounted", "", QuantityText.DoesNotApply, o => _text.Payback(o.DiscountedPayback, Years));
        yield return Options("Net present value", "", "reference", o => _text.Money(o.NetPresentValue));
        yield return Options("Net present value, range", "", QuantityText.DoesNotApply, o => _text.Range(o.Ranges.NetPresentValue));
        yield return Options("Internal rate of return", "per year", QuantityText.DoesNotApply, Rates);
    }

    private IEnumerable<WayRow> CarbonAndWaste()
    {
        var carbon = new CarbonFigures(_result);
        yield return new WayRow("Carbon of a year, average of the grid", "kg CO2e",
            [CarbonFigures.Text(carbon.Inventory(_result.Now), _text), .. _options.Select(o => CarbonFigures.Text(carbon.Inventory(o.After), _text))]);
        yield return Options("Carbon saved in a year by the change", "kg CO2e", "reference", o => CarbonFigures.Text(carbon.Saved(o), _text));
        yield return Options("Mercury in lamps taken out", "g", QuantityText.DoesNotApply, o => CarbonFigures.Mercury(carbon.Retired(o), _text));
    }

    private IEnumerable<WayRow> CropAndSafety()
    {
        foreach (var row in LightRows.Of(_result, _options, _text)) yield return row;
        yield return Options("Open safety stops", "", QuantityText.DoesNotApply, o => o == _result.Chosen
            ? $"{_result.Notices.Count(n => n is { Severity: NoticeSeverity.Stop, Open: true })}"
            : "not looked at");
        yield return Options("Lines refused", "", QuantityText.DoesNotApply, o => $"{o.Refused.Count}");
    }

    private string Rates(OptionResult option) => option.InternalRates switch
    {
        [] => "none",
        [var rate] => _text.Percent(rate, 1),
        { Count: var several } => $"{several} rates: {string.Join(", ", option.InternalRates.Select(r => _text.Percent(r, 1)))}",
    };

    private WayRow Site(string name, string unit, Func<ShareFigures, string> cell) =>
        new(name, unit, [cell(_result.Now.Site), .. _options.Select(o => cell(o.After.Site))]);

    private WayRow Options(string name, string unit, string now, Func<OptionResult, string> cell) =>
        new(name, unit, [now, .. _options.Select(cell)]);

    private static Money Upkeep(LightingCase side) => side.Replacements.Aggregate(Money.Zero, (sum, due) => sum + due.Cost);
}
