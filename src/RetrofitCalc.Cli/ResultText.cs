using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Cli;

/// <summary>A result as an aligned table for a terminal.</summary>
internal sealed class ResultText
{
    private readonly StudyResult _result;
    private readonly QuantityText _text;
    private readonly TextTable _table = new();

    private ResultText(StudyResult result) => (_result, _text) = (result, QuantityText.For(result.Study));

    public static string Of(StudyResult result) => new ResultText(result).Write();

    private string Write()
    {
        var study = _result.Study;
        _table.Add("", ["Now", .. _result.Options.Select(o => o.Option.Name)]);
        _table.AddRule();
        AddLighting();
        AddSeasons();
        _table.AddRule();
        AddMoney();
        var head = $"{study.Name}. Figures for {study.Assumptions.Start.Year}, {Baseline(study)}.{(study.Invented ? " Site, prices and readings are invented." : "")}";
        return string.Join(Environment.NewLine, [head, "", _table.ToString(), .. Remarks()]);
    }

    private void AddLighting()
    {
        Cases("Connected load", c => _text.Kilowatts(c.Site.Connected));
        Cases("  of it lost in ballasts", c => _text.Kilowatts(c.Site.BallastLoss) + (c.Lines.Any(l => l.BallastLoss is null) ? " or more" : ""));
        Cases("Heat to the space", c => _text.BtuPerHour(c.Site.Heat));
        Cases("  as cooling load", c => _text.Tons(c.Site.Heat));
        Cases("Lighting energy a year", c => _text.KilowattHours(c.Site.Lighting));
        Cases("Cost a year", c => _text.Money(PrintedSums.Cost(c)));
    }

    private void AddSeasons()
    {
        foreach (var season in _result.Now.Seasons.Select(s => s.Name))
        {
            Cases($"  {season}, energy", c => Of(c, season, s => _text.KilowattHours(s.Lighting)));
            Cases($"  {season}, cost", c => Of(c, season, s => _text.Money(s.Cost)));
        }
    }

    private void AddMoney()
    {
        var years = _result.Study.Assumptions.StudyYears;
        Options("First cost after incentive", o => _text.Money(PrintedSums.Of(o.FirstCost)));
        Options("  incentive", o => _text.Money(o.FirstCost.Incentive));
        Options("Saved on bills in a steady year", o => _text.Money(PrintedSums.Cost(_result.Now) - PrintedSums.Cost(o.After)));
        Options("Simple payback", o => _text.Payback(o.SimplePayback, years));
        Options("  its range", o => _text.Range(o.Ranges.Payback, years));
        Options("  without escalation, replacements", o => _text.Payback(o.PlainPayback, years));
        Options("Discounted payback", o => _text.Payback(o.DiscountedPayback, years));
        Options($"Net present value, {years} years", o => _text.Money(o.NetPresentValue));
        Options("Internal rate of return", o => Rates(o.InternalRates));
        Options("Crop light", o => LightWords.Short(o.Light, _result.Study, _text));
    }

    private IEnumerable<string> Remarks()
    {
        foreach (var (option, refused) in _result.Options.SelectMany(o => o.Refused.Select(r => (o.Option.Name, r))))
            yield return $"{option}: line {refused.Line} is kept as it is. {refused.Reason}";
        if (_result.Questions.Count > 0) yield return $"Unanswered questions: {_result.Questions.Count}. The first: {_result.Questions[0].Text}";
        foreach (var line in Light()) yield return line;
        foreach (var line in Stops()) yield return line;
        foreach (var remark in _result.Remarks) yield return remark;
    }

    /// <summary>Each growing area under the option asked for, the worst first, and places where people would have too little.</summary>
    private IEnumerable<string> Light()
    {
        if (_result.Chosen is not { } chosen) yield break;
        foreach (var stage in chosen.Light.WorstFirst)
        {
            yield return $"Crop light with \"{chosen.Option.Name}\": {LightWords.Sentence(stage, _result.Study, _text)}";
            if (stage.Fixes.Count > 0) yield return $"  It would keep its light with: {LightWords.Fix(stage.Fixes[0], _text)}.";
        }
        foreach (var place in chosen.Light.People.Where(place => place.Enough != true))
            yield return $"Light for people with \"{chosen.Option.Name}\": {LightWords.Area(_result.Study, place.Area)}: {PeopleText.After(chosen.Light, place.Area, _text)}.";
    }

    private IEnumerable<string> Stops()
    {
        var stops = _result.Notices.Where(n => n is { Severity: NoticeSeverity.Stop, Open: true }).ToList();
        yield return $"Open safety stops{(_result.Chosen is { } chosen ? $" for \"{chosen.Option.Name}\"" : "")}: {stops.Count}";
        foreach (var stop in stops) yield return $"  {stop.Rule}: {stop.Text}";
        if (stops.Count > 0) yield return "  Local code, the inspector and a licensed electrician decide.";
    }

    private void Cases(string name, Func<LightingCase, string> figure) =>
        _table.Add(name, new[] { _result.Now }.Concat(_result.Options.Select(o => o.After)).Select(figure));

    private void Options(string name, Func<OptionResult, string> figure) => _table.Add(name, _result.Options.Select(figure).Prepend(""));

    private static string Of(LightingCase lighting, string season, Func<ShareFigures, string> figure) =>
        lighting.Seasons.FirstOrDefault(s => s.Name == season) is { } share ? figure(share) : QuantityText.DoesNotApply;

    private string Rates(IReadOnlyList<double> rates) => rates.Count switch
    {
        0 => "none",
        1 => _text.Percent(rates[0], 1),
        _ => "several: " + string.Join(", ", rates.Select(r => _text.Percent(r, 1))),
    };

    private static string Baseline(Study study) => study.Assumptions.Baseline == Engine.Studies.Baseline.AsFound ? "lamps out as found" : "all lamps working";
}
