using RetrofitCalc.Engine.Carbon;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Checks;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Cases;

/// <summary>Conventions and estimates in play, in plain sentences.</summary>
public static class StudyRemarks
{
    /// <summary>The remarks of a study.</summary>
    /// <param name="context">The study's context.</param>
    public static IReadOnlyList<string> Of(StudyContext context) =>
        [.. OfBaseline(context), .. OfWatts(context), .. MeterRemarks.Of(context), .. OfTariff(context), .. PlantRemarks.Of(context), .. OfSchedules(context), .. OfMoney(context.Study), .. LightRemarks.Of(context), .. CarbonRemarks.Of(context.Study.Site), .. GapRemarks.Of(context)];

    private static IEnumerable<string> OfBaseline(StudyContext context)
    {
        var asFound = context.Study.Assumptions.Baseline == Baseline.AsFound;
        yield return asFound
            ? "Baseline as found: lamps out and dead ballasts of the survey are left out of the present lighting."
            : "Baseline as designed: the present lighting counts all its lamps as working.";
        if (asFound && context.Lines.Any(IsDarkPowerUnknown))
            yield return "Electronic ballasts with every lamp dark are taken to draw nothing where the catalogue does not say what they draw.";
        if (asFound && context.Lines.Any(line => line.Fitted.Line.LampsOut > 0 && line.Model.Fitting.Ballasts.Any(ballast => ballast?.Circuit is null)))
            yield return "Where the catalogue does not say how lamps are joined, instant-start and unknown ballasts are taken as parallel and all others as series (common practice, no source).";
        if (context.Lines.Count < context.Study.Lines.Count)
            yield return $"{context.Study.Lines.Count - context.Lines.Count} of {context.Study.Lines.Count} survey lines are not counted yet: see the questions.";
    }

    private static bool IsDarkPowerUnknown(CountedLine line) => line.Fitted.Line.LampsOut > 0
        && line.Model.Fitting.Ballasts.Any(ballast => ballast is { LampsOutPower: null, Technology: BallastTechnology.Electronic });

    private static IEnumerable<string> OfWatts(StudyContext context)
    {
        var memory = context.Lines.Where(line => line.Load.PerLuminaire.Source.FromMemory).Select(line => line.Model.Fitting.SetUp.Name).Distinct().ToList();
        if (memory.Count > 0)
            yield return $"Input watts of {string.Join(", ", memory)} come from a table cited from memory: measure one luminaire to be sure.";
        var unknown = context.Lines.Where(line => line.Load.BallastLoss is null).Select(line => line.Model.Fitting.SetUp.Name).Distinct().ToList();
        if (unknown.Count > 0)
            yield return $"Ballast loss is not known for {string.Join(", ", unknown)} and is left out of the sums of ballast loss.";
    }

    private static IEnumerable<string> OfTariff(StudyContext context)
    {
        var study = context.Study;
        if (study.Tariff.ValidFrom > context.Year.FirstDay || study.Tariff.ValidTo < context.Year.LastDay)
            yield return $"The tariff is in force {ForceOf(study.Tariff)}; its prices are used for the whole year looked at all the same.";
        if (study.Tariff.Demand.Count > 0)
            yield return "Demand is the highest average over windows aligned to the clock.";
        if (study.Tariff.Demand.Any(charge => charge.Ratchet is not null))
            yield return "The bills show a steady year. In the first year after a change the ratchet still remembers earlier peaks; year 1 of the cash flow counts that.";
    }

    private static string ForceOf(Tariff tariff) => (tariff.ValidFrom, tariff.ValidTo) switch
    {
        ({ } from, { } to) => $"from {CheckText.Date(from)} to {CheckText.Date(to)}",
        ({ } from, null) => $"from {CheckText.Date(from)}",
        (_, { } to) => $"until {CheckText.Date(to)}",
        _ => "always",
    };

    private static IEnumerable<string> OfSchedules(StudyContext context)
    {
        var study = context.Study;
        yield return $"The year looked at {SpanOf(context.Year)}, at the clock of {study.Site.TimeZone}. A lit day belongs to the day its lights come on.";
        var stages = study.Areas.Where(area => area.GrowsCrop).SelectMany(area => area.Seasons).SelectMany(season => season.Stages).ToList();
        if (stages.Any(stage => stage.ClockRule == ClockRule.CountsHours))
            yield return "Controllers that count hours keep their lit hours on the nights the clocks change; the others follow the clock.";
        if (stages.Any(stage => stage.Dimming < 1))
            yield return "Input power of what dims is taken as proportional to the dimming level; what is not known to dim burns at full power.";
        if (stages.Any(stage => stage.LitStep is not null))
            yield return "Direct-wire tubes keep the switching steps of the lamps they replace; new luminaires have none and burn whole.";
    }

    private static string SpanOf(SiteYear year) => year.IsCalendarYear
        ? $"is {year.Year}"
        : $"is the twelve billing months from {CheckText.Date(year.FirstDay)} to {CheckText.Date(year.LastDay)}, {year.Months.Sum(month => month.DayCount)} days";

    private static IEnumerable<string> OfMoney(Study study)
    {
        if (study.Options.Count == 0)
            yield break;
        yield return "Money is nominal and falls due at the end of each year. Prices of the start hold through year 1 and rise from then on.";
        yield return $"The comparison ends after {study.Assumptions.StudyYears} years and counts nothing for what lamps, ballasts, tubes and luminaires still have left then.";
        yield return "All parts of one kind on a line fall due together, at hours of life over hours a year: the middle of what happens, not a spread of failures.";
    }
}
